import type { JSX } from 'preact';
import { legendIn, isWholeSide, shownTime, type Field, type ReportedComparison } from '../../../../sim/index.ts';
import { besideSheet } from '../../../app/setups/besideSheet.ts';
import { state } from '../../../app/state.ts';
import { DASHES, SideSections } from '../../../charts/SideSections.tsx';
import { sectionValues } from '../../../charts/sideSections.ts';
import { LessonMap } from '../../demonstrations/LessonMap.tsx';
import { unitOfField } from '../../panel/fieldWords.ts';
import { MapLegend } from '../../panel/MapLegend.tsx';

export interface SideMapsProps {
  readonly comparison: ReportedComparison;
  readonly times_s: readonly number[];
}

/** The sides' maps on one clock and one scale, and a level line through all of them. */
export function SideMaps({ comparison, times_s }: SideMapsProps): JSX.Element {
  const { fields, index, section } = besideSheet;
  const first = fields.value.find((field) => field !== null) ?? null;
  const time = times_s[index.value] ?? 0;
  return (
    <section aria-label="Maps">
      <label class="window-slider">
        <span>Time since trigger on <span class="window-value">{shownTime(time)}</span></span>
        <input type="range" min={0} max={times_s.length - 1} value={index.value} aria-valuetext={shownTime(time)} onInput={(event) => (index.value = Number(event.currentTarget.value))} />
      </label>
      <div class="setups-maps">
        {comparison.sides.map((side, i) => {
          const field = fields.value[i] ?? null;
          return (
            <figure key={side.setUp.id}>
              <figcaption><svg class="side-key" viewBox="0 0 40 8" aria-hidden="true"><path class={`side-line side-${i}`} stroke-dasharray={DASHES[i % DASHES.length]} d="M0,4 H40" /></svg>{side.setUp.name}</figcaption>
              {!isWholeSide(side) ? <p class="soft">Not compared; the reason stands below.</p> : field === null ? <p class="soft" role="status">Drawing…</p> : <SideMap field={field} name={side.setUp.name} />}
            </figure>
          );
        })}
      </div>
      {first === null ? null : <MapLegend field={first} units={state.units.value} />}
      {first === null ? null : (
        <>
          <label class="window-slider">
            <span>Section at <span class="window-value">{Math.round(section.value * 100)} % of the height</span></span>
            <input type="range" min={0} max={100} value={Math.round(section.value * 100)} onInput={(event) => (section.value = Number(event.currentTarget.value) / 100)} />
          </label>
          <Sections comparison={comparison} first={first} />
        </>
      )}
    </section>
  );
}

function SideMap({ field, name }: { readonly field: Field; readonly name: string }): JSX.Element {
  return (
    <div class="side-map">
      <LessonMap field={field} values={field.values} title={name} />
      <span class="side-cut" style={{ bottom: `${besideSheet.section.value * 100}%` }} aria-hidden="true" />
    </div>
  );
}

function Sections({ comparison, first }: { readonly comparison: ReportedComparison; readonly first: Field }): JSX.Element {
  const sides = comparison.sides.flatMap((side, i) => {
    const field = besideSheet.fields.value[i];
    if (field === null || field === undefined) return [];
    return [{ name: side.setUp.name, values: sectionValues(field.values, field.grid.columns, field.grid.rows, besideSheet.section.value) }];
  });
  const { title, unit, ticks } = legendIn(first, unitOfField(first, state.units.value));
  return <SideSections sides={sides} domain={first.domain} ticks={ticks.map(({ value, text }) => ({ value, text }))} label={`${title}${unit === '' ? '' : `, ${unit}`}, along the section, of ${sides.map(({ name }) => name).join(', ')}`} />;
}
