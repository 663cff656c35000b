import { CUPS } from '../../../sim/index.ts';

/** One cup reading of the reader's own; seconds are null until it is read. */
export interface MixReadingPrefs {
  readonly ratio: string;
  readonly seconds: number | null;
  readonly temperature_C: number;
}

/** What the sheet of the mix asks, kept in this browser. */
export interface MixPrefs {
  /** Id of the mix of the job; empty, or gone: the first. */
  readonly mix: string;
  /** The ratio as typed; empty for the one that the mix states. */
  readonly ratio: string;
  readonly by: 'volume' | 'weight';
  readonly cup: string;
  readonly wanted_s: number;
  /** Liquid in the cup now and later in the day. */
  readonly liquid_C: number;
  readonly later_C: number;
  /** What the cup said of the mix as it stands; null for not read. */
  readonly read_s: number | null;
  readonly first: MixReadingPrefs;
  readonly second: MixReadingPrefs;
  /** Id of the scheme's step that is mixed for, `own` for the numbers below, empty for the first coat that uses the mix. */
  readonly step: string;
  readonly area_m2: number;
  readonly dry_um: number;
  readonly coats: number;
  readonly landed_percent: number;
  readonly left_mL: number;
  readonly pot_mL: number;
}

type NumberKey = 'wanted_s' | 'liquid_C' | 'later_C' | 'read_s' | 'area_m2' | 'dry_um' | 'coats' | 'landed_percent' | 'left_mL' | 'pot_mL';

/** Limits of each number. */
export const MIX_LIMITS_OF: Readonly<Record<NumberKey, readonly [low: number, high: number]>> = {
  wanted_s: [1, 300],
  liquid_C: [0, 45],
  later_C: [0, 45],
  read_s: [1, 300],
  area_m2: [0.01, 1000],
  dry_um: [1, 500],
  coats: [1, 20],
  landed_percent: [5, 100],
  left_mL: [0, 5000],
  pot_mL: [50, 50000],
};

/** Limits of a reading's numbers. */
export const READING_LIMITS = { seconds: [1, 300], temperature_C: [0, 45] } as const;

/** Seconds and cup as lacquers are often sprayed; the film that a good cross coat leaves; a pot of one litre. */
export const USUAL_MIX: MixPrefs = {
  mix: '',
  ratio: '',
  by: 'volume',
  cup: 'zahn-2',
  wanted_s: 22,
  liquid_C: 21,
  later_C: 28,
  read_s: null,
  first: { ratio: '4:1', seconds: null, temperature_C: 21 },
  second: { ratio: '2:1', seconds: null, temperature_C: 21 },
  step: '',
  area_m2: 6,
  dry_um: 15,
  coats: 1,
  landed_percent: 65,
  left_mL: 100,
  pot_mL: 1000,
};

/** Kept values that are still values; numbers outside their limits are left at their usual, one by one. */
export function mixFrom(mix: MixPrefs): MixPrefs {
  const numbers = Object.entries(MIX_LIMITS_OF).map(([key, [low, high]]) => {
    const value = mix[key as NumberKey];
    return [key, isFrom(value, low, high) ? value : USUAL_MIX[key as NumberKey]];
  });
  return {
    ...mix,
    ...(Object.fromEntries(numbers) as Pick<MixPrefs, NumberKey>),
    by: mix.by === 'weight' ? 'weight' : 'volume',
    cup: CUPS.some(({ id }) => id === mix.cup) ? mix.cup : USUAL_MIX.cup,
    first: readingFrom(mix.first, USUAL_MIX.first),
    second: readingFrom(mix.second, USUAL_MIX.second),
  };
}

function readingFrom(reading: MixReadingPrefs, usual: MixReadingPrefs): MixReadingPrefs {
  const isWithin = (key: keyof typeof READING_LIMITS): boolean => isFrom(reading[key], READING_LIMITS[key][0], READING_LIMITS[key][1]);
  return { ratio: reading.ratio, seconds: isWithin('seconds') ? reading.seconds : usual.seconds, temperature_C: isWithin('temperature_C') ? reading.temperature_C : usual.temperature_C };
}

/** Where the usual is null anything may have been kept; an older build kept 0 for not read. */
function isFrom(value: unknown, low: number, high: number): boolean {
  return typeof value === 'number' && value >= low && value <= high;
}
