import type { JSX } from 'preact';
import type { StepSpec } from '../../../../sim/index.ts';
import { setInStep } from '../../../app/scheme/stepCommands.ts';
import { TickField } from '../../fields/TickField.tsx';

type SandStep = Extract<StepSpec, { readonly kind: 'sand' }>;

/** Places that stand proud, by their usual names. */
const PLACES = ['rib lacing', 'tape edges', 'screw heads', 'sharp edges'] as const;

/** Where not to sand: a tick for each usual place. Others that the file names stay as they are. */
export function KeepOffField({ step, place }: { readonly step: SandStep; readonly place: number }): JSX.Element {
  const others = step.keepOff.filter((text) => !(PLACES as readonly string[]).includes(text));
  const turn = (name: string, on: boolean): void =>
    setInStep('Where not to sand', place, 'keepOff', on ? [...step.keepOff, name] : step.keepOff.filter((text) => text !== name));
  return (
    <fieldset class="group">
      <legend>Keep off</legend>
      {PLACES.map((name) => <TickField key={name} label={name} on={step.keepOff.includes(name)} turn={(on) => turn(name, on)} />)}
      {others.length === 0 ? null : <p>And: {others.join(', ')}.</p>}
    </fieldset>
  );
}
