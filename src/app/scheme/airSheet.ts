import { computed, signal } from '@preact/signals';
import { CELSIUS_0_K, airAdvice, backingById, changedMixSpec, CrosscoatError, LONGEST_HOURS, localTimeOf, minutesOf, readHours, type AirAdvice, type AirSpec, type HourSpec, type Job, type MixSpec, type Remedy } from '../../../sim/index.ts';
import { changeJob, closeStep, mix, panel } from '../document.ts';
import { problemOf, type Problem } from '../problem.ts';
import { withValueAt } from '../path.ts';
import { state } from '../state.ts';
import { schemeStage, shownScheme } from './scheme.ts';


/** What the last file of hours was told of; gone on reload. */
export const hoursNotes = signal<readonly string[]>([]);

/** Rows of the day that can be changed by hand; more come from a file. */
export const MOST_SHOWN_ROWS = 48;

/** Place of the mix that the air is judged for: the chosen one, that of the scheme's first sprayed coat, that of the coat in hand, or the first; -1 without mixes. */
export const airMixIndex = computed(() => {
  const { mixes, coats } = state.job.value;
  const sprayed = shownScheme.value?.steps.find((step) => step.kind === 'spray');
  const wanted = [state.scheme.value.airMix, coats.find(({ id }) => sprayed?.kind === 'spray' && id === sprayed.coat)?.mix, mix.value?.id];
  const found = wanted.map((id) => mixes.findIndex((each) => each.id === id)).find((index) => index >= 0);
  return found ?? (mixes.length > 0 ? 0 : -1);
});

/** The panel that the air is judged for: the scheme's first, or that of the coat in hand. */
export const airPanel = computed(() => {
  const first = shownScheme.value?.panels[0];
  return state.job.value.part.panels.find(({ id }) => id === first) ?? panel.value;
});

/** Days of the job's hours, in order. */
export const airDays = computed(() => [...new Set((state.job.value.hours ?? []).map(({ at }) => at.slice(0, 10)))]);

export const airDay = computed(() => (airDays.value.includes(state.scheme.value.airDay) ? state.scheme.value.airDay : (airDays.value[0] ?? '')));

/** The job's hours of the day shown, each with its place in the job. */
export const dayHours = computed(() => (state.job.value.hours ?? []).flatMap((hour, index) => (hour.at.startsWith(airDay.value) ? [{ hour, index }] : [])));

/** The verdict on the job's room and the day shown, or why there is none; null without a mix. */
export const airShown = computed<{ readonly advice: AirAdvice } | { readonly problem: Problem } | null>(() => {
  const { job, scheme } = state;
  const spec = job.value.mixes[airMixIndex.value];
  if (spec === undefined) return null;
  try {
    const { airSurface_C } = scheme.value;
    const faces = backingById(airPanel.value.backing).faces;
    const surface_K = airSurface_C === null ? null : airSurface_C + CELSIUS_0_K;
    const hours = dayHours.value.map(({ hour }) => hour);
    return { advice: airAdvice({ air: job.value.air, mix: spec, pointer: `/mixes/${airMixIndex.value}`, faces, surface_K, hours, minute: null }) };
  } catch (thrown) {
    return { problem: problemOf('The air could not be judged', thrown) };
  }
});

/** Makes a remedy so, to be looked at: the mix, the room's air, or both, in one step that can be undone. */
export function applyRemedy(label: string, { kind, retarder, air }: Remedy): void {
  const job = state.job.peek();
  const mixed = retarder === null ? job : withRetarder(job, retarder.retarderFraction * 100);
  changeStep(label, kind === 'retard' ? mixed : withAir(mixed, air.temperature_K, air.relativeHumidityFraction));
}

/** The mix with so much retarder, in one step; a cup reading goes, as it was of the mix before. */
export function useRetarder(percent: number): void {
  changeStep(`Use ${percent} % retarder`, withRetarder(state.job.peek(), percent));
}

/** Puts the air of a time of the day into the room, in one step. */
export function lookAtAir(label: string, { temperature_K, relativeHumidityFraction }: AirAdvice['answer']['air']): void {
  changeStep(label, withAir(state.job.peek(), temperature_K, relativeHumidityFraction));
}

