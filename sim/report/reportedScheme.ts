import type { SchemeLight } from '../scheme/aluminiumLight.ts';
import type { SchemeFinding } from '../scheme/finding.ts';
import type { HidingRow } from '../scheme/hidingRows.ts';
import type { PlannedScheme } from '../scheme/planned.ts';

/** A grade of cloth with the least that it may come down to in use. */
export interface ReportedStrength {
  readonly name: string;
  readonly new_N_m: number;
  readonly floor_N_m: number;
  readonly source: string;
}

/** A scheme worked out, with what the rules say of it. */
export interface ReportedScheme {
  readonly plan: PlannedScheme;
  readonly findings: readonly SchemeFinding[];
  readonly hiding: readonly HidingRow[];
  /** Null where the scheme has no aluminium. */
  readonly light: SchemeLight | null;
  /** Empty where the scheme is not of doped fabric. */
  readonly strength: readonly ReportedStrength[];
}
