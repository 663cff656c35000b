import { MOST_READINGS, type ReadingSpec } from '../../../sim/index.ts';
import { dropDraft, keepDraft } from '../fieldText.ts';
import { readNumber } from '../readNumber.ts';
import { state } from '../state.ts';
import { blankOf, blankPath, FIGURES, type FigureField, type ReadingKind } from './readingFigures.ts';
import { nextSpot, SPOT_READINGS } from './spotNames.ts';
import { addReadings } from './surveyChange.ts';
import { lookAtSurvey, shownSurvey, surveyStage } from './survey.ts';
import type { EntryPrefs } from './surveyPrefs.ts';

/** Changes what the next reading will be. */
export function setEntry(changed: Partial<EntryPrefs>): void {
  lookAtSurvey({ entry: { ...state.survey.peek().entry, ...changed } });
}

/** Name of the draft that a figure is typed in. */
export function figurePointer(kind: ReadingKind, key: string): string {
  return `/view/survey-${kind}-${key}`;
}

/** Figures that the next reading asks for: a comb whose every tooth was wetted has no upper one. */
export function askedFigures({ kind, allWetted }: EntryPrefs): readonly FigureField[] {
  return FIGURES[kind].filter(({ isOptional }) => isOptional !== true || !allWetted);
}

/** Takes a keystroke of a figure: kept as typed, right or wrong. */
export function typeFigure(kind: ReadingKind, key: string, text: string): void {
  const read = readNumber(blankOf(kind), blankPath(key), text, state.units.peek());
  keepDraft(figurePointer(kind, key), { text, problem: text.trim() === '' || 'value' in read ? null : read.problem });
}

/** What came of asking to add the reading: done, or the figure that lacks a value. */
export type Taken = { readonly done: true } | { readonly wanting: string };

/** Adds the reading as typed. A figure that is missing or wrong is told at its field, and everything typed stays. */
export function takeReading(): Taken {
  const { entry } = state.survey.peek();
  const survey = shownSurvey.peek();
  if (survey === null) return { wanting: '' };
  const figures: Record<string, number> = {};
  for (const { key } of askedFigures(entry)) {
    const pointer = figurePointer(entry.kind, key);
    const text = state.drafts.peek()[pointer]?.text ?? '';
    const read = readNumber(blankOf(entry.kind), blankPath(key), text, state.units.peek());
    const problem = 'problem' in read ? read.problem : orderProblem(key, read.value, figures);
    if (problem !== null) {
      keepDraft(pointer, { text, problem });
      return { wanting: key };
    }
    figures[key] = (read as { readonly value: number }).value;
  }
  if (survey.readings.length >= MOST_READINGS) {
    surveyStage.problem.value = { title: 'The reading was not added', text: `A survey holds ${MOST_READINGS} readings and this one has as many; begin another survey.`, place: {} };
    return { wanting: '' };
  }
  const spots = survey.rule.kind === 'spots-areas';
  const spot = spots ? nextSpot(survey.readings, entry.area) : null;
  const reading = { kind: entry.kind, ...figures, ...placeOf(entry), ...(entry.area === '' ? {} : { area: entry.area }), ...(spot === null ? {} : { spot: spot.spot }) } as ReadingSpec;
  if (!addReadings('Add a reading', [reading])) return { wanting: '' };
  readyForNext(entry, spot === null || spot.taken + 1 >= SPOT_READINGS);
  return { done: true };
}

function placeOf({ x_mm, y_mm }: EntryPrefs): { x_mm?: number; y_mm?: number } {
  return x_mm === null || y_mm === null ? {} : { x_mm, y_mm };
}

/** The upper tooth lies above the lower one. */
function orderProblem(key: string, value: number, figures: Readonly<Record<string, number>>): string | null {
  const low = figures['low_um'];
  return key === 'high_um' && low !== undefined && value <= low ? 'The next dry tooth is longer than the last wetted one; the film lies between the two' : null;
}

/** Figures are typed anew, but a coupon's area; the place stays only within a spot. */
function readyForNext({ kind }: EntryPrefs, placeIsDone: boolean): void {
  for (const { key } of FIGURES[kind]) if (key !== 'area_cm2') dropDraft(figurePointer(kind, key));
  if (!placeIsDone) return;
  dropDraft('/view/survey-x');
  dropDraft('/view/survey-y');
  setEntry({ x_mm: null, y_mm: null });
}
