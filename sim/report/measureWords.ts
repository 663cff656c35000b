import type { Measure } from '../job/measures.ts';
import { shown, shownAngle, shownPercent, shownTime, type UnitSystem } from './units.ts';

/** A measure in words. */
export interface MeasureWords {
  readonly title: string;
  /** What is measured, as a clause. */
  readonly means: string;
  /** Unit of its limits in a rubric file. */
  readonly unit: 'mm' | 'percent' | 'deg' | 's';
}

/** Every measure of a practice session in words. */
export const MEASURE_WORDS: Readonly<Record<Measure, MeasureWords>> = {
  distance: { title: 'Gun distance', means: 'gun distance off what was meant: root mean square over the time with fluid on', unit: 'mm' },
  speed: { title: 'Speed', means: 'speed of travel off what was meant, as a share of that: root mean square over the time with fluid on', unit: 'percent' },
  angle: { title: 'Gun square', means: 'gun off square to the panel: what is exceeded for a twentieth of the time with fluid on', unit: 'deg' },
  overlap: { title: 'Overlap', means: "overlap off what was meant, in shares of the fan's width: root mean square over the strokes that lap another", unit: 'percent' },
  trigger: { title: 'Trigger', means: 'stroke ends with the fluid on outside the edge and the gun moving, as a share of the stroke ends at an edge', unit: 'percent' },
  stops: { title: 'Stops', means: 'time that the gun stood still with fluid on', unit: 's' },
  coverage: { title: 'Coverage', means: 'share of the panel with at least the thinnest film that the target allows', unit: 'percent' },
  evenness: { title: 'Evenness', means: 'film over the panel: standard deviation over mean', unit: 'percent' },
  runs: { title: 'Runs', means: 'share of the panel where film has run', unit: 'percent' },
  'dry-laps': { title: 'Dry laps', means: 'share of the panel where fresh film lies on a lap that had set', unit: 'percent' },
  dust: { title: 'Dry spray', means: 'share of the panel where the film arrived too dry to flow out', unit: 'percent' },
  paint: { title: 'Paint', means: 'liquid sprayed beyond what the plan sprays, as a share of that', unit: 'percent' },
  time: { title: 'Time', means: 'time taken beyond what the plan takes, as a share of that', unit: 'percent' },
};

/**
 * A figure of a measure with its unit: `12 mm`, `15 %`, `7°`, `0.7 s`; `not shown` where the session
 * has nothing to measure it by.
 * @param value SI: m, share, rad or s.
 */
export function shownMeasure(measure: Measure, value: number | null, system: UnitSystem): string {
  if (value === null) return 'not shown';
  switch (MEASURE_WORDS[measure].unit) {
    case 'mm':
      return shown(value, 'length', system);
    case 'percent':
      return shownPercent(value);
    case 'deg':
      return shownAngle(value);
    case 's':
      return shownTime(value);
  }
}
