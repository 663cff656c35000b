import { fluxAt, type FanTables } from './fanTables.ts';

/**
 * A footprint summed along a travel that runs at one angle to it, at the footprint's own distance.
 * Lengths scale with distance, so one table serves every distance.
 */
export interface SweepTable {
  readonly tables: FanTables;
  /** From "fan square to the travel" to the fan, counter-clockwise: 0 where the long axis points to the left of the travel. */
  readonly turn_rad: number;
  /** Half extents of the support across and along the travel. */
  readonly halfAcross_m: number;
  readonly halfAlong_m: number;
  /** Whole sum along the travel at even offsets from -halfAcross to +halfAcross (positive left of the travel), padded by one, 1/m. */
  readonly profile: Float32Array;
  readonly steps: number;
  /** Where the support starts along the travel at each offset and how long it is there, m. */
  readonly chordStart_m: Float32Array;
  readonly chordLength_m: Float32Array;
  /** Share of the sum passed, at even places of the chord: CHORD_STEPS + 1 values an offset. A square fan with one law for every chord keeps a single row. */
  readonly passed: Float32Array;
  readonly passedStride: number;
}

/** Even places along a chord at which the running sum is kept. */
export const CHORD_STEPS = 256;
/** Offsets kept of a turned fan. A square one keeps the footprint's own nodes. */
const TURNED_STEPS = 1024;
/** Two-point Gauss-Legendre places in an interval. */
const GAUSS = [0.5 - 0.5 / Math.sqrt(3), 0.5 + 0.5 / Math.sqrt(3)] as const;

/**
 * Builds the running sum of a footprint along a travel.
 *
 * A square fan needs one running sum for all offsets, since the flux along the travel is one law
 * stretched to the chord. A turned one is integrated chord by chord (two Gauss points in each of
 * 256 intervals), about 10 ms.
 */
export function sweepTable(tables: FanTables, turn_rad: number): SweepTable {
  return Math.abs(Math.sin(turn_rad)) < 1e-9 ? squareSweep(tables, turn_rad, Math.sign(Math.cos(turn_rad))) : turnedSweep(tables, turn_rad);
}

function squareSweep(tables: FanTables, turn_rad: number, sign: number): SweepTable {
  const steps = tables.acrossSteps;
  const passed = new Float32Array(CHORD_STEPS + 1);
  const whole = runningSum(passed, 0, (t) => along(tables, (2 * t - 1) ** 2)) * 2;
  const profile = new Float32Array(steps + 2);
  const chordStart_m = new Float32Array(steps + 2);
  const chordLength_m = new Float32Array(steps + 2);
  for (let i = 0; i <= steps; i++) {
    const node = sign > 0 ? i : steps - i;
    const half_m = tables.halfDepth_m * Math.sqrt(Math.max(0, tables.chordSquared[node] as number));
    profile[i] = (tables.across[node] as number) * half_m * whole;
    chordStart_m[i] = -half_m;
    chordLength_m[i] = 2 * half_m;
  }
  return {
    tables, turn_rad, steps, profile, chordStart_m, chordLength_m, passed, passedStride: 0,
    halfAcross_m: tables.halfLength_m,
    halfAlong_m: tables.halfDepth_m,
  };
}

function along(tables: FanTables, w: number): number {
  const place = Math.min(1, w) * tables.alongSteps;
  const j = place | 0;
  const low = tables.along[j] as number;
  return low + (place - j) * ((tables.along[j + 1] as number) - low);
}

/** Fills the shares passed along a chord and returns the mean of `flux` over it. */
function runningSum(passed: Float32Array, offset: number, flux: (t: number) => number): number {
  const sums = new Float64Array(CHORD_STEPS + 1);
  for (let i = 0; i < CHORD_STEPS; i++) {
    const part = 0.5 * (flux((i + GAUSS[0]) / CHORD_STEPS) + flux((i + GAUSS[1]) / CHORD_STEPS));
    sums[i + 1] = (sums[i] as number) + part;
  }
  const whole = sums[CHORD_STEPS] as number;
  for (let i = 0; i <= CHORD_STEPS; i++) passed[offset + i] = whole > 0 ? (sums[i] as number) / whole : i / CHORD_STEPS;
  return whole / CHORD_STEPS;
}

