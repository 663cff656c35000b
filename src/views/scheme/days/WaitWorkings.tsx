import type { JSX } from 'preact';
import { factorRows, spanWords, waitEnd, waitRuleWords, waitWorking, type DayPlan, type LaidChain } from '../../../../sim/index.ts';
import { state } from '../../../app/state.ts';

/** Every wait of a scheme, opening to how it comes about. */
export function WaitWorkings({ chain, plan }: { readonly chain: LaidChain; readonly plan: DayPlan }): JSX.Element {
  const units = state.units.value;
  return (
    <>
      {chain.laid.map((laid, k) => {
        const { wait, task } = laid;
        if (wait === null || wait.until <= wait.from) return null;
        const rows = factorRows(laid, plan, units);
        return (
          <details class="more" key={task.id}>
            <summary>{`${k + 1} ${task.planned.spec.name}: ${spanWords(wait.until - wait.from)}, until ${waitEnd(wait.until, wait.from)} (${waitRuleWords(laid)})`}</summary>
            <ul>{waitWorking(laid, plan.temperature_K, units).map((text) => <li key={text}>{text}</li>)}</ul>
            <div class="scroll-box" tabIndex={0} role="region" aria-label={`Factor by the hour after ${task.planned.spec.name}`}>
              <table class="scheme-days-factors">
                <caption>Factor on the stated wait, 2^((70 °F − T)/10 °F); the wait is over when the hours, each divided by its factor, add up to it</caption>
                <thead><tr><th scope="col">Time</th><th scope="col">Air</th><th scope="col">Factor</th></tr></thead>
                <tbody>{rows.map(([time, air, factor]) => <tr key={time}><th scope="row">{time}</th><td>{air}</td><td>{factor}</td></tr>)}</tbody>
              </table>
            </div>
          </details>
        );
      })}
    </>
  );
}
