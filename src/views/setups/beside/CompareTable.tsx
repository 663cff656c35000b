import type { JSX } from 'preact';
import { capitalised, COMPARED_WORDS, comparedCell, COMPARE_NOTE, comparedDoubts, FAULT_PLURALS, isWholeSide, listed, type ReportedComparison } from '../../../../sim/index.ts';
import { state } from '../../../app/state.ts';

/** The figures of every side; the best of a row is ticked, and what cannot be told from it is called so. */
export function CompareTable({ comparison }: { readonly comparison: ReportedComparison }): JSX.Element {
  const units = state.units.value;
  const sides = comparison.sides.flatMap((side, place) => (isWholeSide(side) ? [{ side, place }] : []));
  const doubts = comparedDoubts(sides.map(({ side }) => side));
  return (
    <section aria-labelledby="compare-head">
      <h2 id="compare-head">Figures</h2>
      <div class="scroll-box" tabIndex={0} role="region" aria-label="Figures of every set-up">
        <table class="setups-table compare-table">
          <thead><tr><td />{sides.map(({ side }) => <th key={side.setUp.id} scope="col">{side.setUp.name}</th>)}</tr></thead>
          <tbody>
            {comparison.rows.map(({ name, best, isTie }) => (
              <tr key={name}>
                <th scope="row">{capitalised(COMPARED_WORDS[name].title)}</th>
                {sides.map(({ side, place }) => (
                  <td key={side.setUp.id} class={best.includes(place) && !isTie ? 'best' : ''}>
                    {comparedCell(name, side.figures[name], units)}
                    {best.includes(place) ? <span class="compare-mark">{isTie ? 'no difference' : '✓ best'}</span> : null}
                    {side.figures[name].isOutsideRange ? <span class="compare-mark">not measured here</span> : null}
                  </td>
                ))}
              </tr>
            ))}
            <tr>
              <th scope="row">Faults</th>
              {sides.map(({ side }) => <td key={side.setUp.id}>{side.faults.length === 0 ? 'none' : listed(side.faults.map((kind) => FAULT_PLURALS[kind]))}</td>)}
            </tr>
          </tbody>
        </table>
      </div>
      <p class="soft">{COMPARE_NOTE}</p>
      {doubts.length === 0 ? null : <ul class="setups-sentences">{doubts.map((text) => <li key={text}>{text}</li>)}</ul>}
    </section>
  );
}
