import type { JSX } from 'preact';
import { afterWords, spreadWords, stepDetails, STEP_KIND_WORDS, waitWords, dryWords, type StepSpec } from '../../../../sim/index.ts';
import { stepChoices } from '../../../app/scheme/schemeCommands.ts';
import { shownScheme } from '../../../app/scheme/scheme.ts';
import { addStep, chooseStep, chosenStep, moveStep } from '../../../app/scheme/stepCommands.ts';
import { coatLetters, findingsOf, plannedStep } from '../../../app/scheme/stepsSheet.ts';
import { state } from '../../../app/state.ts';
import { stepButtonId } from './stepButtonId.ts';
import { StepForm } from './StepForm.tsx';

/** The steps in the order of the work; one of them open, with its fields. */
export function StepList(): JSX.Element {
  const steps = shownScheme.value?.steps ?? [];
  const chosen = chosenStep();
  return (
    <section aria-labelledby="steps-list">
      <h2 id="steps-list">Steps</h2>
      <p class="soft">Press a step to open it. On a step, the arrow keys go up and down, and with Alt they move the step.</p>
      <ol class="scheme-steps-list">
        {steps.map((step, k) => <StepItem key={step.id} step={step} place={k} isOpen={k === chosen} />)}
      </ol>
      <AddStep after={chosen < 0 ? steps.length - 1 : chosen} />
    </section>
  );
}

function StepItem({ step, place, isOpen }: { readonly step: StepSpec; readonly place: number; readonly isOpen: boolean }): JSX.Element {
  const letter = coatLetters.value.get(step.id);
  const found = findingsOf(step.id);
  const mark = found.some(({ severity }) => severity === 'stop') ? 'stop' : found.length > 0 ? 'doubt' : '';
  return (
    <li class={`scheme-steps-item ${isOpen ? 'open' : ''}`}>
      <button type="button" id={stepButtonId(step.id)} class="scheme-steps-open" aria-expanded={isOpen} onClick={() => chooseStep(step.id)} onKeyDown={(event) => turn(event, place)}>
        <span class="scheme-steps-number">{place + 1}</span>
        <span class="scheme-steps-name">{step.name === '' ? 'Unnamed step' : step.name}</span>
        {letter === undefined ? null : <span class="scheme-steps-letter"><span class="hidden-words">coat </span>{letter}</span>}
        {mark === '' ? null : <span class={`scheme-steps-mark ${mark}`}>{mark === 'stop' ? 'Put right' : 'Doubt'}</span>}
      </button>
      <p class="scheme-steps-facts">{factsOf(step)}</p>
      {step.source === undefined || step.source === '' ? null : <p class="soft">{step.source}</p>}
      {isOpen ? <StepForm step={step} place={place} /> : null}
    </li>
  );
}

/** What a step is, what it leaves, when it is dry and how long it waits. */
function factsOf(step: StepSpec): string {
  const units = state.units.value;
  const planned = plannedStep(step.id);
  const coat = planned?.coat ?? null;
  const facts = [STEP_KIND_WORDS[step.kind], ...stepDetails(step, units)];
  if (coat !== null) facts.push(`${spreadWords(coat.dry_m, 'film', units)} dry`, `dry to touch ${dryWords(coat.touchDry_s)}`, `ready for a coat ${dryWords(coat.recoat_s)}`);
  if (planned !== null) facts.push(afterWords(planned, units));
  return [...facts, `wait: ${waitWords(step)}`].join(' · ');
}

function turn(event: KeyboardEvent, place: number): void {
  const by = event.key === 'ArrowUp' ? -1 : event.key === 'ArrowDown' ? 1 : 0;
  if (by === 0) return;
  event.preventDefault();
  const to = event.altKey ? moveStep(place, by) : place + by;
  const id = shownScheme.peek()?.steps[to]?.id;
  if (id !== undefined) requestAnimationFrame(() => document.getElementById(stepButtonId(id))?.focus());
}

function AddStep({ after }: { readonly after: number }): JSX.Element {
  const choices = stepChoices();
  const missing = [...new Set(choices.flatMap(([, why]) => (why === null ? [] : [why])))];
  return (
    <div class="scheme-steps-add">
      <p id="steps-add">Add after step {after + 1}:</p>
      <div class="actions" role="group" aria-labelledby="steps-add">
        {choices.map(([kind, why]) => <button key={kind} type="button" disabled={why !== null} onClick={() => addStep(kind, after)}>{STEP_KIND_WORDS[kind]}</button>)}
      </div>
      {missing.map((text) => <p key={text} class="soft">{text}</p>)}
    </div>
  );
}
