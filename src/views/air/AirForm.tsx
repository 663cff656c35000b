import type { JSX } from 'preact';
import { USUAL_AIR, shown } from '../../../sim/index.ts';
import { state } from '../../app/state.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { openScheme } from '../scheme/openScheme.ts';

/** The air of the room in which the coat is laid and dries. */
export function AirForm(): JSX.Element {
  return (
    <form class="form" onSubmit={(event) => event.preventDefault()}>
      <h2>Air</h2>
      <p class="soft">Read where the part hangs, shortly before spraying.</p>
      <NumberField path={['air', 'temperature_C']} label="Temperature" />
      <NumberField path={['air', 'humidity_percent']} label="Relative humidity" />
      <NumberField path={['air', 'speed_m_s']} label="Air speed over the panel" hint={`${shown(USUAL_AIR.speed_m_s, 'speed', state.units.value)} is a slow draught in a room; a booth moves faster air.`} />
      <div class="actions"><button type="button" onClick={() => void openScheme({ tab: 'air' })}>May I spray in this air?</button></div>
      <h3>The place</h3>
      <NumberField path={['air', 'altitude_m']} label="Height above the sea" hint="Fixes the pressure: the higher, the faster solvent leaves." />
      <NumberField path={['air', 'ceiling_C']} label="Warmest room to be advised" hint="No cure asks for a warmer room than this." />
    </form>
  );
}
