import ical, { ICalAlarmType, ICalEventTransparency, type ICalCalendar } from 'ical-generator';
import { localTimeOf } from '../base/localTime.ts';
import type { DayPlan } from '../scheme/dayPlan.ts';
import type { LaidChain, LaidTask } from '../scheme/timeline.ts';
import { actsOf, ACT_CAUTIONS } from './actCautions.ts';
import { ESTIMATE_STATEMENT } from './cautions.ts';
import { spanWords } from './clockWords.ts';
import { dayAndClock, holdWords, OVERNIGHT_NOTE, waitRuleWords } from './dayPlanWords.ts';
import { quotedName, unusualLettersOut, type CalendarOptions } from './calendarText.ts';

/** Reminder before a step, and before the end of a wait, s. Assumed: time to warm, mix and strain. */
const STEP_ALARM_S = 30 * 60;
const WAIT_ALARM_S = 15 * 60;
/** Waits shorter than this are no entry of their own, min. */
const LEAST_WAIT_min = 1;

/**
 * The days as iCalendar text (RFC 5545): an event a step, and a transparent one a wait, each with a reminder before it. Times are
 * local ones of the shop's clock, without a zone. An event's id comes of job, scheme and step alone, so that a calendar read in again
 * moves its events and doubles none.
 */
export function calendarOf({ timeline }: DayPlan, { jobName, stamp }: CalendarOptions): string {
  const calendar = ical({ name: quotedName(jobName), prodId: { company: 'Crosscoat', product: 'Days', language: 'EN' } });
  for (const chain of timeline.chains) {
    for (const laid of chain.laid) {
      addStep(calendar, laid, chain, jobName, stamp);
      if (laid.wait !== null && laid.wait.until - laid.wait.from >= LEAST_WAIT_min) addWait(calendar, laid, chain, jobName, stamp);
    }
  }
  return `${calendar.toString()}\r\n`;
}

function addStep(calendar: ICalCalendar, { task, start, end, latest, holds }: LaidTask, { chain }: LaidChain, jobName: string, stamp: string): void {
  const { spec } = task.planned;
  const held = holdWords(holds);
  calendar.createEvent({
    id: uidOf(jobName, task.id, 'step'),
    stamp,
    floating: true,
    start: asUtc(start),
    // An event that takes no time at all is drawn by no calendar.
    end: asUtc(Math.max(end, start + 1)),
    summary: unusualLettersOut(spec.name),
    description: unusualLettersOut([
      `${chain.schemeName}: ${chain.panels.join(', ')}`,
      `${spanWords(task.work_min)} at work.`,
      ...(latest === null ? [] : [`Latest start ${dayAndClock(latest)}.`]),
      ...(held === '' ? [] : [`Not sooner because: ${held}.`]),
      ...actsOf(spec.kind).flatMap((act) => ACT_CAUTIONS[act]),
      ESTIMATE_STATEMENT,
    ].join('\n')),
    alarms: [alarm(STEP_ALARM_S, spec.name)],
  });
}

function addWait(calendar: ICalCalendar, laid: LaidTask, { chain }: LaidChain, jobName: string, stamp: string): void {
  const { task, wait } = laid;
  if (wait === null) return;
  const name = `Wait after ${task.planned.spec.name}`;
  calendar.createEvent({
    id: uidOf(jobName, task.id, 'wait'),
    stamp,
    floating: true,
    start: asUtc(wait.from),
    end: asUtc(Math.ceil(wait.until)),
    summary: unusualLettersOut(name),
    description: unusualLettersOut([
      `${chain.schemeName}: ${chain.panels.join(', ')}`,
      `${spanWords(wait.until - wait.from)}: ${waitRuleWords(laid)}.`,
      ...(wait.latest === null ? [] : [`Latest next start ${dayAndClock(wait.latest)}.`]),
      OVERNIGHT_NOTE,
    ].join('\n')),
    transparency: ICalEventTransparency.TRANSPARENT,
    alarms: [alarm(WAIT_ALARM_S, name)],
  });
}

function alarm(before_s: number, words: string) {
  return { type: ICalAlarmType.display, trigger: before_s, description: unusualLettersOut(words) };
}

/** Letters, digits and a few marks only: what an id may hold without quoting. */
function uidOf(jobName: string, taskId: string, what: 'step' | 'wait'): string {
  return `${[jobName, ...taskId.split('/'), what].map((part) => encodeURIComponent(unusualLettersOut(part))).join('.')}@crosscoat`;
}

/** The library writes the UTC fields of a time, which for a floating one are those of the shop's clock: no zone of the machine gets in. */
function asUtc(minute: number): string {
  return `${localTimeOf(minute)}:00Z`;
}
