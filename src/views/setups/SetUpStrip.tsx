import type { JSX } from 'preact';
import { shownPercent } from '../../../sim/index.ts';
import { chooseCoat } from '../../app/chooseCoat.ts';
import { coat, mix, panel } from '../../app/document.ts';
import { chooseSetUp } from '../../app/setUpCommands.ts';
import { isOther, lookAt, shownSetUp } from '../../app/setups/setUps.ts';
import { state } from '../../app/state.ts';
import { typedText, unitOfKey } from '../../app/units.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { SprayCaution } from '../frame/SprayCaution.tsx';

/** What every sheet is about: a coat, a set-up, what is in the cup and the air of the room. */
export function SetUpStrip(): JSX.Element {
  const { coats, setUps } = state.job.value;
  return (
    <section class="setups-strip" aria-label="What is looked at">
      <div class="setups-chosen">
        <ChoiceField
          id="setups-coat"
          label="Coat"
          value={coat.value.id}
          options={coats.map(({ id, name }) => [id, name] as const)}
          choose={chooseCoat}
        />
        <ChoiceField
          id="setups-set-up"
          label="Set-up"
          value={shownSetUp.value.id}
          options={setUps.map(({ id, name }) => [id, name] as const)}
          choose={(setUp) => lookAt({ setUp })}
        />
        <Around />
      </div>
      {isOther.value ? <Other /> : null}
      <SprayCaution />
    </section>
  );
}

/** Panel, cup and air in words. */
function Around(): JSX.Element {
  const { air } = state.job.value;
  const units = state.units.value;
  const temperature = `${typedText(air.temperature_C, 'temperature_C', units)} ${unitOfKey('temperature_C', units)}`;
  return (
    <p class="setups-around">
      {panel.value.name}. In the cup: {mix.value?.name ?? 'as the set-up says'}. Air {temperature}, {shownPercent(air.humidity_percent / 100)} RH.
    </p>
  );
}

/** The coat sprays with another set-up: said, and changed by one button. */
function Other(): JSX.Element {
  const coats = state.job.value.setUps.find(({ id }) => id === coat.value.setUp);
  return (
    <div class="setups-other">
      <p>This coat sprays with {coats?.name ?? 'another set-up'}.</p>
      <button type="button" onClick={() => chooseSetUp(shownSetUp.value.id)}>Spray it with {shownSetUp.value.name}</button>
    </div>
  );
}
