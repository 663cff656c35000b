import type { ComparedMap, FitPasses, StrokeChoice, WindowAxis } from '../../../sim/index.ts';
import { merged } from '../merged.ts';

/** The sheets of the gun set-ups. */
export const SET_UPS_TABS = ['card', 'beside', 'window', 'hands', 'fit'] as const;
export type SetUpsTab = (typeof SET_UPS_TABS)[number];

/** What a photograph shows, as far as the photograph itself does not say. */
export interface PhotoPrefs {
  /** The rectangle that the four corners span. */
  readonly width_mm: number;
  readonly height_mm: number;
  /** A short burst of a standing gun, or a stroke. */
  readonly kind: 'burst' | 'stroke';
  /** Which side of the rectangle a stroke ran along. */
  readonly along: 'x' | 'y';
}

/** What the reader looks at of the gun set-ups, kept in this browser. A sheet adds a key of its own for what it keeps. */
export interface SetUpsPrefs {
  readonly tab: SetUpsTab;
  /** Id of the set-up that the sheets are about; empty, or gone from the job: the one that the coat sprays with. */
  readonly setUp: string;
  readonly photo: PhotoPrefs;
  /** The two settings that a working window turns. */
  readonly window: { readonly x: WindowAxis; readonly y: WindowAxis };
  readonly beside: BesidePrefs;
  readonly hands: HandsPrefs;
  readonly fit: FitPrefs;
}

/** What is wished for. */
export interface FitPrefs {
  /** Dry film or weight of all coats together, or each coat's own target. */
  readonly by: 'dry' | 'weight' | 'target';
  readonly dry_um: number;
  readonly weight_g_m2: number;
  readonly coats: number;
  readonly passes: FitPasses;
  /** Gun to panel, from and to; speeds of the hand; longest time for a coat, 0 for no limit. */
  readonly nearest_mm: number;
  readonly farthest_mm: number;
  readonly slowest_m_s: number;
  readonly fastest_m_s: number;
  readonly most_min: number;
}

/** Limits of each number of a wish. */
export const FIT_LIMITS_OF: Readonly<Record<Exclude<keyof FitPrefs, 'by' | 'passes'>, readonly [low: number, high: number]>> = {
  dry_um: [1, 500],
  weight_g_m2: [1, 600],
  coats: [1, 20],
  nearest_mm: [50, 600],
  farthest_mm: [50, 600],
  slowest_m_s: [0.05, 2],
  fastest_m_s: [0.05, 2],
  most_min: [0, 600],
};

/** Which hands spray. */
export interface HandsPrefs {
  /** A usual hand, or the coat's own measured one where it has one. */
  readonly hand: 'practised' | 'beginner' | 'own';
  readonly count: number;
}

/** Limits of the number of hands. */
export const HANDS_COUNT = { low: 20, high: 2000 };

/** What is set side by side. */
export interface BesidePrefs {
  /** Ids of set-ups, of which those that are gone from the job are passed over; null for the first few. */
  readonly setUps: readonly string[] | null;
  readonly strokes: StrokeChoice;
  readonly map: ComparedMap;
}

/** The settings of a window, and the maps of a comparison, in the order in which they are offered. */
export const AXES: readonly WindowAxis[] = ['distance', 'speed', 'overlap', 'fluid', 'thinner', 'temperature', 'humidity'];
export const COMPARED_MAPS: readonly ComparedMap[] = ['target', 'wet-now', 'dry-now', 'run', 'dew-margin', 'dry-share'];

/** Limits of the rectangle's sides, mm. */
export const PHOTO_SIDE_MM = { low: 20, high: 3000 };

/** The rectangle begins as a sheet of A3 paper, ISO 216; shops have others, and type theirs. */
export const USUAL_SET_UPS: SetUpsPrefs = {
  tab: 'card',
  setUp: '',
  photo: { width_mm: 420, height_mm: 297, kind: 'burst', along: 'x' },
  window: { x: 'distance', y: 'speed' },
  beside: { setUps: null, strokes: 'to-target', map: 'target' },
  hands: { hand: 'practised', count: 200 },
  fit: { by: 'dry', dry_um: 45, weight_g_m2: 60, coats: 3, passes: 'either', nearest_mm: 150, farthest_mm: 250, slowest_m_s: 0.2, fastest_m_s: 0.6, most_min: 0 },
};

/** Kept values that fit today's sheets; what an older build wrote otherwise is left at its usual. */
export function setUpsFrom(kept: unknown): SetUpsPrefs {
  const prefs = merged(USUAL_SET_UPS, kept) as SetUpsPrefs;
  const { photo } = prefs;
  const usual = USUAL_SET_UPS.photo;
  return {
    ...prefs,
    tab: SET_UPS_TABS.includes(prefs.tab) ? prefs.tab : USUAL_SET_UPS.tab,
    photo: {
      width_mm: isSide(photo.width_mm) ? photo.width_mm : usual.width_mm,
      height_mm: isSide(photo.height_mm) ? photo.height_mm : usual.height_mm,
      kind: photo.kind === 'stroke' ? 'stroke' : 'burst',
      along: photo.along === 'y' ? 'y' : 'x',
    },
    window: windowFrom(prefs.window),
    beside: besideFrom(prefs.beside),
    hands: handsFrom(prefs.hands),
    fit: fitFrom(prefs.fit),
  };
}

/** Two different settings of a window. */
function windowFrom({ x, y }: SetUpsPrefs['window']): SetUpsPrefs['window'] {
  return AXES.includes(x) && AXES.includes(y) && x !== y ? { x, y } : USUAL_SET_UPS.window;
}

function handsFrom({ hand, count }: HandsPrefs): HandsPrefs {
  const isCount = Number.isInteger(count) && count >= HANDS_COUNT.low && count <= HANDS_COUNT.high;
  return { hand: hand === 'beginner' || hand === 'own' ? hand : 'practised', count: isCount ? count : USUAL_SET_UPS.hands.count };
}

/** Numbers outside their limits are left at their usual, one by one. */
function fitFrom(fit: FitPrefs): FitPrefs {
  const usual = USUAL_SET_UPS.fit;
  const numbers = Object.entries(FIT_LIMITS_OF).map(([key, [low, high]]) => {
    const value = fit[key as keyof typeof FIT_LIMITS_OF];
    return [key, value >= low && value <= high ? value : usual[key as keyof typeof FIT_LIMITS_OF]];
  });
  const by = fit.by === 'weight' || fit.by === 'target' ? fit.by : 'dry';
  const passes = fit.passes === 'single' || fit.passes === 'cross' ? fit.passes : 'either';
  return { ...usual, ...(Object.fromEntries(numbers) as Partial<FitPrefs>), by, passes };
}

function besideFrom({ setUps, strokes, map }: BesidePrefs): BesidePrefs {
  return {
    setUps: Array.isArray(setUps) ? setUps.filter((id): id is string => typeof id === 'string') : null,
    strokes: strokes === 'as-stated' ? strokes : 'to-target',
    map: COMPARED_MAPS.includes(map) ? map : USUAL_SET_UPS.beside.map,
  };
}

function isSide(side_mm: number): boolean {
  return side_mm >= PHOTO_SIDE_MM.low && side_mm <= PHOTO_SIDE_MM.high;
}