function withRetarder(job: Job, percent: number): Job {
  const spec = job.mixes[airMixIndex.peek()] as MixSpec;
  return withValueAt(job, ['mixes', airMixIndex.peek()], changedMixSpec(spec, { retarder_percent: Number(percent.toFixed(6)) }));
}

function withAir(job: Job, temperature_K: number, humidityFraction: number): Job {
  const air: AirSpec = { ...job.air, temperature_C: tidy(temperature_K - CELSIUS_0_K), humidity_percent: tidy(humidityFraction * 100) };
  return { ...job, air };
}

/** Without the last digits that changing the unit leaves. */
function tidy(value: number): number {
  return Number(value.toPrecision(9));
}

/** An hour behind the last of the day shown, or the job's first. */
export function addHour(): void {
  const job = state.job.peek();
  const last = dayHours.peek().at(-1)?.hour;
  const at = last === undefined ? firstTime(job) : localTimeOf(minutesOf(last.at) + 60);
  const { temperature_C, humidity_percent } = last ?? job.air;
  putHours('Add an hour', [...(job.hours ?? []), { at, temperature_C, humidity_percent }]);
}

/** Where a day without hours begins: with the job's working hours, or on a day that anybody will change. */
function firstTime(job: Job): string {
  return job.working?.start ?? '2026-01-01T08:00';
}

export function removeHour(index: number): void {
  putHours('Remove an hour', (state.job.peek().hours ?? []).filter((_, i) => i !== index));
}

export function removeAllHours(): void {
  putHours('Remove all hours', []);
  hoursNotes.value = [];
}

/** Another time for a row; the rows are put in order again. */
export function setHourTime(index: number, at: string): void {
  const hours = state.job.peek().hours ?? [];
  putHours('Time of an hour', hours.map((hour, i) => (i === index ? { ...hour, at: at.slice(0, 16) } : hour)));
}

/** Hours in order of time, or nothing and a notice where two have one time or one is none. */
function putHours(label: string, hours: readonly HourSpec[]): void {
  try {
    const ordered = hours.map((hour) => ({ hour, minute: minutesOf(hour.at) })).sort((a, b) => a.minute - b.minute);
    const twice = ordered.find(({ minute }, i) => minute === ordered[i - 1]?.minute);
    if (twice !== undefined) throw new CrosscoatError('time', `${twice.hour.at.replace('T', ' ')} stands in two rows; give each its own time`);
    dropHourDrafts();
    changeStep(label, { ...state.job.peek(), hours: ordered.map(({ hour }) => hour) });
    schemeStage.problem.value = null;
  } catch (thrown) {
    schemeStage.problem.value = problemOf('The hours were not changed', thrown);
  }
}

/** Rows move, so that a draft would stand in another row. */
function dropHourDrafts(): void {
  state.drafts.value = Object.fromEntries(Object.entries(state.drafts.peek()).filter(([pointer]) => !pointer.startsWith('/hours/')));
}

/** Opens a logger's file in place of the hours. A bad file changes nothing. */
export async function openHours(file: File): Promise<void> {
  if (file.size > 4 * LONGEST_HOURS) {
    schemeStage.problem.value = { title: `${file.name} was not opened; nothing was changed`, text: `It has more than ${LONGEST_HOURS} letters; cut it to the days of the job.`, place: { file: file.name } };
    return;
  }
  takeHours(await file.text(), file.name);
}

/** Takes rows as text, from a file or from the clipboard, in place of the hours. */
export function takeHours(text: string, name: string): boolean {
  try {
    const { hours, warnings } = readHours(text, name);
    dropHourDrafts();
    changeStep(`Hours of ${name}`, { ...state.job.peek(), hours: [...hours] });
    hoursNotes.value = warnings.map((warning) => warning.text);
    schemeStage.problem.value = null;
    return true;
  } catch (thrown) {
    schemeStage.problem.value = problemOf(`${name} was not taken; nothing was changed`, thrown);
    return false;
  }
}

function changeStep(label: string, next: Job): void {
  closeStep();
  changeJob(label, next);
  closeStep();
}
