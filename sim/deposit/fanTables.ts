import type { Footprint } from '../gun/spray.ts';

/**
 * A footprint packed for the kernels: single precision (6e-8), one node of padding so that
 * `i + 1` is always inside, and nodes counted rather than scaled.
 */
export interface FanTables {
  /** From where the rays start, as every pose that is laid. */
  readonly distance_m: number;
  readonly halfLength_m: number;
  readonly halfDepth_m: number;
  readonly nominalHalfWidth_m: number;
  readonly nominalHalfDepth_m: number;
  /** Nodes from u = -1 to 1: count - 1 intervals. */
  readonly acrossSteps: number;
  readonly across: Float32Array;
  readonly chordSquared: Float32Array;
  readonly alongSteps: number;
  readonly along: Float32Array;
  /** Whether the support is the ellipse u² + s² <= 1 (otherwise taken as its bounding rectangle). */
  readonly elliptic: boolean;
  /**
   * n where the whole footprint is `peak (1 - u² - s²)^n`: a double-beta fan whose two exponents are
   * both 2, 3 or 4 (n = 1, 2, 3; the usual fan has n = 2). Zero where it is not.
   */
  readonly wholePower: number;
  /** Flux in the middle of the fan. */
  readonly peak_m2: number;
}

/** Largest n for which `wholePower` is looked for. */
const MOST_POWER = 3;

/** Footprints are records, never changed, so each is packed once however many strokes ask. */
const packed = new WeakMap<Footprint, FanTables>();

/** The tables of a footprint. */
export function fanTables(footprint: Footprint): FanTables {
  const known = packed.get(footprint);
  if (known !== undefined) return known;
  const tables = packTables(footprint);
  packed.set(footprint, tables);
  return tables;
}

function packTables(footprint: Footprint): FanTables {
  const { across, chordSquared, along } = footprint;
  const acrossSteps = across.length - 1;
  const elliptic = chordSquared.every((value, i) => Math.abs(value - (1 - ((2 * i) / acrossSteps - 1) ** 2)) < 1e-9);
  return {
    distance_m: footprint.distance_m - footprint.origin_m,
    halfLength_m: footprint.halfLength_m,
    halfDepth_m: footprint.halfDepth_m,
    nominalHalfWidth_m: footprint.width_m / 2,
    nominalHalfDepth_m: footprint.depth_m / 2,
    acrossSteps,
    across: padded(across),
    chordSquared: padded(chordSquared),
    alongSteps: along.length - 1,
    along: padded(along),
    elliptic,
    peak_m2: across[across.length >> 1] as number,
    wholePower: elliptic ? wholePowerOf(across, along) : 0,
  };
}

/** The n for which both tables are n-th powers, to the footprint's own rounding; 0 for none. */
function wholePowerOf(across: Float64Array, along: Float64Array): number {
  const peak = across[across.length >> 1] as number;
  const step = 2 / (across.length - 1);
  for (let n = 1; n <= MOST_POWER; n++) {
    const fits =
      across.every((value, i) => Math.abs(value / peak - Math.max(0, 1 - (i * step - 1) ** 2) ** n) < 1e-12) &&
      along.every((value, i) => Math.abs(value - Math.max(0, 1 - i / (along.length - 1)) ** n) < 1e-12);
    if (fits) return n;
  }
  return 0;
}

function padded(values: Float64Array): Float32Array {
  const out = new Float32Array(values.length + 1);
  out.set(values);
  out[values.length] = values[values.length - 1] as number;
  return out;
}

/**
 * Share of the landing liquid per area, 1/m², at `u` = x/halfLength and `s` = y/halfDepth of the
 * footprint's own distance. The scalar twin of the row kernels.
 */
export function fluxAt(tables: FanTables, u: number, s: number): number {
  const place = (u + 1) * 0.5 * tables.acrossSteps;
  if (!(place >= 0 && place <= tables.acrossSteps)) return 0;
  const i = place | 0;
  const share = place - i;
  const chord = mixed(tables.chordSquared, i, share);
  if (!(s * s < chord)) return 0;
  const along = ((s * s) / chord) * tables.alongSteps;
  const j = along | 0;
  return mixed(tables.across, i, share) * mixed(tables.along, j, along - j);
}

function mixed(table: Float32Array, i: number, share: number): number {
  const low = table[i] as number;
  return low + share * ((table[i + 1] as number) - low);
}
