import type { ReadingSpec } from '../job/schema.ts';
import type { PanelGrid } from '../panel/panelGrid.ts';
import type { CovarianceLaw } from './kriging/covariance.ts';
import type { RangeOrigin } from './kriging/fitCovariance.ts';

/** A figure with its 95 % interval. */
export interface Estimate {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** A dry reading beside the film that the model predicts there, m. */
export interface ComparedReading {
  /** Its place in the survey's list, from 0. */
  readonly index: number;
  readonly kind: ReadingSpec['kind'];
  readonly at_m: readonly [number, number];
  readonly measured_m: number;
  readonly predicted_m: number;
  /** Standard deviation of the gauge's own noise, m. */
  readonly noise_m: number;
  /** When the film there was sprayed: 0 with the first stroke of a coat, 1 with its last, weighed by what each stroke laid. */
  readonly order: number;
}

/** Where the gauge's noise was taken from. */
export interface GaugeNoise {
  readonly origin: 'stated' | 'spots' | 'assumed';
  /** Typical standard deviation, m. */
  readonly typical_m: number;
  readonly words: string;
}

/** What else may make readings differ from the plan, besides a common ratio. */
export type TrendKind = 'across' | 'up' | 'order';

/** Film over plan at the far end less that at the near end, as a share of the mean ratio. */
export interface Trend {
  readonly kind: TrendKind;
  readonly change: Estimate;
  /** The interval leaves out 0. */
  readonly isSeen: boolean;
}

/** Wet film by comb beside the wet film of the plan, and dry over wet. */
export interface WetComparison {
  readonly count: number;
  /** From the mean of the lower teeth to that of the upper ones, over the plan: bounds, not an interval of chance. */
  readonly ratio: Estimate;
  /** Dry ratio over wet ratio: solids as they were over solids as planned. Null without dry readings. */
  readonly solids: Estimate | null;
}

/** What explains a common ratio, as far as readings tell. */
export type RatioCause = 'none' | 'either' | 'transfer-or-flow' | 'solids' | 'both';

/** A number of a set-up that would bring the plan to the readings. Offered, never taken by itself. */
export interface SetUpOffer {
  readonly setUp: string;
  readonly name: string;
  readonly number: 'efficiency' | 'fluidRate';
  /** In the job's unit: % or mL/min. */
  readonly from: number;
  readonly to: Estimate;
}

/** The film between the readings. */
export interface FilmBetween {
  readonly law: CovarianceLaw;
  readonly origin: RangeOrigin;
  /** Readings that the law was fitted to, at most 80. */
  readonly fitted: number;
  /** More readings than answer together: the nearest 64 do for each place. */
  readonly isLocal: boolean;
  /** Film as believed less film as planned, m; NaN off the panel. */
  readonly difference_m: Float32Array;
  /** Standard error of the film as believed, m. */
  readonly error_m: Float32Array;
  /** 1 where the nearest reading is farther than the law's range: a guess. */
  readonly isGuess: Uint8Array;
}

/** How likely the film is below its least where nobody read. */
export interface ChanceBelow {
  readonly limit_m: number;
  /** Share of the draws with a place below the limit. */
  readonly anywhere: number;
  /** Mean share of the places below it. */
  readonly shareBelow: number;
  readonly draws: number;
  readonly places: number;
  /** Distance between the places, m. */
  readonly step_m: number;
  /** Where it is likeliest, and how likely there. */
  readonly worstAt_m: readonly [number, number];
  readonly worst: number;
}

/** A survey beside the film that its coats should have laid. */
export interface PlanComparison {
  readonly survey: string;
  readonly coats: readonly { readonly id: string; readonly name: string; readonly strokes: 'plan' | 'recording' }[];
  readonly panelGrid: PanelGrid;
  /** Sum of the coats as laid, dry, m. */
  readonly predicted_m: Float32Array;
  readonly predictedMean_m: number;
  readonly readings: readonly ComparedReading[];
  /** Dry readings without a place: they count for the mean only, against the mean of the plan. */
  readonly placeless: number;
  readonly noise: GaugeNoise;
  /** Measured over planned; null without a dry reading. Without an interval (one reading) low and high are NaN. */
  readonly ratio: Estimate | null;
  /** Whether the interval of the ratio takes into account that near readings are alike. */
  readonly isCorrelated: boolean;
  /** Standard deviation of measured over planned about that ratio, as a share of it; null below 2 placed readings. */
  readonly spread: number | null;
  /** Share of the variance about the ratio that the gauge's noise may be, 0 to 1. */
  readonly noiseShare: number | null;
  /** Empty below 8 placed readings. */
  readonly trends: readonly Trend[];
  readonly wet: WetComparison | null;
  readonly cause: RatioCause;
  readonly offers: readonly SetUpOffer[];
  /** Null without a placed reading. */
  readonly between: FilmBetween | null;
  /** Null where the rule has no least film, or no reading has a place. */
  readonly below: ChanceBelow | null;
  /** What was left out, and why. */
  readonly doubts: readonly string[];
}
