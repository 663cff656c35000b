import type { JSX } from 'preact';
import { CELSIUS_0_K, notedAir, notedAirWords, shownPercent, shownTemperature } from '../../../../sim/index.ts';
import { isHalfTyped } from '../../../app/log/entryFields.ts';
import { openEntry } from '../../../app/log/log.ts';
import { state } from '../../../app/state.ts';
import { GroupNumber } from './EntryBoxes.tsx';

/** The air as read at the start or the end; dew point and how far the surface is above it stand below as soon as they are known. */
export function AirFields({ group }: { readonly group: 'airStart' | 'airEnd' }): JSX.Element {
  const { air } = state.job.value;
  const units = state.units.value;
  const when = group === 'airStart' ? 'at the start' : 'at the end';
  const found = notedAir(openEntry.value?.[group], air.altitude_m);
  return (
    <fieldset class="log-entries-group">
      <legend>Air {when}</legend>
      <GroupNumber group={group} name="temperature_C" label={`Air temperature ${when}`} hint={group === 'airStart' ? `Planned with ${shownTemperature(air.temperature_C + CELSIUS_0_K, units)} and ${shownPercent(air.humidity_percent / 100)}; type what you read.` : undefined} />
      <GroupNumber group={group} name="humidity_percent" label={`Relative humidity ${when}`} />
      <GroupNumber group={group} name="surface_C" label={`Surface of the part ${when}`} hint="May be left empty; without it nothing is said of dew." />
      <p role="status" class="log-entries-found">
        {found === null ? (isHalfTyped(group) ? 'Kept as typed; it counts once temperature and humidity are both there.' : '') : notedAirWords(found, units)}
      </p>
    </fieldset>
  );
}
