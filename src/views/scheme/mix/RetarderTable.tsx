import type { JSX } from 'preact';
import { roundedText, shownPercent, shownTemperatureStep, type ReportedMixing, type RetarderStep } from '../../../../sim/index.ts';
import { sheetRetarders, useRetarder } from '../../../app/scheme/mixSheet.ts';
import { state } from '../../../app/state.ts';

const JUDGED = { none: '', 'below-usual': 'below the usual', usual: 'usual', 'above-usual': 'above the usual', 'too-much': 'too much' } as const;

/** What each share of retarder does to the blush margin and to drying. */
export function RetarderTable({ mixing }: { readonly mixing: ReportedMixing }): JSX.Element | null {
  const steps = sheetRetarders.value;
  if (steps.length === 0) return null;
  return (
    <section aria-labelledby="mix-retarder">
      <h2 id="mix-retarder">Retarder</h2>
      <p>A slow solvent in place of some thinner keeps the film warmer against blush, and soft for longer. 5 to 15 % of the thinner is usual, never more than 25 % (common practice). In the air of the job:</p>
      <div class="scheme-mix-scroll" role="region" aria-label="What retarder does" tabIndex={0}>
        <table class="scheme-mix-table">
          <thead><tr><th scope="col">Of the thinner</th><th scope="col">Film less dew point</th><th scope="col">All solvents take</th><th scope="col">Practice</th><th scope="col"><span class="hidden-words">Use</span></th></tr></thead>
          <tbody>{steps.map((step) => <Row key={step.fraction} step={step} isNow={Math.abs(step.fraction - mixing.ratio.retarderFraction) < 1e-6} />)}</tbody>
        </table>
      </div>
      <p class="soft">Below 0 water can fall into the fresh film. The margin is that of a film with all its solvent, no heat but the air’s; the time is by evaporation rates alone, and the film holds the last of a retarder back for longer still.</p>
    </section>
  );
}

function Row({ step, isNow }: { readonly step: RetarderStep; readonly isNow: boolean }): JSX.Element {
  const { fraction, judgement, blushMargin_K, timeRatio } = step;
  const name = fraction === 0 ? 'none' : shownPercent(fraction);
  return (
    <tr aria-current={isNow ? 'true' : undefined}>
      <th scope="row">{name}</th>
      <td>{shownTemperatureStep(blushMargin_K, state.units.value)}{blushMargin_K < 0 ? ', can blush' : ''}</td>
      <td>× {roundedText(timeRatio)}</td>
      <td>{JUDGED[judgement]}</td>
      <td>{isNow ? 'this mix' : <button type="button" aria-label={fraction === 0 ? 'Use no retarder' : `Use ${name} of retarder`} onClick={() => useRetarder(fraction)}>Use</button>}</td>
    </tr>
  );
}
