import type { FilmMoment } from '../../sim/index.ts';

/** Film that has run further than this has run, m: a millimetre can be seen. */
const RAN_M = 1e-3;

/** Cells whose film has run. */
export function ranCells({ run_m }: FilmMoment): Uint32Array {
  const cells: number[] = [];
  for (let cell = 0; cell < run_m.length; cell++) if ((run_m[cell] as number) > RAN_M) cells.push(cell);
  return Uint32Array.from(cells);
}
