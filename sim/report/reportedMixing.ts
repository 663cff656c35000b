import type { Between } from '../mix/between.ts';
import type { ThinningGuess } from '../mix/blendRules.ts';
import type { CupTime, WarmedCup } from '../mix/cupTime.ts';
import type { Mix } from '../mix/mix.ts';
import type { BatchNeed, MixedParts, PotFill } from '../mix/mixBatch.ts';
import type { MixRatio, PartDensities } from '../mix/mixRatio.ts';
import type { RetarderJudgement } from '../mix/retarder.ts';
import type { ThinningLaw } from '../mix/thinningLaw.ts';

/** A mix worked out for pouring. */
export interface ReportedMixing {
  /** As thinned by `ratio`. */
  readonly mix: Mix;
  readonly ratio: MixRatio;
  readonly densities: PartDensities;
  /** Solvents of the thinner and their shares, in words. */
  readonly thinnerWords: string;
  readonly retarder: { readonly name: string; readonly judgement: RetarderJudgement; /** Time that the solvents take over that without the retarder. */ readonly timeRatio: number } | null;
  /** Of the finish as it comes and of the mix. */
  readonly canSolids: Between;
  readonly mixedSolids: Between;
  /** Film of one coat; null where none is asked. */
  readonly film: { readonly wet_m: Between; readonly dry_m: Between } | null;
  readonly need: BatchNeed | null;
  /** Liquid for all coats; null where neither film nor pot is asked. */
  readonly liquid_m3: Between | null;
  readonly parts: MixedParts | null;
  readonly fill: PotFill | null;
  readonly thinning: ReportedThinning | null;
}

/** Where a thinning law comes from: the reader's readings at two ratios, a cup reading of the job, or the finish's usual law. */
export type ThinningOrigin = 'readings' | 'cup' | 'finish';

/** How far to thin, in which cup. */
export interface ReportedThinning {
  readonly law: ThinningLaw;
  readonly origin: ThinningOrigin;
  /** B of the temperature, with its spread. */
  readonly sensitivity_K: Between;
  /** What the cup says of the mix at its ratio, at the law's temperature. */
  readonly time: CupTime;
  readonly viscosity_m2_s: number;
  readonly isBeyondReadings: boolean;
  readonly wanted: WantedSeconds | null;
  readonly later: LaterSeconds | null;
  /** What the textbook rules make of the ratio; null where one has no value. */
  readonly guess: ReportedGuess | null;
}

/** The ratio for so many seconds, or why there is none. */
export interface WantedSeconds {
  readonly seconds: number;
  readonly ratio: MixRatio | null;
  readonly isBeyondReadings: boolean;
  readonly problem: string | null;
}

/** The same mix in the same cup at another temperature. */
export interface LaterSeconds extends WarmedCup {
  readonly temperature_K: number;
}

/** The three rules, with what they were fed. */
export interface ReportedGuess extends ThinningGuess {
  readonly finish_m2_s: number;
  readonly thinner_m2_s: number;
  /** Share of thinner by mass. */
  readonly thinnerMassFraction: number;
  /** The same in the cup. */
  readonly times: { readonly refutas: CupTime; readonly arrhenius: CupTime; readonly cubeRoot: CupTime };
}
