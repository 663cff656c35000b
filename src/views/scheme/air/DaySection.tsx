import type { JSX } from 'preact';
import { clockOf, DAY_LIMITS, dayRows, daySentences, localTimeOf, passingRows, shownUnit, SURFACE_MARGIN_K, type DayVerdicts } from '../../../../sim/index.ts';
import { airDay, airDays, lookAtAir } from '../../../app/scheme/airSheet.ts';
import { lookAtScheme } from '../../../app/scheme/scheme.ts';
import { state } from '../../../app/state.ts';
import { AirDayChart } from '../../../charts/AirDayChart.tsx';
import type { DayLine } from '../../../charts/airDayChart.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { HoursForm } from './HoursForm.tsx';

/** The air through the day against the film: picture, table, and the rows that it comes from. */
export function DaySection({ day }: { readonly day: DayVerdicts | null }): JSX.Element {
  const units = state.units.value;
  return (
    <section aria-labelledby="air-day">
      <h2 id="air-day">The day</h2>
      {airDays.value.length < 2 ? null : <ChoiceField id="air-day-choice" label="Day" value={airDay.value} options={airDays.value.map((date) => [date, date] as const)} choose={(date) => lookAtScheme({ airDay: date })} />}
      {day === null ? <p>No hours are given yet. Type the forecast or the readings of the day below, or open a logger’s file: works without a network.</p> : (
        <>
          <ul>{daySentences(day, null, units).map((text) => <li key={text}>{text}</li>)}</ul>
          <DayPicture day={day} />
          <DayTable day={day} />
          <details>
            <summary>How the day is judged</summary>
            <p>{DAY_LIMITS}</p>
            <p>Hours that each rule lets pass:</p>
            <dl class="scheme-air-passing">{passingRows(day).map(([name, count]) => <div key={name}><dt>{name}</dt><dd>{count}</dd></div>)}</dl>
          </details>
        </>
      )}
      <HoursForm />
    </section>
  );
}

function DayPicture({ day }: { readonly day: DayVerdicts }): JSX.Element {
  const isUs = state.units.value === 'us';
  const degrees = (kelvin: number): number => (isUs ? kelvin * 1.8 - 459.67 : kelvin - 273.15);
  const lines: DayLine[] = [
    { name: 'air', kind: 'air', values: day.hours.map(({ air }) => degrees(air.temperature_K)) },
    { name: 'wet film', kind: 'film', values: day.hours.map(({ film_K }) => degrees(film_K)) },
    { name: 'dew point', kind: 'dew', values: day.hours.map(({ air }) => degrees(air.dewPoint_K)) },
    { name: `surface at least (dew point + ${isUs ? '5.4 °F' : '3 °C'})`, kind: 'surface', values: day.hours.map(({ air }) => degrees(air.dewPoint_K + SURFACE_MARGIN_K)) },
  ];
  return (
    <AirDayChart
      minutes={day.hours.map(({ minute }) => minute)}
      lines={lines}
      goes={day.goes}
      unit={shownUnit('temperature-step', state.units.value).name}
      clock={(minute) => clockOf(localTimeOf(minute))}
      label={`Air, wet film and dew point through the day. ${daySentences(day, null, state.units.value)[0] ?? ''} The table below holds the figures.`}
    />
  );
}

function DayTable({ day }: { readonly day: DayVerdicts }): JSX.Element {
  const [head, ...rows] = dayRows(day, state.units.value);
  return (
    <details>
      <summary>The hours as a table</summary>
      <div class="scroll-box" tabIndex={0} role="region" aria-label="The hours of the day">
        <table class="scheme-air-table">
          <thead><tr>{head?.map((text) => <th key={text} scope="col">{text}</th>)}<td /></tr></thead>
          <tbody>
            {rows.map(([time, ...cells], i) => (
              <tr key={time}>
                <th scope="row">{time}</th>
                {cells.map((text, cell) => <td key={head?.[cell + 1]}>{text}</td>)}
                <td><button type="button" onClick={() => look(day, i, time ?? '')}>Look at {time}</button></td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}

function look(day: DayVerdicts, index: number, time: string): void {
  const hour = day.hours[index];
  if (hour !== undefined) lookAtAir(`Look at ${time}`, hour.air);
}
