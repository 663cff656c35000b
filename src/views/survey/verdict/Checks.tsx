import type { JSX } from 'preact';
import { shownUnit, type JudgedSurvey } from '../../../../sim/index.ts';
import { checkRows, plotLimits } from '../../../app/survey/verdictRows.ts';
import { state } from '../../../app/state.ts';
import { ReadingsPlot } from '../../../charts/ReadingsPlot.tsx';

/** What the rule asks, what was found, and all readings against the limits. */
export function Checks({ judged }: { readonly judged: JudgedSurvey }): JSX.Element {
  const units = state.units.value;
  const rows = checkRows(judged, units);
  return (
    <section class="survey-verdict-part" aria-labelledby="survey-checks">
      <h2 id="survey-checks">What it asks, and what was found</h2>
      {rows.length === 0 ? <p>The rule states no limit yet.</p> : (
        <div class="scroll-box" tabIndex={0} role="region" aria-label="Checks of the rule">
          <table class="survey-verdict-table">
            <thead><tr><th scope="col">Asked</th><th scope="col">Found, dry</th><th scope="col">Limit</th><th scope="col">Answer</th></tr></thead>
            <tbody>{rows.map(({ code, asks, found, limit, answer }) => <tr key={code}><th scope="row">{asks}</th><td>{found}</td><td>{limit}</td><td>{answer}</td></tr>)}</tbody>
          </table>
        </div>
      )}
      <ReadingsPlot readings={judged.readings.map(({ low_m, high_m }) => [low_m, high_m] as const)} limits={plotLimits(judged, units)} unit={shownUnit('film', units)} title="The readings against the limits" />
    </section>
  );
}