function turnedSweep(tables: FanTables, turn_rad: number): SweepTable {
  const { halfLength_m: a, halfDepth_m: b } = tables;
  const cos = Math.cos(turn_rad);
  const sin = Math.sin(turn_rad);
  const halfAcross_m = tables.elliptic ? Math.hypot(a * cos, b * sin) : a * Math.abs(cos) + b * Math.abs(sin);
  const halfAlong_m = tables.elliptic ? Math.hypot(a * sin, b * cos) : a * Math.abs(sin) + b * Math.abs(cos);
  const steps = TURNED_STEPS;
  const passedStride = CHORD_STEPS + 1;
  const profile = new Float32Array(steps + 2);
  const chordStart_m = new Float32Array(steps + 2);
  const chordLength_m = new Float32Array(steps + 2);
  const passed = new Float32Array((steps + 1) * passedStride);
  for (let i = 0; i <= steps; i++) {
    const offset_m = halfAcross_m * ((2 * i) / steps - 1);
    const [start_m, end_m] = chordAt(tables, cos, sin, offset_m, halfAcross_m);
    const length_m = Math.max(0, end_m - start_m);
    const mean = runningSum(passed, i * passedStride, (t) => {
      const along_m = start_m + t * length_m;
      // Travel frame to fan: the long axis stands at left + turn, the short axis at -travel + turn.
      return fluxAt(tables, (offset_m * cos - along_m * sin) / a, (-along_m * cos - offset_m * sin) / b);
    });
    profile[i] = mean * length_m;
    chordStart_m[i] = start_m;
    chordLength_m[i] = length_m;
  }
  return { tables, turn_rad, steps, profile, chordStart_m, chordLength_m, passed, passedStride, halfAcross_m, halfAlong_m };
}

/** Where a line along the travel enters and leaves the support (its bounding rectangle, if no ellipse). */
function chordAt(tables: FanTables, cos: number, sin: number, offset_m: number, halfAcross_m: number): readonly [number, number] {
  const { halfLength_m: a, halfDepth_m: b } = tables;
  if (tables.elliptic) {
    const centre_m = (-offset_m * (a * a - b * b) * sin * cos) / (halfAcross_m * halfAcross_m);
    const share = offset_m / halfAcross_m;
    const half_m = ((a * b) / halfAcross_m) * Math.sqrt(Math.max(0, 1 - share * share));
    return [centre_m - half_m, centre_m + half_m];
  }
  const u = slab(offset_m * cos, -sin, a);
  const s = slab(-offset_m * sin, -cos, b);
  return [Math.max(u[0], s[0]), Math.min(u[1], s[1])];
}

/** The places where |value0 + place · slope| <= half. */
function slab(value0: number, slope: number, half: number): readonly [number, number] {
  if (Math.abs(slope) < 1e-12) return Math.abs(value0) <= half ? [-Infinity, Infinity] : [0, 0];
  const one = (-half - value0) / slope;
  const other = (half - value0) / slope;
  return one < other ? [one, other] : [other, one];
}

/** Whole sum along the travel at an offset, 1/m; zero outside. The scalar twin of `profileRow`. */
export function profileAt(table: SweepTable, offset_m: number): number {
  const place = (offset_m / table.halfAcross_m + 1) * 0.5 * table.steps;
  if (!(place >= 0 && place <= table.steps)) return 0;
  const i = place | 0;
  const low = table.profile[i] as number;
  return low + (place - i) * ((table.profile[i + 1] as number) - low);
}

/** The part of the sum at an offset that lies before `along_m`, 1/m, seen from the footprint's centre. */
export function passedAt(table: SweepTable, offset_m: number, along_m: number): number {
  const place = (offset_m / table.halfAcross_m + 1) * 0.5 * table.steps;
  if (!(place >= 0 && place <= table.steps)) return 0;
  const i = place | 0;
  const share = place - i;
  const next = i < table.steps ? i + 1 : i;
  const start = mix(table.chordStart_m, i, next, share);
  const length = mix(table.chordLength_m, i, next, share);
  if (along_m <= start) return 0;
  const whole = mix(table.profile, i, next, share);
  if (along_m >= start + length) return whole;
  const chordPlace = ((along_m - start) / length) * CHORD_STEPS;
  const j = Math.min(chordPlace | 0, CHORD_STEPS - 1);
  const chordShare = chordPlace - j;
  const here = i * table.passedStride + j;
  const beside = next * table.passedStride + j;
  const low = mix(table.passed, here, here + 1, chordShare);
  const high = mix(table.passed, beside, beside + 1, chordShare);
  return whole * (low + share * (high - low));
}

function mix(values: Float32Array, i: number, next: number, share: number): number {
  const low = values[i] as number;
  return low + share * ((values[next] as number) - low);
}
