import type { ComparedFigure, ComparedName } from './reportedComparison.ts';
import { roundedText, shownTime, shownUnit, type Quantity, type ShownUnit, type UnitSystem } from './units.ts';

/** What a compared figure is shown as. */
type ShownAs = Extract<Quantity, 'film' | 'volume' | 'speed' | 'temperature-step' | 'weight' | 'areal-weight'> | 'percent' | 'time' | 'count';

/** A compared figure in words, and its name and unit in JSON. */
export interface ComparedWords {
  readonly title: string;
  readonly shownAs: ShownAs;
  /** Key in JSON, its unit, and one of that in SI. */
  readonly key: string;
  readonly unit: string;
  readonly size: number;
}

const UM = { unit: 'um', size: 1e-6 };
const ML = { unit: 'mL', size: 1e-6 };
const PERCENT = { unit: 'percent', size: 0.01 };
const PLAIN = { unit: 'count', size: 1 };

/** Every figure that set-ups are compared by, in words. */
export const COMPARED_WORDS: Readonly<Record<ComparedName, ComparedWords>> = {
  speed_m_s: { title: 'speed', shownAs: 'speed', key: 'speed', unit: 'm_s', size: 1 },
  wet_m: { title: 'mean wet film', shownAs: 'film', key: 'wet', ...UM },
  dry_m: { title: 'mean dry film', shownAs: 'film', key: 'dry', ...UM },
  weight_kg_m2: { title: 'dry film weighs', shownAs: 'areal-weight', key: 'weight', unit: 'g_m2', size: 1e-3 },
  cv: { title: 'film varies by', shownAs: 'percent', key: 'cv', ...PERCENT },
  minOverMax: { title: 'thinnest over heaviest', shownAs: 'percent', key: 'minOverMax', ...PERCENT },
  worstLapRatio: { title: 'worst lap: thinnest over mean', shownAs: 'percent', key: 'worstLap', ...PERCENT },
  runMarginFraction: { title: 'margin to a run, of its limit', shownAs: 'percent', key: 'runMargin', ...PERCENT },
  holdMarginFraction: { title: 'more film until it would run', shownAs: 'percent', key: 'holdMargin', ...PERCENT },
  holdMargin_m: { title: 'the same as film', shownAs: 'film', key: 'holdFilm', ...UM },
  dryMarginFraction: { title: 'margin to dry spray', shownAs: 'percent', key: 'dryMargin', ...PERCENT },
  peel_m: { title: 'ripple left', shownAs: 'film', key: 'ripple', ...UM },
  blushMargin_K: { title: 'coldest film over dew point', shownAs: 'temperature-step', key: 'blushMargin', unit: 'C', size: 1 },
  spraying_s: { title: 'time for the coat', shownAs: 'time', key: 'spraying', unit: 's', size: 1 },
  sprayed_m3: { title: 'liquid sprayed', shownAs: 'volume', key: 'sprayed', ...ML },
  landed_m3: { title: 'landed', shownAs: 'volume', key: 'landed', ...ML },
  lost_m3: { title: 'lost', shownAs: 'volume', key: 'lost', ...ML },
  fog_m3: { title: 'lost as fog', shownAs: 'volume', key: 'fog', ...ML },
  missed_m3: { title: 'lost beside the panel', shownAs: 'volume', key: 'missed', ...ML },
  flight_m3: { title: 'lost as solvent in flight', shownAs: 'volume', key: 'flight', ...ML },
  passes: { title: 'passes', shownAs: 'count', key: 'passes', ...PLAIN },
  strokes: { title: 'strokes', shownAs: 'count', key: 'strokes', ...PLAIN },
  solvent_m3: { title: 'solvent let into the room', shownAs: 'volume', key: 'solvent', ...ML },
  solvent_kg: { title: 'the same by weight', shownAs: 'weight', key: 'solventWeight', unit: 'g', size: 1e-3 },
};

/** An interval is not known better than to two figures. */
const INTERVAL_FIGURES = 2;

/** A figure with its half interval and its unit: `99.8 ± 29 µm`; `70.1 s`; `does not run` for an endless margin. */
export function comparedCell(name: ComparedName, { value, within }: ComparedFigure, system: UnitSystem): string {
  const { shownAs } = COMPARED_WORDS[name];
  if (value === Infinity) return 'does not run';
  if (shownAs === 'time') return shownTime(value);
  const { size, name: unit } = unitOf(shownAs, system);
  const half = roundedText(Number((within / size).toPrecision(INTERVAL_FIGURES)));
  return `${roundedText(value / size)}${half === '0' ? '' : ` ± ${half}`}${unit === '' ? '' : ` ${unit}`}`;
}

function unitOf(shownAs: Exclude<ShownAs, 'time'>, system: UnitSystem): ShownUnit {
  switch (shownAs) {
    case 'percent':
      return { name: '%', size: 0.01 };
    case 'count':
      return { name: '', size: 1 };
    case 'film':
    case 'volume':
    case 'speed':
    case 'temperature-step':
    case 'weight':
    case 'areal-weight':
      return shownUnit(shownAs, system);
  }
}
