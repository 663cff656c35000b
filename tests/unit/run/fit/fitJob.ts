import type { Job } from '../../../../sim/job/schema.ts';
import { smallJob, type SmallJobParts } from '../../../../sim/run/smallJob.ts';

/** A board of half a metre, the usual low-pressure gun and mix, a single coat of 50 µm wet. */
export function fitJob(parts: Partial<SmallJobParts> = {}): Job {
  return smallJob({ name: 'Fit', note: '', part: 'Board', panel_mm: [500, 500], coat: { id: 'coat', name: 'Coat' }, ...parts });
}

/** Numbers from 0 to below 1, evenly strewn and always the same (Halton), one row a base. */
export function strewn(count: number, bases: readonly number[] = [2, 3, 5, 7]): number[][] {
  return Array.from({ length: count }, (_, i) => bases.map((base) => radicalInverse(i + 1, base)));
}

function radicalInverse(number: number, base: number): number {
  let [value, share] = [0, 1 / base];
  for (let rest = number; rest > 0; rest = Math.floor(rest / base)) {
    value += (rest % base) * share;
    share /= base;
  }
  return value;
}
