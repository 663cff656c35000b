import type { JSX } from 'preact';
import { counted, schemeProgress, STEP_KIND_WORDS, STEP_STATE_WORDS, waitWords, type SchemeSpec, type StepProgress } from '../../../../sim/index.ts';
import { beginEntry, chooseEntry } from '../../../app/log/logCommands.ts';
import { state } from '../../../app/state.ts';

/** The schemes' steps with how far they are; the next one stands first, with one large button. */
export function PlannedSteps(): JSX.Element {
  const { schemes = [] } = state.job.value;
  return (
    <section aria-labelledby="log-planned" class="log-entries-planned">
      <h2 id="log-planned">What is planned</h2>
      {schemes.length === 0 ? <p>This job has no scheme. Begin from a coat, or with something else.</p> : null}
      {schemes.map((scheme) => <Planned key={scheme.id} scheme={scheme} />)}
      <BeginOther />
    </section>
  );
}

function Planned({ scheme }: { readonly scheme: SchemeSpec }): JSX.Element {
  const progress = schemeProgress(scheme, state.job.value.log ?? []);
  const next = progress.find(({ state: how }) => how !== 'done');
  const done = progress.filter(({ state: how }) => how === 'done').length;
  return (
    <div class="log-entries-scheme">
      <p data-testid={`log-progress-${scheme.id}`}>{scheme.name}: {done} of {counted(progress.length, 'step')} done.</p>
      {next === undefined ? <p>Every step of it is noted as done.</p> : <Next scheme={scheme} next={next} number={progress.indexOf(next) + 1} before={progress[progress.indexOf(next) - 1]} />}
      <details class="log-entries-more">
        <summary>All steps</summary>
        <ol class="log-entries-steps">
          {progress.map(({ step, state: how, entries }) => (
            <li key={step.id} class={how}>
              <span class="log-entries-mark">{STEP_STATE_WORDS[how]}</span>
              <span>{step.name}</span>
              {entries.length > 0
                ? entries.map(({ id }, k) => <button key={id} type="button" aria-label={`Open entry ${k + 1} of ${step.name}`} onClick={() => openAt(id)}>Open</button>)
                : <button type="button" disabled={!hasWriter()} aria-label={`Begin ${step.name}`} onClick={() => begin(scheme, step.id)}>Begin</button>}
            </li>
          ))}
        </ol>
      </details>
    </div>
  );
}

function Next({ scheme, next, number, before }: { readonly scheme: SchemeSpec; readonly next: StepProgress; readonly number: number; readonly before: StepProgress | undefined }): JSX.Element {
  const { step, state: how, entries } = next;
  const open = entries.at(-1);
  return (
    <div class="log-entries-next">
      <p class="log-entries-next-name">{how === 'under-way' ? 'Under way' : 'Next'}: step {number}, {step.name}</p>
      <p>{STEP_KIND_WORDS[step.kind]}.{before === undefined ? '' : ` After “${before.step.name}”: ${waitWords(before.step)}.`}</p>
      {how === 'under-way' && open !== undefined
        ? <button type="button" class="act" onClick={() => openAt(open.id)}>Go on with it</button>
        : <button type="button" class="act" disabled={!hasWriter()} onClick={() => begin(scheme, step.id)}>Begin it now</button>}
      {hasWriter() ? null : <p class="soft">Say who writes first.</p>}
    </div>
  );
}

/** From a coat without a step, or from nothing. */
function BeginOther(): JSX.Element {
  const { coats } = state.job.value;
  const beginCoat = (select: HTMLSelectElement): void => {
    const coat = coats.find(({ id }) => id === select.value);
    select.value = '';
    if (coat !== undefined) beginEntry(`Begin ${coat.name}`, { coat: coat.id });
  };
  return (
    <details class="log-entries-more">
      <summary>Begin something else</summary>
      <div class="field field-wide">
        <label for="log-begin-coat">A coat of this job</label>
        <select id="log-begin-coat" value="" disabled={!hasWriter()} onChange={(event) => beginCoat(event.currentTarget)}>
          <option value="">Choose a coat…</option>
          {coats.map(({ id, name }) => <option key={id} value={id}>{name}</option>)}
        </select>
      </div>
      <button type="button" disabled={!hasWriter()} onClick={() => beginEntry('Begin an entry', {})}>Begin a blank entry</button>
    </details>
  );
}

function hasWriter(): boolean {
  return state.log.value.who.trim() !== '';
}

/** The scheme's panels tell it from another one with a step of the same name. */
function begin({ panels }: SchemeSpec, step: string): void {
  beginEntry('Begin a step', { step, panels });
}

function openAt(id: string): void {
  if (state.log.peek().entry !== id) chooseEntry(id);
}
