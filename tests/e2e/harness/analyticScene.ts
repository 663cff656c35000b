import { interpolateViridis } from 'd3-scale-chromatic';
import type { CanvasScene, FieldScene, StrokeScene, ZoneScene } from '../../../src/canvas/scene.ts';

/** The panel of the canvas tests: 2.4 m by 1.2 m, the upper right corner cut off, one round-ish hole. */
export const WIDTH_M = 2.4;
export const HEIGHT_M = 1.2;
const CUT_M = 0.3;
const HOLE_M = { x: 1.8, y: 0.4, radius: 0.15 };
export const DOMAIN = [0, 100e-6] as const;

/** A film with a known value everywhere: rising to the right and upward. */
export function filmAt(x_m: number, y_m: number): number {
  return DOMAIN[1] * (0.7 * (x_m / WIDTH_M) + 0.3 * (y_m / HEIGHT_M));
}

function isInside(x_m: number, y_m: number): boolean {
  if (x_m - (WIDTH_M - CUT_M) + (y_m - (HEIGHT_M - CUT_M)) > CUT_M) return false;
  return Math.hypot(x_m - HOLE_M.x, y_m - HOLE_M.y) > HOLE_M.radius;
}

/** 256 colours of a perceptual map, RGBA bytes. */
export function mapColours(): Uint8Array {
  const bytes = new Uint8Array(1024);
  for (let i = 0; i < 256; i++) {
    const hex = interpolateViridis(i / 255);
    const channels = hex.startsWith('#')
      ? [1, 3, 5].map((at) => parseInt(hex.slice(at, at + 2), 16))
      : (hex.match(/\d+/g) ?? []).map(Number);
    bytes.set([...channels.slice(0, 3), 255], 4 * i);
  }
  return bytes;
}

export function analyticField(cellSize_m: number): FieldScene {
  const columns = Math.ceil(WIDTH_M / cellSize_m);
  const rows = Math.ceil(HEIGHT_M / cellSize_m);
  const values = new Float32Array(columns * rows);
  const cover = new Float32Array(columns * rows);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const x_m = (column + 0.5) * cellSize_m;
      const y_m = (row + 0.5) * cellSize_m;
      values[row * columns + column] = filmAt(x_m, y_m);
      cover[row * columns + column] = isInside(x_m, y_m) ? 1 : 0;
    }
  }
  return { columns, rows, cellSize_m, values, cover, domain: DOMAIN, colours: mapColours() };
}

function holeOutline(): Float64Array {
  const corners = 48;
  const points = new Float64Array(2 * corners);
  for (let i = 0; i < corners; i++) {
    const angle = (-2 * Math.PI * i) / corners;
    points[2 * i] = HOLE_M.x + HOLE_M.radius * Math.cos(angle);
    points[2 * i + 1] = HOLE_M.y + HOLE_M.radius * Math.sin(angle);
  }
  return points;
}

/** Places of the zones, one of each kind, 0.2 m squares with their lower-left corners here. */
export const ZONE_PLACES: Readonly<Record<ZoneScene['kind'], readonly [number, number]>> = {
  holiday: [0.2, 0.2],
  'thin-lap': [0.7, 0.2],
  'heavy-spot': [1.2, 0.2],
  'dry-spray': [0.2, 0.75],
  pinhole: [0.45, 0.2],
  'over-thick': [2.05, 0.2],
  run: [0.5, 0.75],
  'orange-peel': [0.8, 0.75],
  'dry-lap': [1.1, 0.75],
  blush: [1.4, 0.75],
  blister: [1.7, 0.75],
};
export const ZONE_SIDE_M = 0.2;

function squareZone(kind: ZoneScene['kind'], label: string, field: FieldScene): ZoneScene {
  const [left_m, low_m] = ZONE_PLACES[kind];
  const cells: number[] = [];
  for (let row = 0; row < field.rows; row++) {
    for (let column = 0; column < field.columns; column++) {
      const x_m = (column + 0.5) * field.cellSize_m - left_m;
      const y_m = (row + 0.5) * field.cellSize_m - low_m;
      if (x_m > 0 && y_m > 0 && x_m < ZONE_SIDE_M && y_m < ZONE_SIDE_M) cells.push(row * field.columns + column);
    }
  }
  // The tag's place is in the upper right, off the middle that the tests read.
  const at_m = [left_m + 0.85 * ZONE_SIDE_M, low_m + 0.9 * ZONE_SIDE_M] as const;
  return { key: kind, kind, label, cells: Uint32Array.from(cells), at_m };
}

export function squareZones(field: FieldScene): ZoneScene[] {
  return [
    squareZone('holiday', 'Holiday', field),
    squareZone('thin-lap', 'Thin lap', field),
    squareZone('heavy-spot', 'Heavy', field),
    squareZone('dry-spray', 'Dry spray', field),
  ];
}

/** One of every kind, without tags. */
export function everyZone(field: FieldScene): ZoneScene[] {
  return (Object.keys(ZONE_PLACES) as ZoneScene['kind'][]).map((kind) => squareZone(kind, '', field));
}

export function evenStrokes(count: number): StrokeScene[] {
  return Array.from({ length: count }, (_, index) => {
    const y_m = ((index + 0.5) * HEIGHT_M) / count;
    const [from, to] = index % 2 === 0 ? [-0.06, WIDTH_M + 0.06] : [WIDTH_M + 0.06, -0.06];
    return { index, line: Float64Array.of(from, y_m, to, y_m), label: String(index + 1) };
  });
}

/** A fan rim: an ellipse, long axis upright. */
export function fanRim(x_m: number, y_m: number): Float64Array {
  const points = new Float64Array(80);
  for (let i = 0; i < 40; i++) {
    points[2 * i] = x_m + 0.04 * Math.cos((i * Math.PI) / 20);
    points[2 * i + 1] = y_m + 0.14 * Math.sin((i * Math.PI) / 20);
  }
  return points;
}

/** Film and outline only: nothing lies over the colours. */
export function bareScene(theme: 'light' | 'dark', cellSize_m = 0.004): CanvasScene {
  return {
    panel: {
      outline: Float64Array.of(
        0, 0, WIDTH_M, 0, WIDTH_M, HEIGHT_M - CUT_M, WIDTH_M - CUT_M, HEIGHT_M, 0, HEIGHT_M,
      ),
      holes: [holeOutline()],
      width_m: WIDTH_M,
      height_m: HEIGHT_M,
      down_rad: -Math.PI / 2,
    },
    fit_m: [0, 0, WIDTH_M, HEIGHT_M],
    field: analyticField(cellSize_m),
    strokes: [],
    selectedStrokes: [],
    zones: [],
    selectedZone: null,
    gun: null,
    section: [0.3, 0.65, 1.5, 0.65],
    ruler: { unit_m: 0.001, unitName: 'mm' },
    theme,
  };
}
