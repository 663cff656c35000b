import type { Panel } from '../../../sim/panel/panel.ts';

/** A panel record straight from corners in m, for tests of the strokes alone. */
export function panelOf(corners: readonly (readonly [number, number])[], holes: readonly (readonly (readonly [number, number])[])[] = []): Panel {
  const xs = corners.map(([x]) => x);
  const ys = corners.map(([, y]) => y);
  return {
    id: 'test',
    name: 'test',
    outline: Float64Array.from(corners.flat()),
    holes: holes.map((hole) => Float64Array.from(hole.flat())),
    attitude: { tilt_rad: Math.PI / 2, down_rad: -Math.PI / 2 },
    width_m: Math.max(...xs),
    height_m: Math.max(...ys),
    area_m2: NaN,
  };
}

export function rectangle(width_m: number, height_m: number, holes: readonly (readonly (readonly [number, number])[])[] = []): Panel {
  return panelOf([[0, 0], [width_m, 0], [width_m, height_m], [0, height_m]], holes);
}
