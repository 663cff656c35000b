import type { AirAnswer } from '../air/airAnswer.ts';
import type { ClimateVerdict } from '../air/climateVerdict.ts';
import type { Remedies } from '../air/remedies.ts';
import type { BackingWord, MixSpec } from '../job/schema.ts';
import type { Cup } from '../materials/cups.ts';
import type { CupTime, WarmedCup } from '../mix/cupTime.ts';
import type { Mix } from '../mix/mix.ts';
import type { Spread } from './planned.ts';

/** What is asked on the front sheet. All but the first few have usual values. */
export interface TodayQuestion {
  /** Air of the room: -20 to 60 °C; relative humidity 0 to 1. */
  readonly temperature_K: number;
  readonly humidityFraction: number;
  /** Ids of a generic finish and thinner. */
  readonly finish: string;
  readonly thinner: string;
  /** Volumes of thinner to one of finish, 0 to 10; null for the recommended. */
  readonly thinnerRatio: number | null;
  /** Retarder, n-butyl alcohol, as a share of the thinner, 0 to 0.5. */
  readonly retarderFraction: number;
  /** Id of a cup, and the mix's drain time in it, 1 to 1000 s; null where none was read. */
  readonly cup: string;
  readonly seconds: number | null;
  /** Area to be covered, 0.01 to 1000 m². */
  readonly area_m2: number;
  /** Dry film wanted in all coats of this finish, 1 to 500 µm. */
  readonly dry_m: number;
  /** Coats that it is laid in, 1 to 60; null for the fewest that hold. */
  readonly coats: number | null;
  /** Angle of the side from level, 0 to π. */
  readonly tilt_rad: number;
  readonly backing: BackingWord;
  /** Of the part; null where it was not measured: no rule is then judged by it. */
  readonly surface_K: number | null;
  /** Of the liquid in the cup when it was read; null for that of the air. */
  readonly liquid_K: number | null;
  /** The room later in the day, for the same mix; null for 5 K warmer than now. */
  readonly afternoon_K: number | null;
  /** Dry film that sanding takes off afterwards, 0 to 500 µm. */
  readonly sanded_m: number;
  /** Share of the solids leaving the gun that lands, 0.05 to 1. */
  readonly efficiencyFraction: number;
  readonly altitude_m: number;
  /** Over the panel. */
  readonly airSpeed_m_s: number;
  /** Warmest room that may be asked for. */
  readonly ceiling_K: number;
}

/** Can I spray now: the film's dew point margin, and every published rule side by side. */
export interface TodayClimate {
  readonly answer: AirAnswer;
  /** As measured; null where it was not. */
  readonly surface_K: number | null;
  readonly verdict: ClimateVerdict;
  /** What would make it go, tried. */
  readonly remedies: Remedies;
}

/** How thin the mix is now, how far to thin it, and what it is this afternoon. */
export interface TodayThinning {
  readonly cup: Cup;
  readonly liquid_K: number;
  /** What was read, whether or not the cup can say it; null where nothing was. */
  readonly read_s: number | null;
  /** Why the reading is no viscosity; null where it is one or none was made. */
  readonly refusal: string | null;
  /** By the reading, or by the finish's own usual law where there is none; and the thinner to one of finish at which it is so. */
  readonly viscosity_m2_s: number;
  readonly thinnerRatio: number;
  /** The mix in the asked cup, and in others that can say it. */
  readonly now: CupTime;
  readonly otherCups: readonly CupTime[];
  /** The cup in which the trade states a viscosity for spraying, and the thin and the thick end of it. */
  readonly sprayCup: Cup;
  readonly thin: TodayRatio;
  readonly thick: TodayRatio;
  readonly sprayed: TodaySprayed;
  /** The same mix in the asked cup with the room this afternoon. */
  readonly afternoon_K: number;
  readonly afternoon: WarmedCup;
  /** B of ln(ν2/ν1) = B (1/T2 - 1/T1), K. */
  readonly sensitivity_K: Spread;
}

