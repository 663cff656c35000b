import type { StepSpec } from '../job/schema.ts';
import type { PlannedScheme, PlannedStep, Spread } from './planned.ts';
import { exactly, scaled, summed } from './spread.ts';

/** What a step adds to the part; sanding has a negative weight. */
export interface StepWeight {
  readonly stepId: string;
  readonly name: string;
  readonly kind: StepSpec['kind'];
  readonly isCoat: boolean;
  /** On all panels and sides, kg. */
  readonly added_kg: Spread;
  /** On the area where it lies, kg/m². */
  readonly where_kg_m2: Spread;
}

/** A panel's share. */
export interface PanelWeight {
  readonly panelId: string;
  readonly name: string;
  /** All its sides, m². */
  readonly area_m2: number;
  readonly added_kg: Spread;
  /** Of the cloth under it, kg; 0 where it is not asked for. */
  readonly cloth_kg: number;
  /** Each step's part, in the order of the steps, kg. */
  readonly steps_kg: readonly number[];
}

/** Weight that a scheme adds. */
export interface AddedWeight {
  readonly area_m2: number;
  readonly total_kg: Spread;
  /** Coats less what sanding takes, without tapes and patches, kg. */
  readonly film_kg: Spread;
  /** Total over the whole area, kg/m². */
  readonly mean_kg_m2: Spread;
  readonly cloth_kg: number;
  readonly cloth_kg_m2: number | null;
  readonly steps: readonly StepWeight[];
  readonly panels: readonly PanelWeight[];
  /** Places of coats in `steps`, heaviest first: which coats hold most of it. */
  readonly heaviest: readonly number[];
}

/** What published weights say for as many coats of the same kinds. */
export interface PublishedBand {
  readonly low_kg_m2: number;
  readonly high_kg_m2: number;
  readonly coats: number;
  readonly source: string;
}

/** A panel as far as its weight goes. */
export interface WeighedPanel {
  readonly id: string;
  readonly name: string;
  /** One side, m². */
  readonly area_m2: number;
}

/** Grade A cotton, 4.03 oz/yd²: K. D. Wood, Airplane Design, 8th ed. 1947, 0.028 lb/ft², as quoted. */
export const COTTON_kg_m2 = 0.1367;

/**
 * Weight that a scheme adds, by step and by panel. Each panel takes its share by area, as every coat of a scheme lies on all of them alike; a
 * coat on a share of the area is spread evenly, since where it lies is not known. The spread of a total takes all coats to be off the same
 * way at once. Left out: what soaks through to the back, primer beneath, dust.
 * @param cloth_kg_m2 weight of the cloth to be counted too; null without it.
 */
export function addedWeight(plan: PlannedScheme, panels: readonly WeighedPanel[], cloth_kg_m2: number | null): AddedWeight {
  const steps = plan.steps.map((step, i) => stepWeight(step, plan.steps[i - 1]));
  const total_kg = plan.steps.at(-1)?.added_kg ?? exactly(0);
  const area_m2 = plan.scheme.sides * panels.reduce((sum, panel) => sum + panel.area_m2, 0);
  return {
    area_m2,
    total_kg,
    film_kg: summed(steps.filter(({ kind }) => kind !== 'fix').map(({ added_kg }) => added_kg)),
    mean_kg_m2: scaled(total_kg, 1 / area_m2),
    cloth_kg: (cloth_kg_m2 ?? 0) * area_m2,
    cloth_kg_m2,
    steps,
    panels: panels.map(({ id, name, area_m2: side_m2 }) => {
      const own_m2 = side_m2 * plan.scheme.sides;
      const share = own_m2 / area_m2;
      return {
        panelId: id, name, area_m2: own_m2, added_kg: scaled(total_kg, share), cloth_kg: (cloth_kg_m2 ?? 0) * own_m2,
        steps_kg: steps.map(({ added_kg }) => added_kg.value * share),
      };
    }),
    heaviest: steps.map((_, i) => i).filter((i) => steps[i]?.isCoat).sort((a, b) => (steps[b] as StepWeight).added_kg.value - (steps[a] as StepWeight).added_kg.value),
  };
}

/** The change of the weight on the part; a coat's own spread, else the change of the total's. */
function stepWeight({ spec, coat, area_m2, added_kg }: PlannedStep, before: PlannedStep | undefined): StepWeight {
  const was = before?.added_kg ?? exactly(0);
  const change: Spread = { value: added_kg.value - was.value, low: Math.min(added_kg.low - was.low, added_kg.high - was.high), high: Math.max(added_kg.low - was.low, added_kg.high - was.high) };
  const added = coat === null ? change : scaled(coat.weight_kg_m2, area_m2);
  return { stepId: spec.id, name: spec.name, kind: spec.kind, isCoat: coat !== null, added_kg: added, where_kg_m2: scaled(added, 1 / area_m2) };
}

/**
 * What the published weights of single coats add to for this scheme's coats: its low and its high ends summed, each coat by the share of the
 * area that it covers. Null for a scheme without coats. One wide band from one book, read as quoted; it can show that a plan is
 * not absurd, and no more.
 */
export function publishedBand({ steps, area_m2 }: PlannedScheme): PublishedBand | null {
  const coats = steps.flatMap((step) => (step.coat === null ? [] : [{ band: step.coat.mix.finish.heaviestCoat_kg_m2, share: step.area_m2 / area_m2 }]));
  const [first] = coats;
  if (first === undefined) return null;
  const sums = summed(coats.map(({ band, share }) => scaled(band, share)));
  return { low_kg_m2: sums.low, high_kg_m2: sums.high, coats: coats.length, source: first.band.source };
}
