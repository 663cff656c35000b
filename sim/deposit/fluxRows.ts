import type { Deposit } from './deposit.ts';
import type { FanTables } from './fanTables.ts';

/**
 * Flux of a square gun along one grid row, times `weight`, into `out[from..to)`.
 *
 * `u0 + c du` is x/halfLength and `s0 + c ds` is y/halfDepth at column c, both scaled to the
 * footprint's own distance. Two tables and one division a cell; no power, no root.
 */
export function squareFluxRow(out: Float32Array, from: number, to: number, tables: FanTables, u0: number, du: number, s0: number, ds: number, weight: number): void {
  const { across, chordSquared, along, acrossSteps, alongSteps } = tables;
  const scale = 0.5 * acrossSteps;
  const place0 = (u0 + 1) * scale;
  const placeStep = du * scale;
  for (let c = from; c < to; c++) {
    const place = place0 + c * placeStep;
    const s = s0 + c * ds;
    let value = 0;
    if (place >= 0 && place <= acrossSteps) {
      const i = place | 0;
      const share = place - i;
      const low = chordSquared[i] as number;
      const chord = low + share * ((chordSquared[i + 1] as number) - low);
      const squared = s * s;
      if (squared < chord) {
        const w = (squared / chord) * alongSteps;
        const j = w | 0;
        const a = across[i] as number;
        const b = along[j] as number;
        value = (a + share * ((across[i + 1] as number) - a)) * (b + (w - j) * ((along[j + 1] as number) - b));
      }
    }
    out[c] = value * weight;
  }
}

/**
 * Flux of a tilted gun along one grid row, times `weight`, into `out[from..to)`.
 *
 * `u0 + c du`, `s0 + c ds`, `z0 + c dz` are the cell in gun axes, the first two already scaled by
 * distance over half length (depth), the third the axial distance. Projection law: a point source
 * of intensity I(θ) lays `q = q0(u, s) (D0/z)² cosγ/cosθ`, where q0 is the footprint on a plane square
 * to the axis at D0 and cosγ/cosθ = nozzle height / z; so `weight` carries D0² · height and the
 * kernel divides by z³. It keeps mass on any surface that the whole fan hits.
 */
export function tiltedFluxRow(out: Float32Array, from: number, to: number, tables: FanTables, u0: number, du: number, s0: number, ds: number, z0: number, dz: number, weight: number): void {
  const { across, chordSquared, along, acrossSteps, alongSteps } = tables;
  const scale = 0.5 * acrossSteps;
  for (let c = from; c < to; c++) {
    const z = z0 + c * dz;
    let value = 0;
    if (z > 0) {
      const inverse = 1 / z;
      const place = ((u0 + c * du) * inverse + 1) * scale;
      if (place >= 0 && place <= acrossSteps) {
        const s = (s0 + c * ds) * inverse;
        const i = place | 0;
        const share = place - i;
        const low = chordSquared[i] as number;
        const chord = low + share * ((chordSquared[i + 1] as number) - low);
        const squared = s * s;
        if (squared < chord) {
          const w = (squared / chord) * alongSteps;
          const j = w | 0;
          const a = across[i] as number;
          const b = along[j] as number;
          value =
            (a + share * ((across[i + 1] as number) - a)) *
            (b + (w - j) * ((along[j + 1] as number) - b)) *
            inverse * inverse * inverse;
        }
      }
    }
    out[c] = value * weight;
  }
}

/**
 * `tiltedFluxRow` for a fan on an ellipse, where chordSquared = 1 - u²: with u = U/z and s = S/z the
 * place along the chord is S²/(z² - U²), which saves a table and a test (half as fast again). A
 * square gun is the case of a constant z.
 */
export function ellipticFluxRow(out: Float32Array, from: number, to: number, tables: FanTables, u0: number, du: number, s0: number, ds: number, z0: number, dz: number, weight: number): void {
  const { across, along, acrossSteps, alongSteps } = tables;
  const scale = 0.5 * acrossSteps;
  for (let c = from; c < to; c++) {
    const z = z0 + c * dz;
    const u = u0 + c * du;
    const s = s0 + c * ds;
    const squared = s * s;
    const chord = z * z - u * u;
    let value = 0;
    if (squared < chord && z > 0) {
      const inverse = 1 / z;
      const place = (u * inverse + 1) * scale;
      const i = place | 0;
      const share = place - i;
      const w = (squared / chord) * alongSteps;
      const j = w | 0;
      const a = across[i] as number;
      const b = along[j] as number;
      value =
        (a + share * ((across[i + 1] as number) - a)) *
        (b + (w - j) * ((along[j + 1] as number) - b)) *
        inverse * inverse * inverse;
    }
    out[c] = value * weight;
  }
}

/**
 * Adds `row[from..to)` to the three amounts of a grid row that starts at `offset`, each times its
 * own factor. One loop: three cost a third more, most of it in starting them.
 */
export function addAmounts(deposit: Deposit, offset: number, row: Float32Array, from: number, to: number, wet: number, solids: number, arrivedDry: number): void {
  const { wet_m, solids_m, arrivedDry_m } = deposit;
  for (let c = from; c < to; c++) {
    const flux = row[c] as number;
    const cell = offset + c;
    wet_m[cell] = (wet_m[cell] as number) + flux * wet;
    solids_m[cell] = (solids_m[cell] as number) + flux * solids;
    arrivedDry_m[cell] = (arrivedDry_m[cell] as number) + flux * arrivedDry;
  }
}

/**
 * Adds a fan `peak (1 - u² - s²)^power`, power 1, 2 or 3, to the three amounts of a grid row that
 * starts at `offset`: the two factors of a double-beta fan with equal exponents collapse into one.
 * No table is read and no row is kept between, which makes it twice as fast as `ellipticFluxRow`
 * with `addAmounts`. Arguments as there; `wet`, `solids`, `arrivedDry` carry peak and weight.
 */
export function addCollapsedRow(deposit: Deposit, offset: number, from: number, to: number, power: number, u0: number, du: number, s0: number, ds: number, z0: number, dz: number, wet: number, solids: number, arrivedDry: number): void {
  const { wet_m, solids_m, arrivedDry_m } = deposit;
  let u = u0 + from * du;
  let s = s0 + from * ds;
  let z = z0 + from * dz;
  for (let cell = offset + from; cell < offset + to; cell++) {
    const chord = z * z - u * u - s * s;
    if (chord > 0 && z > 0) {
      const inverse = 1 / z;
      const squared = inverse * inverse;
      const base = chord * squared;
      let flux = squared * inverse * base;
      if (power > 1) flux *= base;
      if (power > 2) flux *= base;
      wet_m[cell] = (wet_m[cell] as number) + flux * wet;
      solids_m[cell] = (solids_m[cell] as number) + flux * solids;
      arrivedDry_m[cell] = (arrivedDry_m[cell] as number) + flux * arrivedDry;
    }
    u += du;
    s += ds;
    z += dz;
  }
}
