import { CELSIUS_0_K } from '../base/units.ts';
import { SURFACE_MARGIN_K } from '../materials/surfaceMargin.ts';

/** What a rule of climate looks at: the air, the part's surface over the dew point, the wet film over the dew point. */
export type ClimateMeasure = 'temperature' | 'humidity' | 'surfaceMargin' | 'blushMargin';

/** How bad it is to be beyond a limit. */
export type ClimateVerdictWord = 'go' | 'care' | 'wait';

/** One edge or two of a rule: K for temperatures and margins, 0 to 1 for humidity. */
export interface ClimateLimit {
  readonly of: ClimateMeasure;
  readonly low?: number;
  readonly high?: number;
  /** The high edge itself is already too much ("below 65 %"). */
  readonly highExcluded?: true;
  /** What beyond the limit means. */
  readonly beyond: 'care' | 'wait';
}

export type ClimateRuleId = 'together' | 'circular' | 'army' | 'handbook' | 'surface' | 'film';

/** A published window, or a rule of ours, as data. */
export interface ClimateRule {
  readonly id: ClimateRuleId;
  /** Whose rule it is, in few words. */
  readonly name: string;
  readonly source: string;
  /** Passage read in the source or a copy; known from others that quote it; from memory; or our own. */
  readonly mark: 'read' | 'quoted' | 'memory' | 'ours';
  readonly limits: readonly ClimateLimit[];
  /** The plain verdict is the worst of the rules that count; the others stand beside it. */
  readonly counts: boolean;
}

/** °F as printed in the sources, in K. */
function fahrenheit_K(fahrenheit: number): number {
  return (fahrenheit - 32) / 1.8 + CELSIUS_0_K;
}

/**
 * Assumed: a film less than 1 K clear of the dew point asks for care. A hygrometer within 3 % of
 * relative humidity moves the dew point of a room at 21 °C by 0.7 to 0.9 K.
 */
export const CARE_MARGIN_K = 1;

/** Warmest air of any verdict but wait: 90 °F, TM 55-1500-345-23. */
export const WARMEST_K = fahrenheit_K(90);

/**
 * The windows that people quote, side by side; they disagree. "together" is our plain reading of
 * the three windows of air (assumed: green where the circular is content, amber to the narrowest
 * edges of the other two); it counts, with the film against the dew point and the surface.
 */
export const CLIMATE_RULES: readonly ClimateRule[] = [
  {
    id: 'together',
    name: 'The windows taken together',
    source: 'Assumed: go where AC 43.13-1B calls the air ideal; care as far as both TM 55-1500-345-23 (to 90 °F, 75 %) and the FAA airframe handbook (from 60 °F) let the air pass.',
    mark: 'ours',
    counts: true,
    limits: [
      { of: 'temperature', low: fahrenheit_K(65), high: fahrenheit_K(75), beyond: 'care' },
      { of: 'temperature', low: fahrenheit_K(60), high: WARMEST_K, beyond: 'wait' },
      { of: 'humidity', high: 0.65, highExcluded: true, beyond: 'care' },
      { of: 'humidity', high: 0.75, beyond: 'wait' },
    ],
  },
  {
    id: 'circular',
    name: 'FAA circular AC 43.13-1B',
    source: 'FAA Advisory Circular 43.13-1B, chapter 2, paragraph 2-21 a: ideal air for doping natural fabric.',
    mark: 'read',
    counts: false,
    limits: [
      { of: 'temperature', low: fahrenheit_K(65), high: fahrenheit_K(75), beyond: 'care' },
      { of: 'humidity', high: 0.65, highExcluded: true, beyond: 'care' },
    ],
  },
  {
    id: 'army',
    name: 'US Army TM 55-1500-345-23',
    source: 'US Army TM 55-1500-345-23, painting of aircraft: general rule where nothing more specific is stated (for paints at large, not for dope).',
    mark: 'read',
    counts: false,
    limits: [
      { of: 'temperature', low: fahrenheit_K(50), high: WARMEST_K, beyond: 'wait' },
      { of: 'humidity', low: 0.4, high: 0.75, beyond: 'wait' },
    ],
  },
  {
    id: 'handbook',
    name: 'FAA airframe handbook',
    source: 'FAA airframe handbook, chapter on paint and finish, read in a republished copy: blush is usual beyond these.',
    mark: 'read',
    counts: false,
    limits: [
      { of: 'temperature', low: fahrenheit_K(60), high: fahrenheit_K(95), beyond: 'wait' },
      { of: 'humidity', high: 0.8, beyond: 'wait' },
    ],
  },
  {
    id: 'surface',
    name: 'ISO 8502-4 and ISO 12944-7',
    source: 'ISO 8502-4 and ISO 12944-7 as others quote them; the standards were not read. They are for steel; taken here for any part.',
    mark: 'quoted',
    counts: true,
    limits: [
      { of: 'surfaceMargin', low: SURFACE_MARGIN_K, beyond: 'wait' },
      { of: 'humidity', high: 0.85, highExcluded: true, beyond: 'wait' },
    ],
  },
  {
    id: 'film',
    name: 'The film of this mix, by the model',
    source: 'Model: the wet film as a wet bulb of its solvents (W. K. Lewis, Trans. ASME 44, 1922), a lower bound. Assumed: care where it is less than 1 °C (1.8 °F) clear, as a hygrometer errs so much.',
    mark: 'ours',
    counts: true,
    limits: [
      { of: 'blushMargin', low: 0, beyond: 'wait' },
      { of: 'blushMargin', low: CARE_MARGIN_K, beyond: 'care' },
    ],
  },
];
