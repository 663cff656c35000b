import type { JSX } from 'preact';
import { shown, shownPercent, type HandSpec } from '../../../sim/index.ts';
import { setInCoat } from '../../app/coatCommands.ts';
import { coat, coatIndex, setUp } from '../../app/document.ts';
import { state } from '../../app/state.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { NumberField } from '../fields/NumberField.tsx';
import { TextField } from '../fields/TextField.tsx';
import { TickField } from '../fields/TickField.tsx';
import { LayerFields } from './LayerFields.tsx';
import { RecordingFields } from './RecordingFields.tsx';
import { TargetFields } from './TargetFields.tsx';

const HANDS = [
  ['steady', 'Steady: exactly as planned'],
  ['practised', 'Practised: wanders a little'],
  ['beginner', 'Beginner: wanders a lot'],
] as const;

/** How the gun is to run over the panel, and what the coat should be. */
export function StrokesForm(): JSX.Element {
  const path = ['coats', coatIndex.value] as const;
  const plan = [...path, 'plan'] as const;
  const spec = coat.value;
  const isRecorded = spec.recording !== undefined;
  return (
    <form class="form" onSubmit={(event) => event.preventDefault()}>
      <h2>Strokes</h2>
      <TextField path={[...path, 'name']} label="Coat" />
      <LayerFields />
      <RecordingFields />
      <h3>{isRecorded ? 'What was meant' : 'Plan'}</h3>
      <NumberField path={[...plan, 'overlap_percent']} label="Overlap" hint={overlapHint()} />
      <NumberField path={[...plan, 'speed_m_s']} label="Speed of the gun" />
      <NumberField path={[...plan, 'distance_mm']} label="Gun to panel" />
      <NumberField path={[...plan, 'direction_deg']} label="Direction" hint="0 is along the panel, 90 is up it." />
      <TickField
        label="Cross coat"
        hint="A second pass at right angles, before the first has flashed off."
        on={spec.plan.cross}
        turn={(on) => setInCoat('Cross coat', ['plan', 'cross'], on)}
      />
      <details class="more">
        <summary>Order, edges and trigger</summary>
        <ChoiceField
          id="order"
          label="Order"
          value={spec.plan.order}
          options={[['serpentine', 'To and fro'], ['one-way', 'All one way']]}
          choose={(order) => setInCoat('Order of strokes', ['plan', 'order'], order)}
        />
        <NumberField path={[...plan, 'firstStroke_mm']} label="First stroke in from the edge" hint="0 aims at the edge itself." />
        <NumberField path={[...plan, 'lead_mm']} label="Fluid on before the edge" />
        <NumberField path={[...plan, 'lag_mm']} label="Fluid off past the edge" />
      </details>
      {isRecorded ? null : (
        <>
          <ChoiceField
            id="hand"
            label="Hand"
            value={spec.hand.kind}
            options={handOptions(spec.hand)}
            choose={(kind) => {
              // An own hand comes from its own sessions, and is in the list only where the coat has it already.
              if (kind !== 'own') setInCoat('Hand', ['hand'], { kind });
            }}
            hint={handHint(spec.hand)}
          />
          {spec.hand.kind === 'steady' ? null : <NumberField path={['seed']} label="Seed" hint="Another seed is another day." />}
        </>
      )}
      <TargetFields />
    </form>
  );
}

/** The usual hands, and the coat's own where it has one. */
function handOptions(hand: HandSpec): readonly (readonly [HandSpec['kind'], string])[] {
  return hand.kind === 'own' ? [...HANDS, ['own', `${hand.name}: as measured`]] : HANDS;
}

function handHint(hand: HandSpec): string {
  if (hand.kind === 'steady') return 'No hand is that steady; try the others to see the slack.';
  if (hand.kind !== 'own') return 'Wanders in speed, distance, aim and angle; the seed fixes how.';
  const length = (mm: number): string => shown(mm / 1000, 'length', state.units.value);
  return `Wanders by up to ${length(hand.distance_mm)} in distance, ${length(hand.across_mm)} in aim and ${shownPercent(hand.speed_percent / 100)} in speed; the seed fixes how. Undo brings it back after another choice.`;
}

/** The overlap as a length, and the step from stroke to stroke. */
function overlapHint(): string {
  const { fan } = setUp.value;
  const { overlap_percent, distance_mm } = coat.value.plan;
  const width_m = (fan.width_mm / 1000) * (distance_mm / fan.atDistance_mm);
  const length = (share: number): string => shown(share * width_m, 'length', state.units.value);
  const share = overlap_percent / 100;
  return `${length(share)} of the ${length(1)} fan; step ${length(1 - share)} to the next stroke.`;
}
