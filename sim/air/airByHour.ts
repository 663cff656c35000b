import { CrosscoatError } from '../base/errors.ts';
import { minutesOf } from '../base/localTime.ts';
import type { AirSpec, HourSpec } from '../job/schema.ts';
import { airWithMoisture, makeAir, type MoistAir } from './moistAir.ts';

/** Air known at some times, rising. */
export interface AirByHour {
  readonly rows: readonly AirRow[];
}

/** The air at one time, minutes of `localTime`. */
export interface AirRow {
  readonly minute: number;
  readonly air: MoistAir;
}

/** The air at a time, and whether it is that of the first or the last row, held because nothing is known there. */
export interface AirAtTime {
  readonly air: MoistAir;
  readonly held: 'before' | 'after' | null;
}

/**
 * The job's hours as air.
 * @param place height and air speed of the room; its temperature and humidity are not used.
 * @throws CrosscoatError `not-found` without hours, `time` for times that are none or do not rise, and what `makeAir` throws.
 */
export function airByHour(hours: readonly HourSpec[], place: AirSpec): AirByHour {
  if (hours.length === 0) throw new CrosscoatError('not-found', '/hours is empty; give the air of at least one hour', { pointer: '/hours' });
  const rows = hours.map(({ at, temperature_C, humidity_percent }, i) => ({
    minute: minutesOf(at, { pointer: `/hours/${i}/at` }),
    air: makeAir({ ...place, temperature_C, humidity_percent }, `/hours/${i}`),
  }));
  const fall = rows.findIndex(({ minute }, i) => i > 0 && !(minute > (rows[i - 1] as AirRow).minute));
  if (fall > 0) {
    const [before, after] = [hours[fall - 1] as HourSpec, hours[fall] as HourSpec];
    throw new CrosscoatError('time', `/hours/${fall}/at = "${after.at}" is not after the time before it, "${before.at}"; give the times rising`, { pointer: `/hours/${fall}/at` });
  }
  return { rows };
}

/**
 * The air at any minute: between two rows linear in temperature and in moisture (kilograms of
 * water to one of dry air), not in relative humidity, which falls as air warms without losing any
 * water. Moisture that the air between cannot hold is taken as fallen out. Before the first row and
 * after the last their air is held, and `held` says so.
 */
export function airAt({ rows }: AirByHour, minute: number): AirAtTime {
  const [first, last] = [rows[0] as AirRow, rows.at(-1) as AirRow];
  if (minute < first.minute) return { air: first.air, held: 'before' };
  if (minute >= last.minute) return { air: last.air, held: minute > last.minute ? 'after' : null };
  const next = rowAfter(rows, minute);
  const [before, after] = [rows[next - 1] as AirRow, rows[next] as AirRow];
  const share = (minute - before.minute) / (after.minute - before.minute);
  if (share === 0) return { air: before.air, held: null };
  const between = (from: number, to: number): number => from + (to - from) * share;
  const temperature_K = between(before.air.temperature_K, after.air.temperature_K);
  return { air: airWithMoisture(temperature_K, between(before.air.humidityRatio, after.air.humidityRatio), before.air), held: null };
}

/** First row later than a minute, by bisection; there is one. */
function rowAfter(rows: readonly AirRow[], minute: number): number {
  let low = 0;
  let high = rows.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((rows[middle] as AirRow).minute > minute) high = middle;
    else low = middle;
  }
  return high;
}
