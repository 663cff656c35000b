import { secondsOfMoment } from '../base/moment.ts';
import { problem, repeatedIds, unknownId } from './idProblems.ts';
import type { Problem } from './problems.ts';
import type { Job, LogEntrySpec, SurveySpec } from './schema.ts';

/**
 * What the schema cannot say of the log and the surveys. A record outlives the plan: an entry whose coat, step, set-up or
 * recording is gone from the job is still read, and the loss is told where it is shown.
 */
export function recordProblems({ log = [], surveys = [], part }: Job): Problem[] {
  return [
    ...repeatedIds('/log', log),
    ...repeatedIds('/surveys', surveys),
    ...log.flatMap((entry, i) => entryProblems(`/log/${i}`, entry)),
    ...surveys.flatMap((survey, i) => [
      ...momentProblems(`/surveys/${i}/at`, survey.at),
      ...unknownId(`/surveys/${i}/panel`, survey.panel, part.panels, 'panel'),
      ...ruleProblems(`/surveys/${i}/rule`, survey.rule),
      ...survey.readings.flatMap((reading, k) => readingProblems(`/surveys/${i}/readings/${k}`, reading)),
    ]),
  ];
}

function entryProblems(pointer: string, { started, ended, photos, combs }: LogEntrySpec): Problem[] {
  return [
    ...momentProblems(`${pointer}/started`, started),
    // An end before its start is kept: clocks are put back, and a record that does not open is worse than one with an odd time.
    ...(ended === undefined ? [] : momentProblems(`${pointer}/ended`, ended)),
    ...repeatedIds(`${pointer}/photos`, photos),
    ...combs.flatMap((comb, k) => teethProblems(`${pointer}/combs/${k}`, comb)),
  ];
}

/** A day that its month has not. */
function momentProblems(pointer: string, text: string): Problem[] {
  return secondsOfMoment(text) === null ? [problem(pointer, `= "${text}" is on no day of the calendar; give one that is`)] : [];
}

function teethProblems(pointer: string, { low_um, high_um }: { readonly low_um: number; readonly high_um?: number | undefined }): Problem[] {
  if (high_um === undefined || low_um < high_um) return [];
  return [problem(`${pointer}/high_um`, `= ${high_um} is not above low_um = ${low_um}; the film lies between the last wetted tooth and the next, dry one`)];
}

function readingProblems(pointer: string, reading: SurveySpec['readings'][number]): Problem[] {
  return [
    ...(reading.kind === 'comb' ? teethProblems(pointer, reading) : []),
    ...((reading.x_mm === undefined) === (reading.y_mm === undefined) ? [] : [problem(`${pointer}/${reading.x_mm === undefined ? 'x_mm' : 'y_mm'}`, 'is missing; give both x and y, or neither')]),
  ];
}

/** Limits of a rule that are not in their order. */
export function ruleProblems(pointer: string, rule: SurveySpec['rule']): Problem[] {
  const pairs: readonly (readonly [lowKey: string, low: number | undefined, highKey: string, high: number | undefined])[] =
    rule.kind === 'spots-areas' ? [['min_um', rule.min_um, 'max_um', rule.max_um]]
      : rule.kind === 'mean-80' ? [['nominal_um', rule.nominal_um, 'maximum_um', rule.maximum_um]]
        : rule.kind === 'shop' ? [['meanMin_um', rule.meanMin_um, 'meanMax_um', rule.meanMax_um], ['eachMin_um', rule.eachMin_um, 'eachMax_um', rule.eachMax_um]]
          : [];
  return pairs.flatMap(([lowKey, low, highKey, high]) =>
    low === undefined || high === undefined || low <= high ? [] : [problem(`${pointer}/${highKey}`, `= ${high} is below ${lowKey} = ${low}; no film could pass`)]);
}
