import { scaleLinear } from 'd3-scale';
import type { Field } from './field.ts';

/** One tick of a legend. */
export interface LegendTick {
  /** In the field's own unit (SI). */
  readonly value: number;
  /** Place along the colour bar, 0 at the first colour and 1 at the last. */
  readonly place: number;
  /** Number as shown, without the unit. */
  readonly text: string;
}

/** A colour bar in words. */
export interface Legend {
  readonly title: string;
  /** Unit of the ticks' texts; empty for a count. */
  readonly unit: string;
  readonly ticks: readonly LegendTick[];
  /** Whether the last colour also stands for more than its value. */
  readonly isClipped: boolean;
}

/** How a thickness is shown: metres in one unit, and the unit's name. */
export interface ThicknessUnit {
  readonly name: string;
  readonly metres: number;
}

/** About this many ticks. */
const TICK_COUNT = 5;

/**
 * Ticks at round numbers of the unit shown: thickness in `thickness`, shares in per cent,
 * strokes in whole numbers.
 */
export function fieldLegend(field: Field, thickness: ThicknessUnit): Legend {
  const size = field.unit === 'm' ? thickness.metres : field.unit === 'fraction' ? 0.01 : 1;
  const [low, high] = field.domain;
  const scale = scaleLinear().domain([low / size, high / size]).range([0, 1]);
  const format = scale.tickFormat(TICK_COUNT);
  const shown = scale.ticks(TICK_COUNT).filter((tick) => field.unit !== 'count' || Number.isInteger(tick));
  return {
    title: field.title,
    unit: field.unit === 'm' ? thickness.name : field.unit === 'fraction' ? '%' : '',
    ticks: shown.map((tick) => ({ value: tick * size, place: scale(tick), text: format(tick) })),
    isClipped: field.isClipped,
  };
}
