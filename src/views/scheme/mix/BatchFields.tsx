import type { JSX } from 'preact';
import { askMix, stepMixedFor, stepsOfMix } from '../../../app/scheme/mixSheet.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { MixNumber } from './MixNumber.tsx';

/** What is mixed for: a coat of the scheme with the liquid that the plan gives it, or an area and a film. */
export function BatchFields(): JSX.Element {
  const step = stepMixedFor.value;
  const choices = [...stepsOfMix.value.map(({ spec }) => [spec.id, spec.name] as const), ['own', 'An area and a film'] as const];
  return (
    <form class="form" onSubmit={(event) => event.preventDefault()}>
      <ChoiceField id="mix-step" label="Mixed for" value={step?.spec.id ?? 'own'} options={choices} choose={(next) => askMix({ step: next })} {...(step === null ? {} : { hint: 'The plan’s own liquid for this coat, at the ratio that the job states, with its spread.' })} />
      {step !== null ? null : (
        <>
          <MixNumber name="area_m2" label="Area" />
          <MixNumber name="dry_um" label="Dry film of one coat" />
          <MixNumber name="coats" label="Coats mixed for" isWhole />
          <MixNumber name="landed_percent" label="Lands on the part" hint="Assumed 65 %: a low-pressure gun on a broad panel; 50 to 80 % is usual." />
        </>
      )}
      <MixNumber name="left_mL" label="Stays in pot and hose" />
      <MixNumber name="pot_mL" label="Pot is filled to at most" hint="Leave room for stirring." />
    </form>
  );
}
