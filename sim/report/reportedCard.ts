import type { MixedParts } from '../mix/mixBatch.ts';
import type { MixRatio } from '../mix/mixRatio.ts';
import type { Spread } from '../scheme/planned.ts';
import type { StepSpec } from '../job/schema.ts';
import type { CupTime } from '../mix/cupTime.ts';

/** The mix of a coat as the card tells it. */
export interface CardMix {
  readonly name: string;
  readonly finishName: string;
  readonly ratio: MixRatio;
  readonly retarderName: string | null;
  readonly volumeSolidsFraction: number;
  /** In a usual cup, at the temperature below. */
  readonly cup: CupTime;
  readonly temperature_K: number;
  /** Whether the mix's own cup reading stands behind the seconds; otherwise they are a guess from the finish's usual viscosity. */
  readonly isRead: boolean;
  /** What to pour for this coat, what stays in pot and hose included. */
  readonly pour: MixedParts;
}

/** Gun and strokes of a sprayed coat as the card tells them. */
export interface CardGun {
  /** The same for coats that are sprayed by the same coat of the job with the same mix. */
  readonly laidBy: string;
  readonly setUpName: string;
  readonly distance_m: number;
  readonly fanWidth_m: number;
  readonly speed_m_s: number;
  readonly overlapFraction: number;
  readonly pitch_m: number;
  readonly fluidRate_m3_s: number;
  readonly capPressure_Pa: number;
  readonly lead_m: number;
  readonly lag_m: number;
  readonly strokeCount: number;
  readonly isCross: boolean;
  readonly isRecorded: boolean;
  /** SVG of the panel with the first stroke of each pass. */
  readonly picture: string;
  readonly target: { readonly film: 'wet' | 'dry'; readonly thickness_m: number; readonly low_m: number; readonly high_m: number };
}

/** One step as the card tells it. */
export interface CardEntry {
  readonly schemeName: string;
  readonly panelNames: readonly string[];
  /** 2 where both sides of each panel are worked alike. */
  readonly sides: number;
  /** 1-based place in its scheme. */
  readonly number: number;
  readonly step: StepSpec;
  readonly area_m2: number;
  readonly mix: CardMix | null;
  readonly gun: CardGun | null;
  readonly wet_m: Spread | null;
  readonly dry_m: Spread | null;
  readonly after_m: Spread;
  /** Minutes of the wall clock; null where the days could not be laid. */
  readonly start: number | null;
  readonly end: number | null;
  /** When the wait after it is over; null where none is, or no days are laid. */
  readonly waitUntil: number | null;
  /** Latest start of the step after it, likewise. */
  readonly latest: number | null;
  /** Least wait after it at 70 °F, as stated, s. */
  readonly wait_s: number;
}

/** The steps of one day; without a date, those that could not be laid. */
export interface CardDay {
  /** `2026-05-04`; null for steps without a day. */
  readonly date: string | null;
  readonly entries: readonly CardEntry[];
}

/** The job card: one page a day. */
export interface JobCard {
  readonly jobName: string;
  readonly partName: string;
  readonly seed: number;
  readonly days: readonly CardDay[];
  /** Why steps stand without a day, and other doubts. */
  readonly doubts: readonly string[];
}
