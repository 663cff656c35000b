import { CELSIUS_0_K } from '../base/units.ts';
import { SURFACE_MARGIN_K } from '../materials/surfaceMargin.ts';
import type { Mix } from '../mix/mix.ts';
import { loss_m_s, type AirAnswer, type RetardedMix } from './airAnswer.ts';
import { WARMEST_K, type ClimateVerdictWord } from './climateRules.ts';
import { climateVerdict, type ClimateVerdict } from './climateVerdict.ts';
import { filmIn, type HourVerdict, type SprayedFilm } from './dayVerdicts.ts';
import { ruleDryingRatio } from './dryingFactor.ts';
import { heatedAir, type MoistAir } from './moistAir.ts';

/** Warmth is tried from one tenth of a °C to the next, as a thermometer is read. */
const TENTHS = 10;

/** Something that would turn the verdict. Applied, it gives `verdict` in `air` with `mix`. */
export interface Remedy {
  readonly kind: 'warm' | 'retard' | 'later' | 'warm-retard' | 'later-retard';
  readonly reaches: 'go' | 'care';
  readonly air: MoistAir;
  readonly mix: Mix;
  /** Null where the mix is left as it is. */
  readonly retarder: RetardedMix | null;
  /** Time of the day to wait for; null for now. */
  readonly minute: number | null;
  /** The part must be at least so warm; null where its surface was not the reason. */
  readonly surfaceLeast_K: number | null;
  readonly verdict: ClimateVerdict;
  readonly blushMargin_K: number;
  /** What it costs: how many times as long the first evaporation takes as now, by the model. */
  readonly evaporationRatio: number;
  /** The same of stated waits by the trade's rule, which knows the temperature only. */
  readonly waitsRatio: number;
}

/** What was asked, tried and found. */
export interface Remedies {
  readonly now: ClimateVerdict;
  readonly found: readonly Remedy[];
  /** What was tried: for the words where nothing was found. */
  readonly tried: { readonly ceiling_K: number; readonly mostRetarderFraction: number | null; readonly hours: number };
}

/** What may be tried. */
export interface RemedyQuestion {
  readonly answer: AirAnswer;
  readonly surface_K: number | null;
  /** The same mix with more retarder, rising in share. */
  readonly retarded: readonly RetardedMix[];
  /** Hours to come, with the mix as it is. */
  readonly later: readonly HourVerdict[];
}

/**
 * Tries what would make it go: the same air warmed (its moisture kept, never above 90 °F nor the
 * job's ceiling), more retarder, a later hour of the day; and warmth or an hour with retarder where
 * none of them alone reaches a go. Of each kind the least that goes, and the least that goes with
 * care where it is a wait now and that is less. A part whose cold surface is the reason is taken to
 * be warmed with the room to 3 °C above the dew point, and `surfaceLeast_K` says so. Cooling and drying
 * the air are not tried: they take plant that few have.
 */
export function remedies(question: RemedyQuestion): Remedies {
  const { answer, surface_K, retarded, later } = question;
  const now = climateVerdict(answer, surface_K);
  const tried = { ceiling_K: ceilingOf(answer), mostRetarderFraction: retarded.at(-1)?.retarderFraction ?? null, hours: later.length };
  const single = now.verdict === 'go' ? [] : [
    ...least(now, (goal) => warmed(question, goal, null)),
    ...least(now, (goal) => firstOf(retarded, (each) => inAir(question, 'retard', answer.air, each, null, goal))),
    ...least(now, (goal) => firstOf(later, (hour) => inAir(question, 'later', hour.air, null, hour.minute, goal))),
  ];
  const goal = now.verdict === 'go' || single.some(({ reaches }) => reaches === 'go') ? null : single.length > 0 || now.verdict === 'care' ? 'go' : 'care';
  const pairs = goal === null ? [] : pairedFor(question, goal);
  return { now, found: [...single, ...pairs], tried };
}

