import type { JSX } from 'preact';
import { FIX_WORDS, LEAVING_OUT, schemeFindingWords, SEVERITY_WORDS, stepReason, type StepSpec } from '../../../../sim/index.ts';
import type { JobPath } from '../../../app/path.ts';
import { schemeIndex, shownScheme } from '../../../app/scheme/scheme.ts';
import { duplicateStep, moveStep, removeStep, setInStep } from '../../../app/scheme/stepCommands.ts';
import { findingsOf, plannedStep } from '../../../app/scheme/stepsSheet.ts';
import { state } from '../../../app/state.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { NumberField } from '../../fields/NumberField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { TickField } from '../../fields/TickField.tsx';
import { CoatFields } from './CoatFields.tsx';
import { KeepOffField } from './KeepOffField.tsx';

export interface StepFormProps<Step extends StepSpec = StepSpec> {
  readonly step: Step;
  readonly place: number;
}

/** The fields of the open step, why it is there, what is said against it, and what can be done with it. */
export function StepForm({ step, place }: StepFormProps): JSX.Element {
  const path: JobPath = ['schemes', schemeIndex.value, 'steps', place];
  const isCoat = step.kind === 'brush' || step.kind === 'spray';
  return (
    <div class="scheme-steps-form">
      {findingsOf(step.id).map((finding) => {
        const { title, found, act } = schemeFindingWords(finding, state.units.value);
        return <p key={finding.rule} class={`scheme-steps-note ${finding.severity}`}><strong>{SEVERITY_WORDS[finding.severity]}: {title}.</strong> {found} {act}</p>;
      })}
      <p>{isCoat ? 'Why this coat is there: ' : 'Why this step is there: '}{stepReason(step)}{isCoat ? ` ${LEAVING_OUT}` : ''}</p>
      <div class="scheme-steps-fields">
        <TextField path={[...path, 'name']} label="Name of the step" />
        {isCoat ? <CoatFields step={step} place={place} path={path} /> : <OtherFields step={step} place={place} path={path} />}
        <NumberField path={[...path, 'wait_h']} label="Wait after it, at 70 °F" hint="Least time to the next step." />
        <OptionalNumber step={step} place={place} path={path} name="latest_h" label="Latest start of the next step after it" tick="The next step has a latest start" usual={Math.max(24, 2 * step.wait_h)} />
        <OptionalNumber step={step} place={place} path={path} name="work_min" label="Time at work" tick="State the time at work" usual={30} />
        <TextField path={[...path, 'source']} label="Whose advice" />
        <TextField path={[...path, 'note']} label="Remark" />
      </div>
      <Origins step={step} />
      <StepActions step={step} place={place} />
    </div>
  );
}

type FieldsProps = StepFormProps & { readonly path: JobPath };

function OtherFields({ step, place, path }: FieldsProps): JSX.Element | null {
  switch (step.kind) {
    case 'fix':
      return (
        <>
          <ChoiceField id={`fix-${step.id}`} label="What is set on" value={step.what} options={Object.entries(FIX_WORDS) as [typeof step.what, string][]} choose={(what) => setInStep('What is set on', place, 'what', what)} />
          <OptionalNumber step={step} place={place} path={path} name="weight_g" label="Weight of it all" tick="State its weight" usual={50} />
          <OptionalNumber step={step} place={place} path={path} name="width_mm" label="Width of the tape" tick="State its width" usual={50.8} />
          <OptionalNumber step={step} place={place} path={path} name="length_mm" label="Length in all" tick="State its length" usual={1000} />
          <OptionalNumber step={step} place={place} path={path} name="count" label="How many" tick="State how many" usual={1} />
        </>
      );
    case 'sand':
      return (
        <>
          <NumberField path={[...path, 'grit']} label="Grit of the paper" />
          <TickField label="Sanded wet" on={step.wet} turn={(on) => setInStep('Wet or dry', place, 'wet', on)} />
          <NumberField path={[...path, 'removes_um']} label="Dry film that it takes off" />
          <KeepOffField step={step} place={place} />
          <p class="scheme-steps-note">Earth the frame before you sand or wipe: dry rubbing charges it.</p>
        </>
      );
    case 'mask':
      return (
        <>
          <NumberField path={[...path, 'share_percent']} label="Share of the area left open" />
          <OptionalNumber step={step} place={place} path={path} name="edge_mm" label="Length of the edge" tick="State the length of the edge" usual={1000} />
        </>
      );
    // Coats have fields of their own, and pulling tape has none.
    case 'brush':
    case 'spray':
    case 'unmask': return null;
  }
}

interface OptionalNumberProps extends FieldsProps {
  readonly name: string;
  readonly label: string;
  readonly tick: string;
  readonly usual: number;
}

/** A number that a step may leave unsaid. */
export function OptionalNumber({ step, place, path, name, label, tick, usual }: OptionalNumberProps): JSX.Element {
  const isGiven = (step as unknown as Record<string, unknown>)[name] !== undefined;
  return (
    <div class="scheme-steps-optional">
      <TickField label={tick} on={isGiven} turn={(on) => setInStep(label, place, name, on ? usual : undefined)} />
      {isGiven ? <NumberField path={[...path, name]} label={label} /> : null}
    </div>
  );
}

/** How film and drying of a coat are known, on demand. */
function Origins({ step }: { readonly step: StepSpec }): JSX.Element | null {
  const planned = plannedStep(step.id);
  if (planned === null) return null;
  const { coat } = planned;
  return (
    <details>
      <summary>Where its figures come from</summary>
      <ul>
        {coat === null ? null : <li>Film: {coat.filmOrigin.words}. Weight: dry film times the density of the solids, {Math.round(coat.mix.finish.solidsDensity_kg_m3.value)} kg/m³ ({coat.mix.finish.solidsDensity_kg_m3.source}).</li>}
        {coat === null ? null : <li>Drying: {coat.dryOrigin.words}.</li>}
        <li>Time at work: {planned.workOrigin.words}.</li>
        <li>Wait, source and remark: typed, or from the preset that the scheme began with.</li>
      </ul>
    </details>
  );
}

function StepActions({ step, place }: StepFormProps): JSX.Element {
  const count = shownScheme.value?.steps.length ?? 0;
  return (
    <div class="actions">
      <button type="button" disabled={place === 0} onClick={() => moveStep(place, -1)}>Move up</button>
      <button type="button" disabled={place === count - 1} onClick={() => moveStep(place, 1)}>Move down</button>
      <button type="button" onClick={() => duplicateStep(place)}>Copy</button>
      <button type="button" disabled={count < 2} aria-label={`Remove step ${place + 1}, ${step.name}`} onClick={() => removeStep(place)}>Remove</button>
    </div>
  );
}
