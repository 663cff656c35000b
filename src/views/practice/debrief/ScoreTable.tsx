import type { JSX } from 'preact';
import { MEASURE_WORDS, shownMeasure, shownPercent, totalText, type Score, type ScoreRow, type UnitSystem } from '../../../../sim/index.ts';

export interface ScoreTableProps {
  readonly score: Score;
  readonly units: UnitSystem;
}

/** Total and pass, and every measure: its value against its limit, its mark, met or not, counted or not. */
export function ScoreTable({ score, units }: ScoreTableProps): JSX.Element {
  return (
    <>
      <p class="debrief-total" data-testid="score-total">
        {totalText(score)}{' '}
        <Sign isGood={score.isPassed} good="passed" bad="not passed" />
      </p>
      <div class="scroll-box" tabIndex={0} role="region" aria-label="Marks">
        <table class="score-table">
          <thead>
            <tr>
              <th scope="col">measure</th>
              <th scope="col">met</th>
              <th scope="col">value</th>
              <th scope="col">limit</th>
              <th scope="col">mark</th>
              <th scope="col">counted</th>
            </tr>
          </thead>
          <tbody>{score.rows.map((row) => <Row key={row.measure} row={row} units={units} />)}</tbody>
        </table>
      </div>
      <details class="debrief-meanings">
        <summary>What each measure means</summary>
        <dl>
          {score.rows.map(({ measure }) => (
            <div key={measure}><dt>{MEASURE_WORDS[measure].title}</dt><dd>{MEASURE_WORDS[measure].means}.</dd></div>
          ))}
        </dl>
      </details>
    </>
  );
}

function Row({ row, units }: { readonly row: ScoreRow; readonly units: UnitSystem }): JSX.Element {
  const { measure, value, limit, none, mark, isMet, counts } = row;
  return (
    <tr class={counts ? '' : 'soft'} data-testid={`score-${measure}`}>
      <th scope="row">{MEASURE_WORDS[measure].title}</th>
      <td><Sign isGood={isMet} good="met" bad="not met" /></td>
      <td>{shownMeasure(measure, value, units)}</td>
      <td>{none > limit ? 'at most' : 'at least'} {shownMeasure(measure, limit, units)}</td>
      <td>
        <span class="mark">
          <svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
            <rect class="share-all" width="100" height="10" />
            <rect class="share-part" width={mark * 100} height="10" />
          </svg>
          {shownPercent(mark)}
        </span>
      </td>
      <td>{counts ? 'counts' : 'not counted'}</td>
    </tr>
  );
}

/** Good or not, by sign and by word. */
function Sign({ isGood, good, bad }: { readonly isGood: boolean; readonly good: string; readonly bad: string }): JSX.Element {
  return <span class={isGood ? 'sign good' : 'sign bad'}><span aria-hidden="true">{isGood ? '✓' : '✗'} </span>{isGood ? good : bad}</span>;
}
