import type { JSX } from 'preact';
import { chooseBeside, chosenSetUps, MOST_BESIDE } from '../../app/setups/besideSheet.ts';
import { state } from '../../app/state.ts';
import { TickField } from '../fields/TickField.tsx';

/** The set-ups that the sheets with several of them show. */
export function SetUpTicks(): JSX.Element {
  return (
    <fieldset class="group">
      <legend>Set-ups, {MOST_BESIDE} at most</legend>
      {state.job.value.setUps.map(({ id, name }) => (
        <TickField key={id} label={name} on={chosenSetUps.value.includes(id)} turn={(on) => chooseBeside(id, on)} />
      ))}
    </fieldset>
  );
}
