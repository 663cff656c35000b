import type { FilmReading } from '../filmReading.ts';
import type { RuleCheck } from '../judgedSurvey.ts';
import { answerAtLeast, answerAtMost, type Limit } from '../limits.ts';

/** A band of low films, and the share of the readings that may lie in it. */
export interface LowBand {
  /** Its floor, itself in the band. */
  readonly floor: Limit;
  /** Its top, itself above the band. */
  readonly top: Limit;
  readonly share: number;
  readonly includesShare: boolean;
}

/** Share of the readings that lie in a band of low films; a comb whose bounds stand on both sides of an edge may. */
export function checkLowShare({ floor, top, share, includesShare }: LowBand, readings: readonly FilmReading[]): RuleCheck {
  const inBand: number[] = [];
  const perhaps: number[] = [];
  // The nominal film itself is not low.
  const belowTop = { ...top, includesLimit: false };
  for (const { index, low_m, high_m } of readings) {
    const above = answerAtLeast(low_m, high_m, floor);
    const below = answerAtMost(low_m, high_m, belowTop);
    if (above === 'pass' && below === 'pass') inBand.push(index);
    else if (above !== 'fail' && below !== 'fail') perhaps.push(index);
  }
  const found = [inBand.length / readings.length, (inBand.length + perhaps.length) / readings.length] as const;
  // Fewer than none is asked of nobody.
  const includesLimit = includesShare || share === 0;
  const answer = answerAtMost(found[0], found[1], { value: share, includesLimit });
  return { code: 'low-share', answer, found, limit: share, includesLimit, readings: inBand.length > 0 ? inBand : perhaps.length > 0 ? perhaps : nearestAbove(readings), where: null };
}

/** None lies in the band: the least of all is the nearest to it. */
function nearestAbove(readings: readonly FilmReading[]): number[] {
  const least = readings.reduce((low, { low_m }) => Math.min(low, low_m), Infinity);
  return readings.filter(({ low_m }) => low_m === least).map(({ index }) => index);
}