/** A viscosity that is usual for spraying, and the thinner that brings this finish there. */
export interface TodayRatio {
  readonly seconds: number;
  readonly viscosity_m2_s: number;
  /** Volumes of thinner to one of finish; 0 where it is as thin from the can, null where more than ten. */
  readonly thinnerRatio: number | null;
}

/** The thinning with which film, coats and amounts are worked out. */
export interface TodaySprayed {
  /** As typed; the middle of the thin and the thick end where none was; assumed where there is no thick end. */
  readonly from: 'typed' | 'recommended' | 'assumed';
  /** Volumes of thinner to one of finish. */
  readonly thinnerRatio: number;
  /** By the thinning law, at the temperature of the liquid. */
  readonly viscosity_m2_s: number;
}

/** Film wet and dry. */
export interface TodayFilm {
  readonly coats: number;
  /** Dry and wet film of one coat. */
  readonly coatDry_m: number;
  readonly coatWet_m: number;
  /** Of one of the two passes of a cross coat. */
  readonly passWet_m: number;
  readonly allDry_m: number;
  /** All of it in one coat. */
  readonly allWet_m: number;
  /** What sanding leaves; below 0 it goes through. */
  readonly left_m: number;
  /** Wet film of one coat with the solids that makers' products have. */
  readonly coatWetRange_m: Spread;
}

/** Whether one coat holds on the side. */
export interface TodayHold {
  readonly word: 'holds' | 'care' | 'runs';
  readonly wet_m: number;
  /** Wet film that a usual finish holds here; infinite on a level side. */
  readonly held_m: Spread;
  /** The trade's own figures for this slope: usual coat from and to, about the limit, and what sags; infinite on a level side. */
  readonly working_m: readonly [number, number];
  readonly limit_m: number;
  readonly sags_m: number;
  /** Fewest coats that hold; null where not even a hundred would. */
  readonly fewestCoats: number | null;
}

/** A wait stated for 70 °F, and for today. */
export interface TodayWait {
  readonly stated_s: number;
  readonly today_s: number;
  readonly source: string;
}

/** When the next step may begin. */
export interface TodayNext {
  readonly ruleRatio: number;
  readonly modelRatio: number;
  /** By the trade: the next coat, and sanding; null where nothing is stated for the finish. */
  readonly coat: TodayWait | null;
  readonly sand: TodayWait | null;
  /** By the model, from a coat laid all at once; null where not reached in `watched_s`. */
  readonly touchDry_s: number | null;
  readonly recoat_s: number | null;
  readonly watched_s: number;
  /** The longer of the trade's and the model's wait; null where the model does not get there. */
  readonly earliest_s: number | null;
  /** Whether a later coat of the same dissolves into it. */
  readonly dissolves: boolean;
}

/** How much of it, and how heavy. */
export interface TodayAmounts {
  readonly coats: number;
  /** Mixed liquid that lands, is lost beside the part, stays in cup and gun, and in all, m³. */
  readonly landed_m3: number;
  readonly missed_m3: number;
  readonly pot_m3: number;
  readonly mix_m3: number;
  /** Of the whole mix. */
  readonly finish_m3: number;
  readonly thinner_m3: number;
  readonly mixOneCoat_m3: number;
  /** Dry. */
  readonly coat_kg_m2: number;
  readonly all_kg_m2: number;
  readonly all_kg: number;
  /** What a coat of such a finish is published to weigh. */
  readonly published_kg_m2: readonly [number, number];
  readonly publishedSource: string;
}

/** The front sheet, answered. */
export interface TodayAnswer {
  readonly question: TodayQuestion;
  /** As sprayed, and as a job states it. */
  readonly mix: Mix;
  readonly mixSpec: MixSpec;
  readonly climate: TodayClimate;
  readonly thinning: TodayThinning;
  readonly film: TodayFilm;
  readonly hold: TodayHold;
  readonly next: TodayNext;
  readonly amounts: TodayAmounts;
}

/** The parts of the front sheet, in the order in which they are read. */
export type TodayPart = 'climate' | 'thinning' | 'film' | 'hold' | 'next' | 'amounts';
