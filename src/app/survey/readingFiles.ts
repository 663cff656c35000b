import { computed } from '@preact/signals';
import { counted, CrosscoatError, MOST_READINGS, readingsCsv, type ReadingSpec } from '../../../sim/index.ts';
import { download } from '../../storage/download.ts';
import { dropDraft } from '../fieldText.ts';
import { problemOf, type Problem } from '../problem.ts';
import { state } from '../state.ts';
import { readingsOfText } from './pastedText.ts';
import { addReadings, refusedAsSigned } from './surveyChange.ts';
import { shownSurvey, surveyStage } from './survey.ts';

/** Name of the draft that pasted readings stand in. */
export const PASTE_POINTER = '/view/survey-paste';

/** Longest file of readings, bytes: five hundred for each reading that a survey holds. */
const MOST_BYTES = 500 * MOST_READINGS;

/** What of a text was understood. */
export interface ReadReadings {
  readonly readings: readonly ReadingSpec[];
  readonly said: string;
  readonly warnings: readonly string[];
}

/** The pasted text as understood, or what is wrong with it and where; null while nothing is pasted. */
export const pasted = computed<ReadReadings | { readonly problem: Problem } | null>(() => {
  const text = state.drafts.value[PASTE_POINTER]?.text ?? '';
  if (text.trim() === '') return null;
  try {
    return read(text, 'pasted');
  } catch (thrown) {
    return { problem: problemOf('The pasted readings could not be read', thrown) };
  }
});

/** Adds the readings that were pasted, as one step of undo, and clears the box. */
export function addPasted(): void {
  const found = pasted.peek();
  if (found === null || 'problem' in found) return;
  if (add(found.readings, 'Paste readings')) dropDraft(PASTE_POINTER);
}

/** Adds the readings of a file to the survey shown when it was chosen, as one step of undo. A bad file changes nothing, and nothing that was typed is lost. */
export async function openReadingsFile(file: File): Promise<void> {
  const survey = shownSurvey.peek();
  if (survey === null || refusedAsSigned(survey)) return;
  const jobId = state.jobId.peek();
  try {
    if (file.size > MOST_BYTES) throw new CrosscoatError('limit', `${file.name} has ${Math.round(file.size / 1e3)} kB, more than ${MOST_BYTES / 1e3} kB; give the readings only, ${MOST_READINGS} at most`, { file: file.name });
    const text = await file.text();
    if (shownSurvey.peek()?.id !== survey.id || state.jobId.peek() !== jobId) {
      throw new CrosscoatError('not-found', `While ${file.name} was read, the survey “${survey.name}” gave way to another or went; show the survey that the readings belong to and open the file again`, { file: file.name });
    }
    const found = read(text, file.name);
    if (add(found.readings, `Readings of ${file.name}`)) surveyStage.problem.value = found.warnings.length === 0 ? null : { title: `${file.name}: ${found.said}`, text: found.warnings.join(' '), place: {} };
  } catch (thrown) {
    surveyStage.problem.value = problemOf(`${file.name} was not opened; nothing was changed`, thrown);
  }
}

/** Saves the readings of the survey shown as CSV, which can be opened again here. */
export function saveReadings(): void {
  const survey = shownSurvey.peek();
  if (survey !== null) download(new Blob([readingsCsv(survey.readings)], { type: 'text/csv' }), `${survey.id}-readings.csv`);
}

function read(text: string, file: string): ReadReadings {
  const { readings, words, warnings } = readingsOfText(text, file, state.survey.value.pasteUnit, state.units.value);
  return { readings, said: `${counted(readings.length, 'reading')} understood: ${words}.`, warnings };
}

function add(readings: readonly ReadingSpec[], label: string): boolean {
  const survey = shownSurvey.peek();
  if (survey === null) return false;
  if (survey.readings.length + readings.length <= MOST_READINGS) return addReadings(label, [...readings]);
  surveyStage.problem.value = { title: 'Nothing was added', text: `A survey holds ${MOST_READINGS} readings; this one has ${survey.readings.length} and these are ${readings.length}. Begin another survey.`, place: {} };
  return false;
}
