import { checkRange } from '../base/check.ts';
import { METRES_PER_FOOT } from '../base/units.ts';
import type { RuleSpec } from '../job/schema.ts';
import { READINGS_TO_A_SPOT, SPOTS_TO_AN_AREA } from './readingGroups.ts';

/** How many readings a rule's own table asks for. */
export interface SamplingNumbers {
  /** 1 where the rule knows no areas. */
  readonly areas: number;
  /** Places to read. */
  readonly spots: number;
  readonly readings: number;
  /** How many of the readings may be taken again beside a place that cannot be read; 0 where the table has none. */
  readonly repeats: number;
  /** Whose table, and how it counts. */
  readonly source: string;
}

/** The unit that the area was stated in: tables in feet round otherwise than those in metres. */
export type SamplingUnit = 'm2' | 'ft2';

const M2_PER_FT2 = METRES_PER_FOOT ** 2;
/** A share of a step that rounding of a unit may add; no area is stated so closely. */
const ROUNDING = 1e-9;
/** Rule for ships' ballast tanks: a reading on each so many m² of flat surface. */
const M2_TO_A_READING = 5;

const PA2 = 'SSPC-PA 2 (2012 on), as read: up to 300 ft² (30 m²) an area on each 100 ft² (10 m²); up to 1000 ft² (100 m²) three; one more for each further 1000 ft² (100 m²) or part of it; five spots to an area, three readings to a spot';
const ISO = 'ISO 19840:2012, sampling table, from memory: 5 readings up to 1 m², 10 to 3, 15 to 10, 20 to 30, 30 to 100 m², then 10 for each further 100 m² or part of it; one in five may be taken again';
const SHIPS = 'IMO resolution MSC.215(82), from memory: a reading on each 5 m² of flat surface';

/** ISO 19840:2012, sampling table, from memory: area up to, readings, repeats. */
const ISO_ROWS: readonly (readonly [upTo_m2: number, readings: number, repeats: number])[] = [[1, 5, 1], [3, 10, 2], [10, 15, 3], [30, 20, 4], [100, 30, 6]];

/**
 * How many areas, spots and readings a rule's own table asks for. The shop's own rule has no table and takes that of ISO 19840.
 * @param area_m2 to be surveyed, 1e-4 to 1e6 m².
 * @param unit what it was stated in: by SSPC-PA 2 ten m² stand for a hundred ft², which they are not quite.
 * @throws CrosscoatError `range`.
 */
export function samplingNumbers(rule: RuleSpec['kind'], area_m2: number, unit: SamplingUnit = 'm2'): SamplingNumbers {
  checkRange({ name: 'samplingNumbers: area', value: area_m2, low: 1e-4, high: 1e6, unit: 'm²', advice: 'give the area of the panel that is surveyed' });
  switch (rule) {
    case 'spots-areas':
      return spotsOf(areasFor(unit === 'ft2' ? area_m2 / M2_PER_FT2 / 10 : area_m2));
    case 'ninety-ten': {
      const readings = steps(area_m2, M2_TO_A_READING);
      return { areas: 1, spots: readings, readings, repeats: 0, source: SHIPS };
    }
    case 'mean-80':
      return readingsFor(area_m2, ISO);
    case 'shop':
      return readingsFor(area_m2, `The shop’s own rule has no table; borrowed from ${ISO}`);
  }
}

/** @param area in m², or in tens of ft². */
function areasFor(area: number): number {
  if (!isAbove(area, 30)) return steps(area, 10);
  return isAbove(area, 100) ? 3 + steps(area - 100, 100) : 3;
}

function spotsOf(areas: number): SamplingNumbers {
  const spots = areas * SPOTS_TO_AN_AREA;
  return { areas, spots, readings: spots * READINGS_TO_A_SPOT, repeats: 0, source: PA2 };
}

function readingsFor(area_m2: number, source: string): SamplingNumbers {
  const row = ISO_ROWS.find(([upTo_m2]) => !isAbove(area_m2, upTo_m2));
  const readings = row?.[1] ?? 30 + 10 * steps(area_m2 - 100, 100);
  return { areas: 1, spots: readings, readings, repeats: row?.[2] ?? Math.floor(readings / 5), source };
}

/** Steps of a size, or parts of them, at least one. */
function steps(size: number, step: number): number {
  return Math.max(1, Math.ceil((size / step) * (1 - ROUNDING)));
}

function isAbove(size: number, limit: number): boolean {
  return size > limit * (1 + ROUNDING);
}
