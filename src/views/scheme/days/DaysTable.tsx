import type { JSX } from 'preact';
import { chainWords, clockWords, holdWords, spanWords, waitEnd, waitRuleWords, whenWords, type DayPlan, type LaidChain, type LaidTask } from '../../../../sim/index.ts';
import { beginLate, daysSheet } from '../../../app/scheme/daysSheet.ts';

/** How much later a step may be tried, min. */
const LATE_min = [0, 30, 60, 120, 240, 480, 1440, 2880, 4320] as const;

/** A scheme's steps through the days, each with a late begin to try. */
export function DaysTable({ chain, plan }: { readonly chain: LaidChain; readonly plan: DayPlan }): JSX.Element {
  const planned = new Map(plan.base.chains.flatMap(({ laid }) => laid.map(({ task, start }) => [task.id, start] as const)));
  return (
    <div class="scroll-box" tabIndex={0} role="region" aria-label={`Steps of ${chain.chain.schemeName}`}>
      <table class="scheme-days-table">
        <caption>{chainWords(chain)}; times of the shop’s clock. Press a number to count down to the step after it.</caption>
        <thead>
          <tr>{['', 'Step', 'Begin', 'End', 'Wait until', 'Wait by', 'Latest next', 'Begin late (a trial)', 'Shifted'].map((text) => <th key={text} scope="col">{text === '' ? <span class="hidden-words">Number</span> : text}</th>)}</tr>
        </thead>
        <tbody>{chain.laid.map((laid, k) => <Row key={laid.task.id} laid={laid} number={k + 1} before={chain.laid[k - 1]} planned={planned.get(laid.task.id) ?? laid.start} />)}</tbody>
      </table>
    </div>
  );
}

function Row({ laid, number, before, planned }: { readonly laid: LaidTask; readonly number: number; readonly before: LaidTask | undefined; readonly planned: number }): JSX.Element {
  const { task, start, end, wait, holds } = laid;
  const { name } = task.planned.spec;
  const isChosen = daysSheet.chosen.value === task.id;
  const held = holdWords(holds);
  const late = daysSheet.late.value.get(task.id) ?? 0;
  return (
    <tr class={isChosen ? 'chosen' : ''}>
      <td><button type="button" class="row-button" aria-pressed={isChosen} aria-label={`Count down after step ${number}, ${name}`} onClick={() => (daysSheet.chosen.value = isChosen ? '' : task.id)}>{number}</button></td>
      <th scope="row">{name}{held === '' ? null : <span class="days-held">not sooner: {held}</span>}</th>
      <td>{whenWords(start, before?.start ?? 0)}</td>
      <td>{clockWords(end)}</td>
      <td>{wait === null ? '' : waitEnd(wait.until, end)}</td>
      <td>{waitRuleWords(laid)}</td>
      <td>{wait === null || wait.latest === null ? '' : whenWords(Math.floor(wait.latest), end)}</td>
      <td>
        <select aria-label={`Begin late: ${name}`} value={String(late)} onChange={(event) => beginLate(task.id, Number(event.currentTarget.value))}>
          {LATE_min.map((minutes) => <option key={minutes} value={String(minutes)} selected={minutes === late}>{minutes === 0 ? 'as planned' : `${spanWords(minutes)} late`}</option>)}
        </select>
      </td>
      <td>{start === planned ? '' : <strong>{`${spanWords(start - planned)} later`}</strong>}</td>
    </tr>
  );
}
