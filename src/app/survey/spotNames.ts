import type { ReadingSpec } from '../../../sim/index.ts';

/** Fewest readings of a spot, and spots of an area (SSPC-PA 2, as read in its public summaries). */
export const SPOT_READINGS = 3;
export const AREA_SPOTS = 5;

/** Where the next reading belongs: the spot's name, how many readings it has by now, and how many spots of its area are whole. */
export interface NextSpot {
  readonly spot: string;
  readonly taken: number;
  readonly whole: number;
}

/** The spot of an area that the next reading belongs to: the one begun last, until it has its three readings, then the next number. */
export function nextSpot(readings: readonly ReadingSpec[], area: string): NextSpot {
  const counts = new Map<string, number>();
  let last: string | null = null;
  for (const reading of readings) {
    if ((reading.area ?? '') !== area || reading.spot === undefined) continue;
    counts.set(reading.spot, (counts.get(reading.spot) ?? 0) + 1);
    last = reading.spot;
  }
  const whole = [...counts.values()].filter((count) => count >= SPOT_READINGS).length;
  const taken = last === null ? 0 : (counts.get(last) ?? 0);
  if (last !== null && taken < SPOT_READINGS) return { spot: last, taken, whole };
  let number = counts.size + 1;
  while (counts.has(String(number))) number++;
  return { spot: String(number), taken: 0, whole };
}

/** The area after this one: the number at its end goes up by one; a name without a number gets a 2, and none at all becomes 1. */
export function nextArea(area: string): string {
  const parts = /^(.*?)(\d+)$/.exec(area);
  if (parts !== null) return `${parts[1]}${Number(parts[2]) + 1}`.slice(0, 40);
  return area === '' ? '1' : `${area} 2`.slice(0, 40);
}
