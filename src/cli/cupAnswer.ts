import { M2_S_PER_MM2_S, cupByWord, cupTime, cupTimeAt, CrosscoatError, secondsInRange, USUAL_SENSITIVITY_K, viscosityInRange_m2_s, type Cup, type CupTime, type LaterSeconds, type ReportedCup } from '../../sim/index.ts';
import type { MixOptions } from './mixOptions.ts';
import { quantityOf } from './optionValues.ts';

type CupOptions = Pick<MixOptions, 'cup' | 'seconds' | 'viscosity' | 'from' | 'to' | 'temp' | 'at'>;


/**
 * What a cup says of seconds or of a viscosity; null where neither was given.
 * @throws `range` outside the cup's range, naming one that fits; `schema` for an unknown cup.
 */
export function cupAnswer(options: CupOptions): ReportedCup | null {
  const { seconds, viscosity, to } = options;
  if (seconds === undefined && viscosity === undefined) {
    if (options.from === undefined && to === undefined) return null;
    throw new CrosscoatError('range', '--from and --to turn the seconds of one cup into another’s; give --seconds too, such as --from ford4 --seconds 30 --to zahn2');
  }
  if (seconds !== undefined && viscosity !== undefined) throw new CrosscoatError('range', '--seconds and --viscosity both say how thick the liquid is; give one of them');
  const cup = cupAsked(options);
  const viscosity_m2_s = seconds === undefined ? viscosityOf(viscosity as string) : viscosityInRange_m2_s(cup, secondsOf('--seconds', seconds), { pointer: '--seconds' });
  const time = { ...cupTime(cup, viscosity_m2_s), seconds: secondsInRange(cup, viscosity_m2_s) };
  return { viscosity_m2_s, time, other: to === undefined ? null : otherCup(to, viscosity_m2_s), later: laterOf(cup, viscosity_m2_s, options), sensitivity_K: USUAL_SENSITIVITY_K };
}

/** Seconds of a drain time: `36`, `36s`, `0.5min`. */
export function secondsOf(option: string, text: string): number {
  const seconds = quantityOf(option, text, ['time', 's', '36s']);
  if (seconds > 0) return Number(seconds.toPrecision(12));
  throw new CrosscoatError('range', `${option} = "${text}" is no drain time; give seconds above 0, such as 36s`);
}

/** A temperature, K. */
export function temperatureOf(option: string, text: string): number {
  const kelvin = quantityOf(option, text, ['temperature', '°C', '21C or 70F']);
  if (kelvin >= 253 && kelvin <= 333.15) return kelvin;
  throw new CrosscoatError('range', `${option} = "${text}" is not from -20 to 60 °C; give the temperature of the liquid, such as 21C or 70F`);
}

function cupAsked({ cup, from }: CupOptions): Cup {
  if (cup !== undefined && from !== undefined) throw new CrosscoatError('range', '--cup and --from both say which cup; give one of them');
  const word = cup ?? from;
  if (word === undefined) throw new CrosscoatError('schema', 'seconds mean nothing without their cup; give --cup, such as --cup ford4 or --cup zahn2');
  return cupByWord(word, { pointer: cup === undefined ? '--from' : '--cup' });
}

function otherCup(word: string, viscosity_m2_s: number): CupTime {
  const cup = cupByWord(word, { pointer: '--to' });
  return { cup, seconds: secondsInRange(cup, viscosity_m2_s), fitting: cup };
}

function viscosityOf(text: string): number {
  const parts = /^\s*(\d+\.?\d*|\.\d+)\s*(?:mm²\/s|mm2\/s|cst)?\s*$/i.exec(text);
  const mm2_s = parts === null ? NaN : Number(parts[1]);
  if (mm2_s > 0 && mm2_s <= 1e5) return mm2_s * M2_S_PER_MM2_S;
  throw new CrosscoatError('unit', `--viscosity = "${text}" is no kinematic viscosity; give mm²/s (the same as cSt) above 0, such as 100`);
}

function laterOf(cup: Cup, viscosity_m2_s: number, { temp, at }: CupOptions): LaterSeconds | null {
  if (at === undefined) return null;
  if (temp === undefined) throw new CrosscoatError('range', '--at asks for the same mix at another temperature; give --temp, the temperature at which the seconds were read, too');
  const temperature_K = temperatureOf('--at', at);
  return { temperature_K, ...cupTimeAt(cup, viscosity_m2_s, temperatureOf('--temp', temp), temperature_K, USUAL_SENSITIVITY_K) };
}
