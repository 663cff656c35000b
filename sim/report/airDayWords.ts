import type { DayVerdicts, Stretch, Worsening } from '../air/dayVerdicts.ts';
import { localTimeOf } from '../base/localTime.ts';
import { CLIMATE_WORDS } from './climateWords.ts';
import { timeWords } from './remedyWords.ts';
import { shownPercent, shownTemperature, shownTemperatureStep, type UnitSystem } from './units.ts';

/** A change of dew point that is worth a word, K. Assumed: what a hygrometer errs by in a day. */
const TREND_K = 1;

/** Said under a day that was typed or read from a file. */
export const DAY_LIMITS = 'Between the rows temperature and moisture run straight; before the first row and after the last nothing is known and their air is held. The part’s own surface at these hours is not known: measure it before spraying.';

/** First minute of the day's rows, from which times without a date are counted. */
export function firstMinute({ hours }: DayVerdicts): number {
  return hours[0]?.minute ?? 0;
}

/** Head and rows of the day: time, air, humidity, dew point, film, verdict. */
export function dayRows(day: DayVerdicts, system: UnitSystem): string[][] {
  return [
    ['time', 'air', 'humidity', 'dew point', 'wet film', 'verdict'],
    ...day.hours.map(({ minute, air, film_K, verdict }) => [
      timeWords(minute, firstMinute(day)), shownTemperature(air.temperature_K, system), shownPercent(air.relativeHumidityFraction),
      shownTemperature(air.dewPoint_K, system), shownTemperature(film_K, system), CLIMATE_WORDS[verdict.verdict].toLowerCase(),
    ]),
  ];
}

/** What the day comes to: hours that go, the dew point's trend, and when to look again. */
export function daySentences(day: DayVerdicts, recheck: Worsening | null, system: UnitSystem): string[] {
  const first = firstMinute(day);
  return [
    goSentence(day),
    trendSentence(day, system),
    ...(recheck === null ? [] : [`Within three hours it gets worse: finish the coat before ${timeWords(recheck.minute, first)}, or do not start it.`]),
    ...day.worsenings.slice(0, 3).map(({ minute, from, to }) => `Look at the gauge again before ${timeWords(minute, first)}: from ${CLIMATE_WORDS[from].toLowerCase()} to ${CLIMATE_WORDS[to].toLowerCase()}.`),
  ];
}

function goSentence(day: DayVerdicts): string {
  const first = firstMinute(day);
  const words = (stretches: readonly Stretch[]) => stretches.map(({ from_min, to_min }) => (from_min === to_min ? timeWords(from_min, first) : `${timeWords(from_min, first)} to ${timeWords(to_min, first)}`)).join(', ');
  const care = day.cares.length === 0 ? '' : ` With care: ${words(day.cares)}.`;
  return day.goes.length === 0 ? `No hour of ${localTimeOf(first).slice(0, 10)} and the rows after it goes without care.${care}` : `Go: ${words(day.goes)}.${care}`;
}

function trendSentence({ dewPointChange_K, hours }: DayVerdicts, system: UnitSystem): string {
  if (hours.length < 2) return 'One row alone shows no trend of the dew point.';
  if (Math.abs(dewPointChange_K) < TREND_K) return 'The dew point hardly moves: the air keeps its moisture.';
  const by = shownTemperatureStep(Math.abs(dewPointChange_K), system);
  return dewPointChange_K > 0
    ? `The dew point rises by ${by} from the first row to the last: damper air is coming in.`
    : `The dew point falls by ${by} from the first row to the last: drier air is coming in.`;
}

/** Of each rule: how many of the hours it lets pass. The surface rule has none: nobody has measured the part then. */
export function passingRows({ passing, hours }: DayVerdicts): string[][] {
  const rules = hours[0]?.verdict.rules.map(({ rule }) => rule) ?? [];
  return rules.filter(({ id }) => id !== 'surface').map(({ id, name }) => [name, `${passing[id].length} of ${hours.length}`]);
}
