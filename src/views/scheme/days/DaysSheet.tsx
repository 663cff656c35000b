import './days.css';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { counted, dayAndClock, DAYS_NOTE, daysAirNote, findingWords, MINUTES_PER_DAY, OVERNIGHT_NOTE, readySentence, shiftSentence, spanWords, unplacedWords, type DayPlan, type LaidTask } from '../../../../sim/index.ts';
import { dayPlan, dayProblem, daysSheet, followDays, saveCalendar } from '../../../app/scheme/daysSheet.ts';
import { schemePlan } from '../../../app/scheme/schemePlan.ts';
import { shownScheme } from '../../../app/scheme/scheme.ts';
import { state } from '../../../app/state.ts';
import { DaysBar } from './DaysBar.tsx';
import { DaysTable } from './DaysTable.tsx';
import { WaitWorkings } from './WaitWorkings.tsx';
import { WorkingForm } from './WorkingForm.tsx';

/** Farther off than this nobody counts hours, min. */
const MOST_COUNTED_min = 3 * MINUTES_PER_DAY;

/** All schemes of the job laid through the days: when each step begins, what is waited for, when all is ready. */
export function DaysSheet(): JSX.Element {
  useEffect(followDays, []);
  const plan = dayPlan.value;
  const problem = dayProblem.value;
  if (shownScheme.value === null) return <p>No scheme yet: begin one on the sheet Steps, and its days stand here.</p>;
  const isWorking = schemePlan.working.value || daysSheet.working.value;
  return (
    <section class="scheme-days" aria-labelledby="days-head">
      <h2 id="days-head">Days</h2>
      <p role="status" class="soft">{isWorking ? 'Working out the schemes…' : ''}</p>
      {problem === null ? null : <p role="alert"><strong>{problem.title}.</strong> {problem.text}</p>}
      {plan === null ? null : <p class="sentence" data-testid="days-ready" aria-live="polite">{readySentence(plan)} {shiftSentence(plan)}</p>}
      <WorkingForm />
      {plan === null ? null : <Laid plan={plan} />}
    </section>
  );
}

function Laid({ plan }: { readonly plan: DayPlan }): JSX.Element {
  return (
    <>
      <div class="actions">
        <button type="button" class="act" onClick={() => void saveCalendar()}>Save as a calendar (.ics)</button>
        {plan.late.size === 0 ? null : <button type="button" onClick={() => (daysSheet.late.value = new Map())}>All as planned again</button>}
      </div>
      <Doubts plan={plan} />
      <figure>
        <figcaption>Numbered blocks: work, by the numbers of the tables below. Hatched: a wait. Grey: out of working hours. The line under a bar: whether that scheme’s next coat, or tape set in wet dope, could go on in that hour (go a thin line, care dashed, wait thick).</figcaption>
        <DaysBar plan={plan} />
      </figure>
      <CountDown plan={plan} />
      {plan.timeline.chains.map((chain) => <DaysTable key={chain.chain.schemeId} chain={chain} plan={plan} />)}
      <h3>How each wait comes about</h3>
      {plan.timeline.chains.map((chain) => <WaitWorkings key={chain.chain.schemeId} chain={chain} plan={plan} />)}
      <p><strong>{OVERNIGHT_NOTE}</strong></p>
      <details class="more">
        <summary>How the days come about, and what they leave out</summary>
        <p>{daysAirNote(plan)} {DAYS_NOTE}</p>
      </details>
    </>
  );
}

function Doubts({ plan }: { readonly plan: DayPlan }): JSX.Element | null {
  const units = state.units.value;
  const texts = [...plan.timeline.chains.flatMap((chain) => unplacedWords(chain) ?? []), ...plan.findings.map((finding) => findingWords(finding, units))];
  if (texts.length === 0 && plan.air === 'typed') return null;
  return (
    <section class="doubts" aria-labelledby="days-doubts">
      <h3 id="days-doubts">Look at</h3>
      <ul>{[...texts, ...(plan.air === 'typed' ? [] : [daysAirNote(plan)])].map((text) => <li key={text}>{text}</li>)}</ul>
    </section>
  );
}

/** Earliest and latest start of the step after the chosen one, counted down by this machine's clock. */
function CountDown({ plan }: { readonly plan: DayPlan }): JSX.Element | null {
  const found = plan.timeline.chains.flatMap(({ laid }) => laid.map((each, k) => [each, laid[k + 1]] as const)).find(([{ task }]) => task.id === daysSheet.chosen.value);
  if (found === undefined) return null;
  const [laid, next] = found;
  return (
    <p class="scheme-days-count" role="status">
      <strong>{next === undefined ? 'All waits are over' : `Earliest next step, “${next.task.planned.spec.name}”,`} {dayAndClock(Math.ceil(laid.wait?.until ?? laid.end))}: {untilWords(laid, daysSheet.now.value)}.</strong>
      {laid.wait === null || laid.wait.latest === null ? ' No latest start is stated.' : ` Latest ${dayAndClock(Math.floor(laid.wait.latest))}.`}
      {' '}By this machine’s clock, if “{laid.task.planned.spec.name}” ended as planned.
    </p>
  );
}

function untilWords(laid: LaidTask, now: number): string {
  const left = Math.ceil((laid.wait?.until ?? laid.end) - now);
  const span = Math.abs(left) < MOST_COUNTED_min ? spanWords(Math.abs(left)) : counted(Math.round(Math.abs(left) / MINUTES_PER_DAY), 'day');
  return left > 0 ? `in ${span}` : `${span} ago`;
}
