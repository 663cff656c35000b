/**
 * Wavelengths, an octave apart, of the ripple that an eye calls orange peel, m. Assumed: 0.5 to 8 mm;
 * instruments that judge appearance look at 0.1 to 30 mm (from memory).
 */
export const PEEL_WAVES_M: readonly number[] = [0.0005, 0.001, 0.002, 0.004, 0.008];

/** Up to the first smooth, up to the second slight, above it orange peel: amplitude, m. Assumed. */
export const PEEL_BANDS_M: readonly [slight: number, peel: number] = [0.5e-6, 1.2e-6];

/** 16 π⁴: the constant of levelling, with Λ = ∫σh³/(3µ)dt. */
const LEVELLING = 16 * Math.PI ** 4;

/**
 * Wavelength of the ripple that blown air leaves, m, and its height over the distance that the air has
 * pushed the film. Assumed: about the jet's depth on the panel; the height such that a gun at a third of
 * its distance leaves orange peel, as practice says.
 */
const AIR_WAVE_M = 0.016;
const AIR_RIPPLE_RATIO = 0.01;

/**
 * What is left of a ripple of one wavelength: `exp(-16 π⁴ Λ/λ⁴)`, Λ = ∫ σ h³/(3 µ) dt.
 * S.E. Orchard, Appl. Sci. Res. A11, 451, 1962 (from memory); ripple small against the film, film thin
 * against the wave, Newtonian. @param levelling_m4 Λ, 0 or more. @param wave_m above 0.
 */
export function rippleLeft(levelling_m4: number, wave_m: number): number {
  return Math.exp((-LEVELLING * levelling_m4) / wave_m ** 4);
}

/** Time in which a ripple falls by e at a steady film: `3 µ λ⁴/(16 π⁴ σ h³)`, s. */
export function levellingTime_s(wet_m: number, wave_m: number, viscosity_Pa_s: number, surfaceTension_N_m: number): number {
  return (3 * viscosity_Pa_s * wave_m ** 4) / (LEVELLING * surfaceTension_N_m * wet_m ** 3);
}

/**
 * Volume of a drop, each counted by its volume, m³: `(π/6) Dv50³ exp(4.5 ln² GSD)` for drops that are
 * log-normal by volume, `Dv50 = D32 exp(½ ln² GSD)`.
 */
export function weightedDrop_m3(meanDiameter_m: number, spreadRatio: number): number {
  const spread = Math.log(spreadRatio) ** 2;
  const median_m = meanDiameter_m * Math.exp(0.5 * spread);
  return (Math.PI / 6) * median_m ** 3 * Math.exp(4.5 * spread);
}

/**
 * Orange peel as an amplitude, m: root of the sum of squares, over `PEEL_WAVES_M`, of the ripple left.
 *
 * Drops fall where they fall, so a film of mean h made of drops of volume V (each counted by its
 * volume) differs from one square of side λ to the next by √(h V)/λ, as any count does by its root;
 * blown air adds a ripple in proportion to how far it pushed the film. Both level by Orchard's law.
 * A model choice, for which no published band is known: `PEEL_BANDS_M` gives it words.
 * @param landed_m wet film as landed. @param drop_m3 from `weightedDrop_m3`.
 */
export function peelAmplitude_m(levelling_m4: number, landed_m: number, drop_m3: number, blown_m: number): number {
  const air_m = AIR_RIPPLE_RATIO * blown_m * rippleLeft(levelling_m4, AIR_WAVE_M);
  let squares = air_m * air_m;
  for (const wave_m of PEEL_WAVES_M) {
    const drops_m = (Math.sqrt(landed_m * drop_m3) / wave_m) * rippleLeft(levelling_m4, wave_m);
    squares += drops_m * drops_m;
  }
  return Math.sqrt(squares);
}
