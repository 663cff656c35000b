import { moleFractions } from '../materials/blend.ts';
import type { Mix } from '../mix/mix.ts';
import type { AirAnswer } from './airAnswer.ts';
import { airAt, type AirByHour, type AirRow } from './airByHour.ts';
import { CLIMATE_RULES, type ClimateRuleId, type ClimateVerdictWord } from './climateRules.ts';
import { climateVerdict, type ClimateVerdict } from './climateVerdict.ts';
import { filmTemperature_K } from './filmTemperature.ts';
import type { MoistAir } from './moistAir.ts';

/** More hours than this are judged every second, third, … hour: 14 days. */
const MOST_HOURS = 336;
/** How far ahead a turn for the worse is called out, min. Assumed: a coat with its flash and the cleaning of the gun. */
const LOOK_AHEAD_min = 180;

/** What is sprayed through the day. */
export interface SprayedFilm {
  readonly mix: Mix;
  readonly faces: 1 | 2;
  readonly ceiling_K: number;
}

/** The air of one hour, judged. */
export interface HourVerdict {
  readonly minute: number;
  readonly air: MoistAir;
  readonly film_K: number;
  readonly verdict: ClimateVerdict;
}

/** A turn for the worse. */
export interface Worsening {
  readonly minute: number;
  readonly from: ClimateVerdictWord;
  readonly to: ClimateVerdictWord;
}

/** A stretch of hours with one verdict, both ends included, min. */
export interface Stretch {
  readonly from_min: number;
  readonly to_min: number;
}

/** The day judged by the hour. */
export interface DayVerdicts {
  readonly hours: readonly HourVerdict[];
  /** From hour to hour, min: 60, more for very long spans. */
  readonly step_min: number;
  /** Stretches that go, and those that go with care. */
  readonly goes: readonly Stretch[];
  readonly cares: readonly Stretch[];
  /** Minutes of the hours that each rule lets pass with a go. */
  readonly passing: Readonly<Record<ClimateRuleId, readonly number[]>>;
  readonly firstGo_min: number | null;
  readonly firstCare_min: number | null;
  readonly worsenings: readonly Worsening[];
  /** Dew point of the last hour less that of the first, K. */
  readonly dewPointChange_K: number;
}

/** Film and blush margin of a mix in some air, without what `airAnswer` tries beside them. */
export function filmIn(air: MoistAir, { mix, faces, ceiling_K }: SprayedFilm): Pick<AirAnswer, 'air' | 'film_K' | 'blushMargin_K' | 'ceiling_K'> {
  const film_K = filmTemperature_K(air, moleFractions(mix.solvents), faces);
  return { air, film_K, blushMargin_K: film_K - air.dewPoint_K, ceiling_K };
}

/**
 * Judges each whole hour from the first row to the last, and those two. The part's surface at other
 * hours is not known, so that its rule stays open: it must be measured before spraying.
 */
export function dayVerdicts(day: AirByHour, film: SprayedFilm): DayVerdicts {
  const { minutes, step_min } = judgedMinutes(day.rows);
  const hours = minutes.map((minute): HourVerdict => {
    const answer = filmIn(airAt(day, minute).air, film);
    return { minute, air: answer.air, film_K: answer.film_K, verdict: climateVerdict(answer, null) };
  });
  const first = (word: ClimateVerdictWord) => hours.find(({ verdict }) => verdict.verdict === word)?.minute ?? null;
  return {
    hours,
    step_min,
    goes: stretches(hours, 'go'),
    cares: stretches(hours, 'care'),
    passing: Object.fromEntries(CLIMATE_RULES.map(({ id }) => [id, hours.filter(({ verdict }) => verdict.rules.some(({ rule, verdict: word }) => rule.id === id && word === 'go')).map(({ minute }) => minute)])) as Record<ClimateRuleId, number[]>,
    firstGo_min: first('go'),
    firstCare_min: first('care'),
    worsenings: worsenings(hours),
    dewPointChange_K: (hours.at(-1) as HourVerdict).air.dewPoint_K - (hours[0] as HourVerdict).air.dewPoint_K,
  };
}

/** The next turn for the worse within the next three hours, or null. */
export function recheckAfter({ worsenings: all }: DayVerdicts, minute: number): Worsening | null {
  return all.find((each) => each.minute > minute && each.minute <= minute + LOOK_AHEAD_min) ?? null;
}

function judgedMinutes(rows: readonly AirRow[]): { readonly minutes: readonly number[]; readonly step_min: number } {
  const [first, last] = [(rows[0] as AirRow).minute, (rows.at(-1) as AirRow).minute];
  const step_min = 60 * Math.max(1, Math.ceil((last - first) / 60 / MOST_HOURS));
  const minutes = [first];
  for (let minute = (Math.floor(first / 60) + 1) * 60; minute < last; minute += step_min) minutes.push(minute);
  return { minutes: last > first ? [...minutes, last] : minutes, step_min };
}

function stretches(hours: readonly HourVerdict[], word: ClimateVerdictWord): Stretch[] {
  const found: Stretch[] = [];
  hours.forEach(({ minute, verdict }, i) => {
    if (verdict.verdict !== word) return;
    const open = found.at(-1);
    if (open !== undefined && open.to_min === hours[i - 1]?.minute) found[found.length - 1] = { ...open, to_min: minute };
    else found.push({ from_min: minute, to_min: minute });
  });
  return found;
}

const WORSE: Readonly<Record<ClimateVerdictWord, number>> = { go: 0, care: 1, wait: 2 };

function worsenings(hours: readonly HourVerdict[]): Worsening[] {
  return hours.flatMap(({ minute, verdict: { verdict: to } }, i) => {
    const from = hours[i - 1]?.verdict.verdict;
    return from !== undefined && WORSE[to] > WORSE[from] ? [{ minute, from, to }] : [];
  });
}
