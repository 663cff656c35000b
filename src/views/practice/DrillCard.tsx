import type { JSX } from 'preact';
import { DRILLS, MEASURE_SIZE, MEASURE_WORDS, shown, shownMeasure, type Drill, type Measure } from '../../../sim/index.ts';
import { coat } from '../../app/document.ts';
import { drill, OWN_DRILL, rubric, setPrefs } from '../../app/practice/practice.ts';
import { room } from '../../app/practice/underway.ts';
import { state } from '../../app/state.ts';

/** The drill: which one, what to do, what shows that it can be done. */
export function DrillCard(): JSX.Element {
  const chosen = drill.value;
  const isUnderWay = (room.value?.phase.value ?? 'aiming') !== 'aiming';
  const id = state.practice.value.drill === OWN_DRILL ? OWN_DRILL : chosen.id;
  return (
    <section class="drill-card" aria-label="Drill">
      <label for="drill">Drill</label>
      <select id="drill" value={id} disabled={isUnderWay} onChange={(event) => setPrefs({ drill: event.currentTarget.value, guides: null, value: null })}>
        {DRILLS.map((each, i) => <option key={each.id} value={each.id} selected={each.id === id}>{`${i + 1}. ${each.title}`}</option>)}
        <option value={OWN_DRILL} selected={id === OWN_DRILL}>{`Your job: ${coat.value.name}`}</option>
      </select>
      {isUnderWay ? <p class="field-note">Finish or start again to change the drill.</p> : null}
      <p class="drill-task">{chosen.task}</p>
      <Meant chosen={chosen} />
      <details>
        <summary>What shows that it can be done</summary>
        <p><strong>Criterion:</strong> {chosen.criterion}</p>
        <p><strong>Evidence:</strong> {chosen.evidence}</p>
        <p><strong>Limits in use</strong> ({rubric.value.name}): {limitsInUse(chosen.counts)}.</p>
        <p class="soft">{chosen.source}</p>
      </details>
      <p class="drill-caution"><strong>Caution:</strong> {chosen.caution}</p>
    </section>
  );
}

/** The limits of what the drill counts, by the rubric in use. */
function limitsInUse(counts: readonly Measure[]): string {
  const rows = rubric.value.rows.filter(({ measure }) => counts.includes(measure));
  return rows.map(({ measure, limit }) => `${MEASURE_WORDS[measure].title.toLowerCase()} ${shownMeasure(measure, limit * MEASURE_SIZE[measure], state.units.value)}`).join(', ');
}

/** The figures that the gauges are read against. */
function Meant({ chosen }: { readonly chosen: Drill }): JSX.Element | null {
  const setting = room.value?.setting;
  if (setting === undefined) return null;
  const { plan, target } = setting;
  const system = state.units.value;
  return (
    <dl class="drill-meant" key={chosen.id}>
      <div><dt>Distance</dt><dd>{shown(plan.distance_m, 'length', system)}</dd></div>
      <div><dt>Speed</dt><dd>{shown(plan.speed_m_s, 'speed', system)}</dd></div>
      <div><dt>Overlap</dt><dd>{Math.round(100 * plan.overlapFraction)} %</dd></div>
      <div><dt>Target</dt><dd>{shown(target.thickness_m, 'film', system)} {target.film}</dd></div>
    </dl>
  );
}
