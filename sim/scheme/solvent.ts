import type { Solvent } from '../materials/solvent.ts';

/** One solvent of a coat, let into the room. Volumes of liquid, m³. */
export interface MinuteSolvent {
  readonly solvent: Solvent;
  /** Evaporated in each minute from the first stroke on. */
  readonly liquid_m3: Float64Array;
  /** Of all that is used: what never lay on the panel, and what did. */
  readonly atOnce_m3: number;
  readonly landed_m3: number;
  /** Still in the film when the minutes end. Minutes and this add to what is used. */
  readonly later_m3: number;
  readonly used_m3: number;
}

/** Solvent that one coat lets into the room. */
export interface SolventByMinute {
  readonly stepId: string;
  readonly name: string;
  readonly kind: 'spray' | 'brush';
  readonly mixName: string;
  /** Length of a step, 60 s. */
  readonly step_s: number;
  readonly minutes: number;
  /** From the first stroke to the last, s. */
  readonly lay_s: number;
  readonly used_m3: number;
  readonly parts: readonly MinuteSolvent[];
}
