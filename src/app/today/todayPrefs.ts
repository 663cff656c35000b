import type { BackingWord } from '../../../sim/index.ts';
import { merged } from '../merged.ts';

/** What is typed on the front sheet, in the units of the job file. Null where the usual, or no reading, stands. */
export interface TodayPrefs {
  readonly temperature_C: number;
  readonly humidity_percent: number;
  readonly finish: string;
  readonly thinner: string;
  /** Volumes of thinner to one of finish; null for the recommended. */
  readonly thinnerPerFinish: number | null;
  readonly retarder_percent: number;
  readonly cup: string;
  readonly cupseconds: number | null;
  readonly area_m2: number;
  readonly dry_um: number;
  readonly coats: number | null;
  readonly slope_deg: number;
  readonly backing: BackingWord;
  readonly surface_C: number | null;
  readonly liquid_C: number | null;
  readonly afternoon_C: number | null;
  readonly sanded_um: number;
  readonly lands_percent: number;
  readonly altitude_m: number;
  readonly draught_m_s: number;
}

/** The same as the model's usual question; a test holds them together. */
export const USUAL_TODAY_PREFS: TodayPrefs = {
  temperature_C: 21,
  humidity_percent: 50,
  finish: 'clear-dope',
  thinner: 'general',
  thinnerPerFinish: null,
  retarder_percent: 0,
  cup: 'zahn-2',
  cupseconds: null,
  area_m2: 2,
  dry_um: 25,
  coats: null,
  slope_deg: 90,
  backing: 'open-cloth',
  surface_C: null,
  liquid_C: null,
  afternoon_C: null,
  sanded_um: 3,
  lands_percent: 65,
  altitude_m: 0,
  draught_m_s: 0.3,
};

type NumberKey = { readonly [Key in keyof TodayPrefs]: NonNullable<TodayPrefs[Key]> extends number ? Key : never }[keyof TodayPrefs];

/** Limits of each number, in the units of the job file; those of the model. */
export const TODAY_RANGES: Readonly<Record<NumberKey, readonly [low: number, high: number]>> = {
  temperature_C: [-20, 60],
  humidity_percent: [0, 100],
  thinnerPerFinish: [0, 10],
  retarder_percent: [0, 50],
  cupseconds: [1, 1000],
  area_m2: [0.01, 1000],
  dry_um: [1, 500],
  coats: [1, 60],
  slope_deg: [0, 180],
  surface_C: [-20, 60],
  liquid_C: [-20, 60],
  afternoon_C: [-20, 60],
  sanded_um: [0, 500],
  lands_percent: [5, 100],
  altitude_m: [-400, 5000],
  draught_m_s: [0, 5],
};

const BACKINGS: readonly BackingWord[] = ['open-cloth', 'thin-sheet', 'thick-board'];

/** Kept values that fit today's sheet; what an older build wrote otherwise is left at its usual, one by one. */
export function todayFrom(kept: unknown): TodayPrefs {
  const prefs = merged(USUAL_TODAY_PREFS, kept) as TodayPrefs;
  const numbers = (Object.keys(TODAY_RANGES) as NumberKey[]).map((key) => [key, isWithin(prefs[key], key) ? prefs[key] : USUAL_TODAY_PREFS[key]]);
  return {
    ...prefs,
    ...(Object.fromEntries(numbers) as Partial<TodayPrefs>),
    backing: BACKINGS.includes(prefs.backing) ? prefs.backing : USUAL_TODAY_PREFS.backing,
  };
}

function isWithin(value: unknown, key: NumberKey): boolean {
  if (value === null) return USUAL_TODAY_PREFS[key] === null;
  const [low, high] = TODAY_RANGES[key];
  return typeof value === 'number' && value >= low && value <= high && (key !== 'coats' || Number.isInteger(value));
}
