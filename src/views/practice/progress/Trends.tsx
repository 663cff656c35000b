import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { MEASURE_WORDS, shownMeasure, type UnitSystem } from '../../../../sim/index.ts';
import { TrendChart } from '../../../charts/TrendChart.tsx';
import type { ListedSession } from '../../../storage/sessions.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { drillsOf, trendsOf, type Trend } from './progressData.ts';

export interface TrendsProps {
  /** Of one trainee, newest first. */
  readonly sessions: readonly ListedSession[];
  readonly system: UnitSystem;
}

/** Every measure over the sessions of one drill, as small charts and as a table. */
export function Trends({ sessions, system }: TrendsProps): JSX.Element | null {
  const [wanted, setWanted] = useState('');
  const drills = drillsOf(sessions);
  const drill = drills.find(({ key }) => key === wanted) ?? drills[0];
  if (drill === undefined) return null;
  const trends = trendsOf(drill.sessions, system);
  return (
    <section class="progress-trends" aria-labelledby="progress-trends">
      <h2 id="progress-trends">Trend</h2>
      <ChoiceField id="progress-drill" label="Drill" value={drill.key} options={drills.map((each) => [each.key, `${each.title} (${each.sessions.length})`])} choose={setWanted} />
      {drill.sessions.length < 2 ? <p class="soft">One session so far. Spray this drill again to see a trend.</p> : null}
      <div class="trend-charts">
        {trends.map(({ measure, points, band, limit }) => (
          <TrendChart key={measure} title={MEASURE_WORDS[measure].title} points={points} band={band} limit={limit} format={(value) => shownMeasure(measure, value, system)} />
        ))}
      </div>
      <p class="soft">Oldest at the left. The band is the limit of the newest session: a ring lies within it, a cross outside.</p>
      <details class="more">
        <summary>The same figures as a table</summary>
        <TrendTable title={drill.title} trends={trends} system={system} />
      </details>
    </section>
  );
}

function TrendTable({ title, trends, system }: { readonly title: string; readonly trends: readonly Trend[]; readonly system: UnitSystem }): JSX.Element {
  const labels = trends[0]?.points.map(({ label }) => label) ?? [];
  return (
    <div class="scroll-box" tabIndex={0} role="region" aria-label={`Figures of ${title}`}>
      <table>
        <thead>
          <tr><th scope="col">Sprayed</th>{trends.map(({ measure }) => <th key={measure} scope="col">{MEASURE_WORDS[measure].title}</th>)}</tr>
        </thead>
        <tbody>
          <tr><th scope="row">Limit</th>{trends.map(({ measure, limit }) => <td key={measure}>{limit === '' ? 'none' : limit}</td>)}</tr>
          {labels.map((label, i) => (
            <tr key={i}><th scope="row">{label}</th>{trends.map(({ measure, points }) => <td key={measure}>{shownMeasure(measure, points[i]?.value ?? null, system)}</td>)}</tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
