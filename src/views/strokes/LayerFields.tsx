import type { JSX } from 'preact';
import { chooseOver, coatsBeneath } from '../../app/coatCommands.ts';
import { coat, coatIndex } from '../../app/document.ts';
import { chooseMix } from '../../app/mixCommands.ts';
import { state } from '../../app/state.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { NumberField } from '../fields/NumberField.tsx';

/** What the coat is made of, and what it is laid on. */
export function LayerFields(): JSX.Element {
  const { coats, mixes } = state.job.value;
  const { mix, over } = coat.value;
  return (
    <>
      <ChoiceField
        id="coat-mix"
        label="Mix in the cup"
        value={mix ?? ''}
        options={[['', 'None: the set-up says solids'], ...mixes.map(({ id, name }) => [id, name] as const)]}
        choose={chooseMix}
      />
      <ChoiceField
        id="coat-over"
        label="Laid on"
        value={over?.coat ?? ''}
        options={[['', 'The bare panel'], ...coatsBeneath(coats, coat.value).map(({ id, name }) => [id, `Coat: ${name}`] as const)]}
        choose={chooseOver}
      />
      {over === undefined ? null : (
        <NumberField path={['coats', coatIndex.value, 'over', 'wait_min']} label="Wait before this coat" hint="From the end of the coat beneath; what solvent it still holds, softens both." />
      )}
    </>
  );
}