/** Pairs that go; failing that, and where nothing single goes with care either, pairs that do so. */
function pairedFor(question: RemedyQuestion, lowest: 'go' | 'care'): Remedy[] {
  const { retarded, later } = question;
  const paired = (goal: 'go' | 'care') => [
    firstOf(retarded, (each) => warmed(question, goal, each)),
    firstOf(retarded, (each) => firstOf(later, (hour) => inAir(question, 'later-retard', hour.air, each, hour.minute, goal))),
  ].filter((each) => each !== null);
  const goes = paired('go');
  return goes.length > 0 || lowest === 'go' ? goes : paired('care');
}

/** The least that goes, and before it the least that goes with care, where that betters a wait and is another. */
function least(now: ClimateVerdict, of: (goal: 'go' | 'care') => Remedy | null): Remedy[] {
  const goes = of('go');
  const cares = now.verdict === 'wait' ? of('care') : null;
  return [...(cares !== null && cares.reaches === 'care' ? [cares] : []), ...(goes === null ? [] : [goes])];
}

function firstOf<Item>(items: readonly Item[], of: (item: Item) => Remedy | null): Remedy | null {
  for (const item of items) {
    const found = of(item);
    if (found !== null) return found;
  }
  return null;
}

function ceilingOf({ ceiling_K }: Pick<AirAnswer, 'ceiling_K'>): number {
  return Math.min(ceiling_K, WARMEST_K);
}

/** The least warmth, in tenths of a °C, that reaches the goal; it is no rising matter, as beyond 75 °F care begins. */
function warmed(question: RemedyQuestion, goal: 'go' | 'care', retarder: RetardedMix | null): Remedy | null {
  const { air } = question.answer;
  const most = Math.floor((ceilingOf(question.answer) - CELSIUS_0_K) * TENTHS + 1e-6);
  for (let tenths = Math.floor((air.temperature_K - CELSIUS_0_K) * TENTHS + 1e-6) + 1; tenths <= most; tenths++) {
    const found = inAir(question, retarder === null ? 'warm' : 'warm-retard', heatedAir(air, tenths / TENTHS + CELSIUS_0_K), retarder, null, goal);
    if (found !== null) return found;
  }
  return null;
}

/** The remedy in this air where it reaches the goal; null where not. */
function inAir(question: RemedyQuestion, kind: Remedy['kind'], air: MoistAir, retarder: RetardedMix | null, minute: number | null, goal: 'go' | 'care'): Remedy | null {
  const { answer } = question;
  const film: SprayedFilm = { mix: retarder?.mix ?? answer.mix, faces: answer.faces, ceiling_K: answer.ceiling_K };
  const there = filmIn(air, film);
  const surface = surfaceThen(question, kind, air);
  const verdict = climateVerdict(there, surface.surface_K);
  if (!reaches(verdict.verdict, goal)) return null;
  return {
    kind, reaches: verdict.verdict, air, mix: film.mix, retarder, minute, surfaceLeast_K: surface.least_K, verdict,
    blushMargin_K: there.blushMargin_K,
    evaporationRatio: loss_m_s(answer.air, answer.mix, answer.film_K) / loss_m_s(air, film.mix, there.film_K),
    waitsRatio: ruleDryingRatio(air.temperature_K) / ruleDryingRatio(answer.air.temperature_K),
  };
}

function reaches(verdict: ClimateVerdictWord, goal: 'go' | 'care'): verdict is 'go' | 'care' {
  return verdict === 'go' || verdict === goal;
}

/** The part's surface in the remedy: as measured, warmed with the room as far as the rule asks, or unknown later. */
function surfaceThen({ surface_K }: RemedyQuestion, kind: Remedy['kind'], air: MoistAir): { readonly surface_K: number | null; readonly least_K: number | null } {
  const needed_K = air.dewPoint_K + SURFACE_MARGIN_K;
  if (surface_K === null || kind === 'later' || kind === 'later-retard') return { surface_K: null, least_K: surface_K === null ? null : needed_K };
  const isWarmed = kind === 'warm' || kind === 'warm-retard';
  if (!isWarmed || surface_K >= needed_K) return { surface_K, least_K: null };
  // No part is warmer than the room that warms it. A hair more, so that rounding does not undo it.
  return { surface_K: Math.min(needed_K + 1e-6, air.temperature_K), least_K: needed_K };
}
