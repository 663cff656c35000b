import type { JSX } from 'preact';
import { READING_KIND_WORDS, shownNumber, shownPercent, shownUnit, type PlanComparison } from '../../../../sim/index.ts';
import { state } from '../../../app/state.ts';

/** More rows than this are not read; the CSV of the sheet Readings has them all. */
const MOST_ROWS = 200;

/** The readings beside the plan, one a row. */
export function TruthTable({ comparison: { readings } }: { readonly comparison: PlanComparison }): JSX.Element {
  const system = state.units.value;
  const [length, film] = [shownUnit('length', system).name, shownUnit('film', system).name];
  return (
    <details class="survey-truth-table-box">
      <summary>As a table</summary>
      <div class="scroll-box" tabIndex={0} role="region" aria-label="Readings beside the plan">
        <table class="survey-truth-table">
          <thead><tr><th scope="col">No.</th><th scope="col">Kind</th><th scope="col">{`x, ${length}`}</th><th scope="col">{`y, ${length}`}</th><th scope="col">{`Measured, ${film} dry`}</th><th scope="col">{`Planned, ${film} dry`}</th><th scope="col">{`Difference, ${film}`}</th><th scope="col">Of the plan</th></tr></thead>
          <tbody>
            {readings.slice(0, MOST_ROWS).map(({ index, kind, at_m, measured_m, predicted_m }) => (
              <tr key={index}>
                <th scope="row">{index + 1}</th>
                <td class="survey-truth-words">{READING_KIND_WORDS[kind]}</td>
                <td>{shownNumber(at_m[0], 'length', system)}</td>
                <td>{shownNumber(at_m[1], 'length', system)}</td>
                <td>{shownNumber(measured_m, 'film', system)}</td>
                <td>{shownNumber(predicted_m, 'film', system)}</td>
                <td>{shownNumber(measured_m - predicted_m, 'film', system)}</td>
                <td>{predicted_m > 0 ? shownPercent(measured_m / predicted_m) : 'nothing planned'}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {readings.length > MOST_ROWS ? <p>{`The first ${MOST_ROWS} of ${readings.length} readings.`}</p> : null}
    </details>
  );
}
