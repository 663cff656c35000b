import { computed, signal } from '@preact/signals';
import { CELSIUS_0_K, answerToday, cupById, finishById, jobOfToday, thinnerById, USUAL_TODAY, type TodayAnswer, type TodayQuestion } from '../../../sim/index.ts';
import { replaceJob } from '../document.ts';
import { problemOf, type Problem } from '../problem.ts';
import { state } from '../state.ts';
import { USUAL_TODAY_PREFS, type TodayPrefs } from './todayPrefs.ts';


/** Something asked for on the sheet that did not work; stays until dismissed. */
export const todayProblem = signal<Problem | null>(null);

/** Changes some of what is typed. */
export function setToday(changed: Partial<TodayPrefs>): void {
  state.today.value = { ...state.today.peek(), ...changed };
}

/** The answer to what is typed, or why there is none. It takes some milliseconds, so that it is worked out on the page. */
export const todayAnswer = computed<TodayAnswer | Problem>(() => {
  try {
    return answerToday(questionOf(state.today.value));
  } catch (thrown) {
    return problemOf('Nothing can be said of this', thrown);
  }
});

/** What is typed, in SI. A finish, thinner or cup that is not known any more is the usual one. */
export function questionOf(prefs: TodayPrefs): TodayQuestion {
  return {
    ...USUAL_TODAY,
    temperature_K: prefs.temperature_C + CELSIUS_0_K,
    humidityFraction: prefs.humidity_percent / 100,
    finish: known(prefs.finish, finishById, USUAL_TODAY.finish),
    thinner: known(prefs.thinner, thinnerById, USUAL_TODAY.thinner),
    thinnerRatio: prefs.thinnerPerFinish,
    retarderFraction: prefs.retarder_percent / 100,
    cup: known(prefs.cup, cupById, USUAL_TODAY.cup),
    seconds: prefs.cupseconds,
    area_m2: prefs.area_m2,
    dry_m: prefs.dry_um * 1e-6,
    coats: prefs.coats,
    tilt_rad: (prefs.slope_deg * Math.PI) / 180,
    backing: prefs.backing,
    surface_K: kelvin(prefs.surface_C),
    liquid_K: kelvin(prefs.liquid_C),
    afternoon_K: kelvin(prefs.afternoon_C),
    sanded_m: prefs.sanded_um * 1e-6,
    efficiencyFraction: prefs.lands_percent / 100,
    altitude_m: prefs.altitude_m,
    airSpeed_m_s: prefs.draught_m_s,
  };
}

function kelvin(celsius: number | null): number | null {
  return celsius === null ? null : celsius + CELSIUS_0_K;
}

function known(id: string, find: (id: string) => unknown, usual: string): string {
  try {
    find(id);
    return id;
  } catch {
    return usual;
  }
}

/** The answer as the job in hand; Undo brings the one before back. @returns whether it was made. */
export function makeTodayJob(answer: TodayAnswer): boolean {
  try {
    replaceJob('Make today’s answer a job', jobOfToday(answer));
    return true;
  } catch (thrown) {
    todayProblem.value = problemOf('No job was made; the one before is as it was', thrown);
    return false;
  }
}

/** Which numbers of the question the reader has changed from the usual: those are not said to be taken as usual. */
export function statedKeys(prefs: TodayPrefs): ReadonlySet<string> {
  const changed = (Object.keys(prefs) as (keyof TodayPrefs)[]).filter((key) => prefs[key] !== USUAL_TODAY_PREFS[key]);
  return new Set([...SHOWN_KEYS, ...changed.flatMap((key) => QUESTION_KEYS[key] ?? [])]);
}

/** These stand open on the sheet, whatever they are. */
export const SHOWN_KEYS: readonly string[] = ['temperature_K', 'humidityFraction', 'finish', 'thinner', 'seconds', 'area_m2', 'dry_m'];

const QUESTION_KEYS: Readonly<Partial<Record<keyof TodayPrefs, keyof TodayQuestion>>> = {
  thinnerPerFinish: 'thinnerRatio', coats: 'coats', slope_deg: 'tilt_rad', backing: 'backing', surface_C: 'surface_K', liquid_C: 'liquid_K', afternoon_C: 'afternoon_K',
  sanded_um: 'sanded_m', lands_percent: 'efficiencyFraction',
};
