import { localTimeOf } from '../base/localTime.ts';
import type { DayFinding } from '../scheme/dayFindings.ts';
import type { DayPlan } from '../scheme/dayPlan.ts';
import type { LaidChain, LaidTask } from '../scheme/timeline.ts';
import { ESTIMATE_STATEMENT } from './cautions.ts';
import { DAYS_NOTE, daysAirNote, findingWords, OVERNIGHT_NOTE, readySentence, unplacedWords } from './dayPlanWords.ts';
import { jsonNumber, type JsonValue } from './jsonValue.ts';
import { RESULT_VERSION } from './reportJson.ts';

/** The days as one JSON object: local times of the shop's clock, spans in minutes. */
export function daysJson(plan: DayPlan): { readonly [key: string]: JsonValue } {
  const { timeline, base, totals } = plan;
  return {
    schemaVersion: RESULT_VERSION,
    estimate: ESTIMATE_STATEMENT,
    cautions: [OVERNIGHT_NOTE],
    sentence: readySentence(plan),
    start: localTimeOf(timeline.start),
    ready: localTimeOf(timeline.ready),
    readyAsPlanned: localTimeOf(base.ready),
    coats: totals.coats,
    work_min: jsonNumber(totals.work_min),
    waits_min: jsonNumber(totals.wait_min),
    unplaced: totals.unplaced,
    air: plan.air,
    notes: [daysAirNote(plan), DAYS_NOTE],
    schemes: timeline.chains.map(chainJson),
    late: [...plan.late].map(([step, minutes]) => ({ step, late_min: minutes })),
    shifts: plan.shifts.map(({ id, planned, start }) => ({ step: id, planned: localTimeOf(planned), start: start === null ? null : localTimeOf(start), later_min: start === null ? null : start - planned })),
    findings: plan.findings.map(findingJson),
  };
}

function chainJson(laidChain: LaidChain): JsonValue {
  const { chain, laid, unplaced, ready } = laidChain;
  return {
    scheme: chain.schemeId,
    name: chain.schemeName,
    panels: chain.panels,
    ready: localTimeOf(ready),
    steps: laid.map(taskJson),
    unplaced: unplaced.map(({ id }) => id),
    why: unplacedWords(laidChain),
  };
}

function taskJson({ task, earliest, start, end, latest, holds, wait }: LaidTask): JsonValue {
  return {
    step: task.id,
    name: task.planned.spec.name,
    kind: task.planned.spec.kind,
    earliest: localTimeOf(Math.ceil(earliest)),
    start: localTimeOf(start),
    end: localTimeOf(end),
    latest: latest === null ? null : localTimeOf(Math.floor(latest)),
    held: holds.map(({ why, words }) => ({ why, words })),
    wait: wait === null ? null : {
      until: localTimeOf(Math.ceil(wait.until)),
      by: wait.rule,
      stated_min: jsonNumber(task.wait_min),
      statedHere_min: jsonNumber(wait.statedUntil - wait.from),
      model_min: task.modelWait_min === null ? null : jsonNumber(task.modelWait_min),
      modelHere_min: wait.modelUntil === null ? null : jsonNumber(wait.modelUntil - wait.from),
      latestNext: wait.latest === null ? null : localTimeOf(Math.floor(wait.latest)),
    },
  };
}

function findingJson(finding: DayFinding): JsonValue {
  return { kind: finding.kind, step: finding.laid.task.id, pointer: finding.laid.task.planned.pointer, text: findingWords(finding, 'metric') };
}
