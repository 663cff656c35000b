import type { Warning } from '../base/errors.ts';
import type { ColourSpec, SchemeSpec, StepSpec } from '../job/schema.ts';
import type { Mix } from '../mix/mix.ts';
import type { MoistAir } from '../air/moistAir.ts';

/** A number with the least and the most that it may be; equal to it where no spread is known. */
export interface Spread {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** Where a figure comes from: what somebody typed, a preset with its source, or the model with its assumption. */
export interface Origin {
  readonly kind: 'typed' | 'preset' | 'model';
  readonly words: string;
}

/** A coat of a scheme worked out: its film and its liquid. */
export interface PlannedCoat {
  readonly layer: 'primer' | 'clear' | 'aluminium' | 'colour';
  readonly mix: Mix;
  /** Id of the mix in the job; the set-up's own liquid has none. */
  readonly mixId: string | null;
  /** Of a sprayed coat. */
  readonly coatId: string | null;
  readonly setUpName: string | null;
  readonly colour: ColourSpec | null;
  readonly paste_kg_m3: number | null;
  /** Mean film where the coat lies, as it arrives and when all solvent has left, m. */
  readonly wet_m: Spread;
  readonly dry_m: Spread;
  readonly filmOrigin: Origin;
  /** Weight of the dry film, kg/m². */
  readonly weight_kg_m2: Spread;
  /** Share of the solids used that ends on the panels: 0 to 1. */
  readonly landedFraction: number;
  /** Mixed liquid that it takes, without what is left in pot and hose, m³. */
  readonly liquid_m3: Spread;
  /** From the first stroke to the last, for all panels and sides, s. */
  readonly spray_s: number;
  /** From the end of the coat, in the job's own air, until dry to touch and until little enough solvent is left for the next coat, s; null where that is not reached in the time watched. */
  readonly touchDry_s: number | null;
  readonly recoat_s: number | null;
  readonly dryOrigin: Origin;
}

/** One step of a scheme worked out. */
export interface PlannedStep {
  readonly spec: StepSpec;
  /** JSON pointer of the step. */
  readonly pointer: string;
  /** Area that the step works on: all panels and sides, its share of them, m². */
  readonly area_m2: number;
  readonly coat: PlannedCoat | null;
  /** Time at work, s. */
  readonly work_s: number;
  readonly workOrigin: Origin;
  /** Least wait after it at 70 °F as stated, s. */
  readonly wait_s: number;
  /** Latest start of the next step, s after it; null where none is stated. */
  readonly latest_s: number | null;
  /** Dry film on the part after it, where all coats lie, m. */
  readonly after_m: Spread;
  /** Weight added by it and all before it, kg. */
  readonly added_kg: Spread;
}

/** A scheme worked out for its panels. */
export interface PlannedScheme {
  readonly scheme: SchemeSpec;
  readonly air: MoistAir;
  /** Area of all panels and sides, m². */
  readonly area_m2: number;
  readonly steps: readonly PlannedStep[];
  readonly warnings: readonly Warning[];
}
