import { evenScale } from '../base/evenScale.ts';
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

/** A unit that a legend's numbers are in: its name, and one of it in SI. */
export interface LegendUnit {
  readonly name: string;
  readonly size: number;
}

/**
 * Ticks at round numbers of the unit shown: thickness in `thickness`, shares in per cent,
 * strokes in whole numbers.
 */
export function fieldLegend(field: Field, thickness: ThicknessUnit): Legend {
  if (field.unit === 'm') return legendIn(field, { name: thickness.name, size: thickness.metres });
  return legendIn(field, field.unit === 'fraction' ? { name: '%', size: 0.01 } : { name: '', size: 1 });
}

/** The same, in any unit: a logarithmic field has its ticks at powers of ten. */
export function legendIn(field: Field, unit: LegendUnit): Legend {
  const ticks = field.isLog ? decadeTicks(field, unit) : evenTicks(field, unit);
  return { title: field.title, unit: unit.name, ticks, isClipped: field.isClipped };
}

function evenTicks({ domain: [low, high], unit }: Field, { size }: LegendUnit): LegendTick[] {
  const scale = evenScale([low / size, high / size]);
  const format = scale.tickText(TICK_COUNT);
  const shown = scale.ticks(TICK_COUNT).filter((tick) => unit !== 'count' || Number.isInteger(tick));
  return shown.map((tick) => ({ value: tick * size, place: scale(tick), text: format(tick) }));
}

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';
/** From here on a power of ten is written as one. */
const LONG_EXPONENT = 4;

/** Values, like the field's own, are decimal logarithms. */
function decadeTicks({ domain: [low, high] }: Field, { size }: LegendUnit): LegendTick[] {
  const shift = Math.log10(size);
  const ticks: LegendTick[] = [];
  for (let exponent = Math.ceil(low - shift - 1e-9); exponent <= high - shift + 1e-9; exponent++) {
    const value = exponent + shift;
    const text = exponent < LONG_EXPONENT ? String(Number((10 ** exponent).toPrecision(1))) : `10${RAISED[exponent] ?? `^${exponent}`}`;
    ticks.push({ value, place: (value - low) / (high - low), text });
  }
  return ticks;
}
