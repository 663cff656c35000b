import type { JSX } from 'preact';
import { mix, setUp, setUpIndex } from '../../app/document.ts';
import { chooseSetUp, duplicateSetUp, removeSetUp } from '../../app/setUpCommands.ts';
import { state } from '../../app/state.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { NumberField } from '../fields/NumberField.tsx';
import { TextField } from '../fields/TextField.tsx';
import { openSetUps } from '../setups/openSetUps.ts';
import { FanDrawing } from './FanDrawing.tsx';
import { ProfileFields } from './ProfileFields.tsx';
import { usualHint } from './usual.ts';

/** Everything that fixes the fan and what it throws. */
export function GunForm(): JSX.Element {
  const path = ['setUps', setUpIndex.value] as const;
  const { setUps } = state.job.value;
  const gun = setUp.value;
  return (
    <form class="form" onSubmit={(event) => event.preventDefault()}>
      <h2>Gun</h2>
      <ChoiceField
        id="set-up"
        label="Set-up of this coat"
        value={gun.id}
        options={setUps.map(({ id, name }) => [id, name] as const)}
        choose={chooseSetUp}
      />
      <div class="actions">
        <button type="button" onClick={duplicateSetUp}>Copy</button>
        <button type="button" disabled={setUps.length < 2} onClick={removeSetUp}>Remove</button>
      </div>
      <div class="actions">
        <button type="button" onClick={() => void openSetUps({ tab: 'card', setUp: gun.id })}>Prove on a test card</button>
        <button type="button" onClick={() => void openSetUps({ tab: 'beside', setUp: gun.id })}>Compare set-ups</button>
      </div>
      <TextField path={[...path, 'name']} label="Name" />
      {gun.note === undefined ? null : <p class="soft">{gun.note}</p>}
      <h3>Fan on a square panel</h3>
      <NumberField path={[...path, 'fan', 'width_mm']} label="Fan width" hint={usualHint(gun, ['fan', 'width_mm'])} />
      <NumberField path={[...path, 'fan', 'depth_mm']} label="Fan depth" hint={usualHint(gun, ['fan', 'depth_mm'])} />
      <NumberField path={[...path, 'fan', 'atDistance_mm']} label="Read at distance" hint="Width grows and film thins as the gun goes back." />
      <ProfileFields path={[...path, 'fan', 'profile']} profile={gun.fan.profile} width_mm={gun.fan.width_mm} />
      <FanDrawing />
      <h3>Liquid</h3>
      <NumberField path={[...path, 'fluidRate_mL_min']} label="Fluid rate" hint={usualHint(gun, ['fluidRate_mL_min'])} />
      <NumberField path={[...path, 'volumeSolids_percent']} label="Volume solids in the cup" hint={mixSays() ?? usualHint(gun, ['volumeSolids_percent'])} />
      <NumberField path={[...path, 'triggerLag_ms']} label="Trigger to fluid" hint={usualHint(gun, ['triggerLag_ms'])} />
      <h3>Air</h3>
      <NumberField path={[...path, 'capPressure_kPa']} label="Pressure at the cap" hint={`With the trigger held. ${usualHint(gun, ['capPressure_kPa'])}`.trim()} />
      <details class="more">
        <summary>What lands, and the drops</summary>
        <NumberField path={[...path, 'transfer', 'efficiency_percent']} label="Solids that land" hint={usualHint(gun, ['transfer', 'efficiency_percent'])} />
        <NumberField path={[...path, 'transfer', 'atDistance_mm']} label="at distance" />
        <NumberField path={[...path, 'transfer', 'decayLength_mm']} label="Falls to 37 % over" hint={usualHint(gun, ['transfer', 'decayLength_mm'])} />
        <NumberField path={[...path, 'drops', 'meanDiameter_um']} label="Mean drop (Sauter)" hint={usualHint(gun, ['drops', 'meanDiameter_um'])} />
        <NumberField path={[...path, 'drops', 'atViscosity_mPa_s']} label="Mean drop is at viscosity" hint={usualHint(gun, ['drops', 'atViscosity_mPa_s'])} />
        {gun.drops.atPressure_kPa === undefined ? null : <NumberField path={[...path, 'drops', 'atPressure_kPa']} label="and at cap pressure" hint="A weaker gun than this makes coarser drops, the more so of cold liquid." />}
        <NumberField path={[...path, 'drops', 'spread']} label="Spread of drop volume" hint={usualHint(gun, ['drops', 'spread'])} />
        <NumberField path={[...path, 'drops', 'solventSpeed']} label="Thinner's speed" hint={mixSays() ?? `n-butyl acetate is 1. ${usualHint(gun, ['drops', 'solventSpeed'])}`} />
        {gun.fan.origin_mm === undefined ? null : <NumberField path={[...path, 'fan', 'origin_mm']} label="Fan opens from" hint="In front of the nozzle, where its edges would meet; from a test card." />}
        <NumberField path={[...path, 'distanceRange_mm', 0]} label="Fan believed from" />
        <NumberField path={[...path, 'distanceRange_mm', 1]} label="Fan believed to" />
      </details>
    </form>
  );
}

/** Where the coat has a mix, that says what is in the cup, and the set-up's own value waits. */
function mixSays(): string | null {
  return mix.value === null ? null : `Not used: the mix of this coat says it (${mix.value.name}).`;
}
