import {
  CELSIUS_0_K,
  CrosscoatError, cupById, cupByWord, LEFT_IN_POT_M3, parseRatio, partDensities, planMixing, USUAL_LANDED, viscosityInRange_m2_s,
  type BatchAsked, type Cup, type MixingAsked, type MixRatio, type ThinningReading,
} from '../../sim/index.ts';
import type { StatedMix } from './chosenMix.ts';
import { secondsOf, temperatureOf } from './cupAnswer.ts';
import type { MixOptions } from './mixOptions.ts';
import { quantityOf, wholeNumber } from './optionValues.ts';

/** Where nothing else says it: a cup that lacquers ready for the gun run through in its range, and the temperature that makers state theirs for. */
const USUAL = { cup: 'zahn-2', temperature_K: 21 + CELSIUS_0_K };

/**
 * What the options ask of a mix. With `--want` and no `--ratio` the ratio is the one found for those seconds.
 * @throws `unit`, `range` or `schema`, naming the option.
 */
export function mixingAsked(stated: StatedMix, options: MixOptions): MixingAsked {
  const readings = options.reading.map((text) => readingOf(text, stated, options.by));
  const thinning = {
    cup: cupOf(stated, options, readings),
    temperature_K: temperatureAsked(stated, options, readings),
    readings,
    ...(options.want === undefined ? {} : { wanted_s: secondsOf('--want', options.want) }),
    ...(options.at === undefined ? {} : { later_K: temperatureOf('--at', options.at) }),
  };
  if (readings.length === 1) throw new CrosscoatError('range', '--reading was given once; a thinning law needs two readings at two ratios: give it again for the other');
  const batch = batchOf(options);
  const asked: MixingAsked = {
    thinning,
    ...(options.ratio === undefined ? {} : { ratio: ratioOf('--ratio', options.ratio, stated, options.by) }),
    ...(batch === null ? {} : { batch }),
    ...(options.pot === undefined ? {} : { pot_m3: quantityOf('--pot', options.pot, ['volume', 'L', '2L or 1 US gal']) }),
  };
  return options.want !== undefined && options.ratio === undefined ? { ...asked, ratio: wantedRatio(stated, asked) } : asked;
}

function ratioOf(option: string, text: string, { spec }: StatedMix, by: 'volume' | 'weight'): MixRatio {
  return parseRatio(text, partDensities(spec), by, { pointer: option });
}

function wantedRatio({ spec, pointer }: StatedMix, { thinning }: MixingAsked): MixRatio {
  const wanted = thinning === undefined ? null : (planMixing(spec, pointer, { thinning }).thinning?.wanted ?? null);
  if (wanted !== null && wanted.ratio !== null) return wanted.ratio;
  throw new CrosscoatError('range', `--want: ${wanted?.problem ?? 'no seconds are wanted'}`);
}

interface CliReading extends ThinningReading {
  readonly cup: Cup;
}

/** `2:1 ford4 30s 20C`. */
function readingOf(text: string, stated: StatedMix, by: 'volume' | 'weight'): CliReading {
  const parts = /^\s*(.+?)\s+(\S+)\s+(\S+)\s+(\S+)\s*$/.exec(text);
  if (parts === null) throw new CrosscoatError('unit', `--reading = "${text}" is not four things; give ratio, cup, seconds and temperature, such as "2:1 ford4 30s 20C"`);
  const [, ratio, cupWord, seconds, temperature] = parts as unknown as [string, string, string, string, string];
  const place = { pointer: '--reading' };
  const cup = cupByWord(cupWord, place);
  return {
    cup,
    thinnerPerFinish: ratioOf('--reading', ratio, stated, by).thinnerPerFinish,
    viscosity_m2_s: viscosityInRange_m2_s(cup, secondsOf('--reading', seconds), place),
    temperature_K: temperatureOf('--reading', temperature),
  };
}

function cupOf({ spec }: StatedMix, { cup }: MixOptions, readings: readonly CliReading[]): Cup {
  if (cup !== undefined) return cupByWord(cup, { pointer: '--cup' });
  return readings[0]?.cup ?? cupById(spec.cup?.kind ?? USUAL.cup);
}

function temperatureAsked({ spec }: StatedMix, { temp }: MixOptions, readings: readonly CliReading[]): number {
  if (temp !== undefined) return temperatureOf('--temp', temp);
  return readings[0]?.temperature_K ?? (spec.cup === undefined ? USUAL.temperature_K : spec.cup.temperature_C + CELSIUS_0_K);
}

function batchOf({ area, dry, wet, coats, transfer, left }: MixOptions): BatchAsked | null {
  if (area === undefined) {
    const given = Object.entries({ dry, wet, coats, transfer, left }).find(([, text]) => text !== undefined);
    if (given === undefined) return null;
    throw new CrosscoatError('range', `--${given[0]} is about a batch; give --area too, such as --area 6m2 --dry 25um`);
  }
  if ((dry === undefined) === (wet === undefined)) throw new CrosscoatError('range', '--area needs the film of one coat; give either --dry, such as --dry 25um, or --wet, such as --wet 100um');
  const thickness = quantityOf(dry === undefined ? '--wet' : '--dry', (dry ?? wet) as string, ['length', 'µm', '25um or 1mil']);
  const landed = transfer === undefined ? USUAL_LANDED : quantityOf('--transfer', transfer, ['ratio', '%', '65%']);
  return {
    area_m2: quantityOf('--area', area, ['area', 'm²', '6m2 or 60 sq ft']),
    coatCount: coats === undefined ? 1 : wholeNumber('--coats', coats, 1, 100, 'give how many coats are mixed for'),
    film: { kind: dry === undefined ? 'wet' : 'dry', thickness_m: { value: thickness, low: thickness, high: thickness } },
    landedFraction: typeof landed === 'number' ? { value: landed, low: landed, high: landed } : landed,
    left_m3: left === undefined ? LEFT_IN_POT_M3.value : quantityOf('--left', left, ['volume', 'mL', '100mL']),
  };
}
