import type { JSX } from 'preact';
import { setInCoat } from '../../app/coatCommands.ts';
import { coat, coatIndex } from '../../app/document.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { NumberField } from '../fields/NumberField.tsx';

/** What the coat should be, and where the faults begin. */
export function TargetFields(): JSX.Element {
  const path = ['coats', coatIndex.value, 'target'] as const;
  const { film } = coat.value.target;
  return (
    <>
      <h3>Target</h3>
      <ChoiceField
        id="target-film"
        label="Film meant"
        value={film}
        options={[['wet', 'Wet, as sprayed'], ['dry', 'Dry, solids only']]}
        choose={(next) => setInCoat('Film meant', ['target', 'film'], next)}
      />
      <NumberField path={[...path, 'thickness_um']} label={`Target, ${film}, whole coat`} />
      <details class="more">
        <summary>Limits</summary>
        <NumberField path={[...path, 'min_percent']} label="Thin lap below" hint="Of the target." />
        <NumberField path={[...path, 'max_percent']} label="Heavy spot above" hint="Of the target." />
        <NumberField path={[...path, 'holiday_percent']} label="Holiday below" hint="Of the target." />
        <NumberField path={[...path, 'dry_percent']} label="Dry spray above" hint="Share of the film there that arrived dry." />
      </details>
    </>
  );
}
