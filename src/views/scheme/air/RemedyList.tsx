import type { JSX } from 'preact';
import { FAN_CAUTION, firstMinute, HEATER_CAUTION, noRemedyWords, remedyHead, remedyTail, shownPercent, shownTemperature, timeWords, type AirAdvice, type Remedy, type UnitSystem } from '../../../../sim/index.ts';
import { applyRemedy } from '../../../app/scheme/airSheet.ts';
import { state } from '../../../app/state.ts';

/** What would turn the verdict: each with what it costs and a button that makes it so, in one step of undo. */
export function RemedyList({ advice }: { readonly advice: AirAdvice }): JSX.Element | null {
  const { remedies, day } = advice;
  const units = state.units.value;
  if (remedies.now.verdict === 'go') return null;
  const day_min = day === null ? 0 : firstMinute(day);
  const none = noRemedyWords(remedies, units);
  const isWarm = remedies.found.some(({ kind }) => kind === 'warm' || kind === 'warm-retard');
  return (
    <>
      <h3>What would make it go</h3>
      {remedies.found.length === 0 ? null : (
        <ul class="scheme-air-remedies">
          {remedies.found.map((remedy) => {
            const act = buttonWords(remedy, units, day_min);
            return (
              <li key={`${remedy.kind} ${remedy.reaches}`}>
                <p><strong>{remedyHead(remedy, units, day_min)}</strong>: {remedyTail(remedy, units)}</p>
                <button type="button" onClick={() => applyRemedy(act, remedy)}>{act}</button>
              </li>
            );
          })}
        </ul>
      )}
      {none === null ? null : <p>{none}</p>}
      {isWarm ? (
        <div class="caution"><h4>Before you warm the room</h4><ul><li>{HEATER_CAUTION}</li><li>{FAN_CAUTION}</li></ul></div>
      ) : null}
    </>
  );
}

/** `Use 10 % retarder`, `Look at 14:00`: what the button changes in the job. */
function buttonWords({ kind, retarder, air, minute }: Remedy, units: UnitSystem, day_min: number): string {
  const use = `Use ${shownPercent(retarder?.retarderFraction ?? 0)} retarder`;
  const warm = `Look at ${shownTemperature(air.temperature_K, units)}`;
  const later = `Look at ${timeWords(minute ?? day_min, day_min)}`;
  switch (kind) {
    case 'warm': return warm;
    case 'retard': return use;
    case 'later': return later;
    case 'warm-retard': return `${warm} with ${shownPercent(retarder?.retarderFraction ?? 0)} retarder`;
    case 'later-retard': return `${later} with ${shownPercent(retarder?.retarderFraction ?? 0)} retarder`;
  }
}
