import type { JSX } from 'preact';
import { coat, mix, mixIndex } from '../../app/document.ts';
import { addMix, chooseMix, chooseThinner, removeMix, setInMix, thinnerPointer, thinnerRows, turnCup, turnRetarder, typeThinner } from '../../app/mixCommands.ts';
import { state } from '../../app/state.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { NumberField } from '../fields/NumberField.tsx';
import { TextField } from '../fields/TextField.tsx';
import { TickField } from '../fields/TickField.tsx';
import { BlendRows } from './BlendRows.tsx';
import { CUP_CHOICES, FINISH_CHOICES, SOLVENT_CHOICES, withChosen } from './choices.ts';

/** What is in the cup of the coat in hand. */
export function MixForm(): JSX.Element {
  const { mixes } = state.job.value;
  return (
    <form class="form" onSubmit={(event) => event.preventDefault()}>
      <h2>Mix</h2>
      <ChoiceField
        id="mix"
        label="Mix of this coat"
        value={coat.value.mix ?? ''}
        options={[['', 'None: the set-up says solids and thinner'], ...mixes.map(({ id, name }) => [id, name] as const)]}
        choose={chooseMix}
      />
      <div class="actions">
        <button type="button" onClick={addMix}>{mix.value === null ? 'Add a mix' : 'Copy'}</button>
        <button type="button" disabled={mix.value === null} onClick={removeMix}>Remove</button>
      </div>
      {mix.value === null ? <p class="soft">Without a mix, clear dope thinned to the set-up's volume solids stands in.</p> : <MixFields />}
    </form>
  );
}

function MixFields(): JSX.Element | null {
  const spec = mix.value;
  if (spec === null) return null;
  const path = ['mixes', mixIndex.value] as const;
  return (
    <>
      <TextField path={[...path, 'name']} label="Name" />
      <ChoiceField
        id="finish"
        label="Finish"
        value={spec.finish}
        options={withChosen(FINISH_CHOICES, spec.finish)}
        choose={(id) => setInMix('Finish', ['finish'], id)}
        hint="Of its kind, no maker's product: the maker's data sheet goes before it."
      />
      <NumberField path={[...path, 'thinnerPerFinish']} label="Thinner to one of finish" hint="By volume, retarder included: 1 is half and half, 0.5 is one to two." />
      <BlendRows pointer={thinnerPointer()} rows={thinnerRows()} solvents={SOLVENT_CHOICES} type={typeThinner} choose={chooseThinner} />
      <TickField label="Retarder" hint="A slow solvent in place of some thinner, against blush." on={spec.retarder !== undefined} turn={turnRetarder} />
      {spec.retarder === undefined ? null : (
        <>
          <ChoiceField
            id="retarder"
            label="Retarder is"
            value={spec.retarder.solvent}
            options={withChosen(SOLVENT_CHOICES, spec.retarder.solvent)}
            choose={(id) => setInMix('Retarder', ['retarder', 'solvent'], id)}
          />
          <NumberField path={[...path, 'retarder', 'percent']} label="Share of the thinner" hint="By volume; common practice is 5 to 15 %." />
        </>
      )}
      <TickField label="Cup reading" hint="Taken of the mix as it goes into the cup of the gun; it then says the viscosity." on={spec.cup !== undefined} turn={turnCup} />
      {spec.cup === undefined ? null : (
        <>
          <ChoiceField id="cup" label="Cup" value={spec.cup.kind} options={withChosen(CUP_CHOICES, spec.cup.kind)} choose={(id) => setInMix('Cup', ['cup', 'kind'], id)} />
          <NumberField path={[...path, 'cup', 'seconds']} label="To the first break of the stream" hint="Replace by what your watch said." />
          <NumberField path={[...path, 'cup', 'temperature_C']} label="Temperature of the liquid" />
        </>
      )}
    </>
  );
}
