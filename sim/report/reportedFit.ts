import type { PaintAccount } from '../deposit/deposit.ts';
import type { PlanSpec } from '../job/schema.ts';
import type { LifeFigures } from '../verdict/lifeVerdict.ts';
import type { Target } from '../verdict/target.ts';
import type { FaultKind, FilmFigures } from '../verdict/verdict.ts';
import type { PointFilm, WindowFault } from '../verdict/workingWindow.ts';

/** What stands in the way of a wish. */
export type ReportedFitLimit = WindowFault | 'speed' | 'time' | 'liquid' | 'over-thick';

/** How far a hand may be off one way. */
export interface ReportedHandRoom {
  readonly axis: 'distance' | 'speed';
  readonly way: 'less' | 'more';
  readonly by: number;
  readonly fault: WindowFault | 'distance-range' | null;
}

/** A proposal laid on its panel. */
export interface ReportedLaidChoice {
  readonly wet: FilmFigures;
  readonly dry: FilmFigures;
  readonly filmRatio: number;
  readonly inTargetFraction: number;
  readonly faults: readonly { readonly kind: FaultKind; readonly area_m2: number }[];
  readonly account: PaintAccount;
  readonly life: LifeFigures;
}

/** A way to lay each coat of a wish. */
export interface ReportedProposal {
  readonly setUpId: string;
  readonly setUpName: string;
  readonly mixId: string | null;
  readonly mixName: string | null;
  readonly cross: boolean;
  readonly point: { readonly distance_m: number; readonly speed_m_s: number; readonly overlapFraction: number; readonly fluidRate_m3_s: number; readonly thinnerRatio: number };
  readonly fanWidth_m: number;
  readonly statedFluidRate_m3_s: number;
  readonly statedThinnerRatio: number;
  readonly plan: PlanSpec;
  readonly film: PointFilm;
  readonly wetInAll_m: number;
  readonly dryInAll_m: number;
  readonly weightInAll_kg_m2: number;
  readonly travel: { readonly strokes: number; readonly passes: number; readonly time_s: number; readonly sprayed_m3: number; readonly lost_m3: number };
  readonly rooms: Readonly<Record<WindowFault, number>>;
  readonly hand: readonly ReportedHandRoom[];
  readonly nearest: WindowFault;
  readonly margin: number;
  readonly differs: readonly ('set-up' | 'mix' | 'passes' | 'fluid' | 'thinner' | 'distance')[];
  /** Missing where the proposal was not laid. */
  readonly laid?: ReportedLaidChoice;
}

/** One thing asked for less strictly. */
export type ReportedRelaxed =
  | { readonly kind: 'ignored'; readonly limit: ReportedFitLimit }
  | { readonly kind: 'coats'; readonly coatCount: number }
  | { readonly kind: 'dropped'; readonly limit: ReportedDroppedLimit };

/** Limits of a wish that may be dropped. */
export type ReportedDroppedLimit =
  | 'setUps' | 'mixes' | 'distance_m' | 'speed_m_s' | 'overlapFraction' | 'fluidRate_m3_s' | 'thinnerRatio' | 'passes' | 'mostTime_s' | 'mostLiquid_m3';

/** What a report reads of a wish worked out. */
export interface ReportedFit {
  readonly coatId: string;
  readonly coatName: string;
  readonly target: Pick<Target, 'film' | 'thickness_m'>;
  readonly coatCount: number;
  readonly proposals: readonly ReportedProposal[];
  readonly nearest: ReportedProposal | null;
  readonly obstacles: readonly { readonly limit: ReportedFitLimit; readonly missedBy: number; readonly heldWet_m: number | null }[];
  readonly relaxations: readonly { readonly relaxed: ReportedRelaxed; readonly meets: boolean; readonly margin: number; readonly proposal: ReportedProposal }[];
  readonly leftOut: readonly string[];
}
