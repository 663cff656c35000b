import {
  CELSIUS_0_K,
  airAdvice, airAdviceJson, airAdviceText, changedMixSpec, checkRange, CrosscoatError, minutesOf, USUAL_AIR,
  type AirSpec, type HourSpec, type UnitSystem,
} from '../../sim/index.ts';
import { hoursOf, minuteAt } from './airHours.ts';
import { statedMix } from './chosenMix.ts';
import { EXIT } from './exitCodes.ts';
import type { Io } from './io.ts';
import { quantityOf } from './optionValues.ts';

/** Options of `crosscoat air` as commander gives them. */
export interface AirOptions {
  readonly temp?: string;
  readonly rh?: string;
  readonly altitude?: string;
  readonly speed?: string;
  readonly surface?: string;
  readonly hours?: string;
  readonly at?: string;
  readonly retarder?: string;
  readonly mix: string;
  readonly faces: '1' | '2';
  readonly units: UnitSystem;
  readonly json?: true;
}

/** Shares of retarder whose film is shown, % of the thinner: the middle and a little more than the usual 5 to 15 %. */
const SHOWN_percent = [10, 20];

/** Says whether this air goes for a film of a mix and by whose rule, and what would help. @returns the exit code. */
export async function air(io: Io, options: AirOptions): Promise<number> {
  const { hours, warnings } = await hoursOf(io, options.hours);
  const { spec, pointer } = await statedMix(io, options.mix);
  const minute = statedMinute(options, hours);
  const advice = airAdvice({
    air: statedAir(options, hours),
    mix: options.retarder === undefined ? spec : changedMixSpec(spec, { retarder_percent: statedRetarder_percent(options.retarder) }),
    pointer,
    faces: options.faces === '1' ? 1 : 2,
    surface_K: statedSurface_K(options.surface),
    hours,
    minute,
    shown_percent: SHOWN_percent,
  });
  for (const { text } of warnings) io.err(`crosscoat: ${text}\n`);
  await io.out(options.json === true ? `${JSON.stringify(airAdviceJson(advice), null, 2)}\n` : airAdviceText(advice, options.units));
  return EXIT.done;
}

/** Null: the room as typed. Without a typed room and without a time: the first row. */
function statedMinute({ temp, rh, at }: AirOptions, hours: readonly HourSpec[]): number | null {
  if (at !== undefined) {
    if (temp === undefined && rh === undefined) return minuteAt(at, hours);
    throw new CrosscoatError('columns', '--at takes the air from --hours; leave out --temp and --rh, or leave out --at');
  }
  return temp === undefined && rh === undefined && hours[0] !== undefined ? minutesOf(hours[0].at) : null;
}

function statedAir({ temp, rh, altitude, speed }: AirOptions, hours: readonly HourSpec[]): AirSpec {
  const place = {
    altitude_m: altitude === undefined ? USUAL_AIR.altitude_m : quantityOf('--altitude', altitude, ['length', 'm', '300m or 1000ft']),
    speed_m_s: speed === undefined ? USUAL_AIR.speed_m_s : quantityOf('--speed', speed, ['speed', 'm/s', '0.5m/s or 100ft/min']),
    ceiling_C: USUAL_AIR.ceiling_C,
  };
  if (temp === undefined && rh === undefined && hours.length > 0) return { ...USUAL_AIR, ...place };
  if (temp === undefined || rh === undefined) {
    const [option, example] = temp === undefined ? ['--temp <temperature>', '21C'] : ['--rh <percent>', '65%'];
    throw new CrosscoatError('columns', `required option '${option}' not specified; give it, such as ${example}, or the day with --hours FILE.csv`);
  }
  return {
    temperature_C: tidy(quantityOf('--temp', temp, ['temperature', '°C', '21C or 70F']) - CELSIUS_0_K),
    humidity_percent: statedPercent('--rh', rh),
    ...place,
  };
}

function statedSurface_K(text: string | undefined): number | null {
  if (text === undefined) return null;
  const surface_K = quantityOf('--surface', text, ['temperature', '°C', '18C or 64F']);
  checkRange({ name: '--surface', value: tidy(surface_K - CELSIUS_0_K), low: -20, high: 80, unit: '°C', advice: 'give the temperature of the part' });
  return surface_K;
}

function statedRetarder_percent(text: string): number {
  const percent = statedPercent('--retarder', text);
  checkRange({ name: '--retarder', value: percent, low: 0, high: 100, unit: '%', advice: 'give its share of the thinner; 5 to 15 % is usual' });
  return percent;
}

function statedPercent(option: string, text: string): number {
  const percent = tidy(quantityOf(option, text, ['ratio', '%', '65%']) * 100);
  if (percent === 0 || percent > 1 || text.includes('%')) return percent;
  throw new CrosscoatError('unit', `${option} = "${text}" may mean ${percent} % or ${tidy(percent * 100)} %; write the % sign`);
}

/** Without the last digits that changing the unit leaves. */
function tidy(value: number): number {
  return Number(value.toPrecision(12));
}
