import type { JSX } from 'preact';
import type { JobPath } from '../../../app/path.ts';
import { freePanels, panelInUse, removeScheme, turnPanel } from '../../../app/scheme/schemeCommands.ts';
import { schemeIndex, shownScheme } from '../../../app/scheme/scheme.ts';
import { setInScheme } from '../../../app/scheme/stepCommands.ts';
import { state } from '../../../app/state.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { NumberField } from '../../fields/NumberField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { TickField } from '../../fields/TickField.tsx';

/** Film and weight that a limit begins with; the reader types their own from the data sheet. */
const USUAL_LIMITS = { most_um: 250, most_g_m2: 330 } as const;

/** What the scheme is laid on, and its limits. */
export function SchemeFields(): JSX.Element | null {
  const scheme = shownScheme.value;
  if (scheme === null) return null;
  const path: JobPath = ['schemes', schemeIndex.value];
  const limit = (key: keyof typeof USUAL_LIMITS, tick: string, label: string): JSX.Element => (
    <div class="scheme-steps-optional">
      <TickField label={tick} on={scheme[key] !== undefined} turn={(on) => setInScheme(label, key, on ? USUAL_LIMITS[key] : undefined)} />
      {scheme[key] === undefined ? null : <NumberField path={[...path, key]} label={label} hint="From the data sheet, or from whoever answers for weight and balance." />}
    </div>
  );
  return (
    <details class="scheme-steps-fold">
      <summary>Panels, sides and limits of the scheme</summary>
      <div class="scheme-steps-fields">
        <TextField path={[...path, 'name']} label="Name of the scheme" />
        <TextField path={[...path, 'source']} label="Whose scheme it is" />
        <PanelTicks />
        <ChoiceField id="scheme-sides" label="Sides" value={String(scheme.sides)} options={[['1', 'one side'], ['2', 'both sides alike']]} choose={(sides) => setInScheme('Sides', 'sides', Number(sides))} />
        <NumberField path={[...path, 'clearCoats']} label="Fewest clear coats" hint="0 where the part is not doped fabric: the circular’s rules for fabric are then not asked." />
        {limit('most_um', 'There is a limit on film', 'Most dry film in all')}
        {limit('most_g_m2', 'There is a limit on weight', 'Most weight added')}
      </div>
      <button type="button" onClick={removeScheme}>Remove this scheme</button>
    </details>
  );
}

function PanelTicks(): JSX.Element {
  const panels = shownScheme.value?.panels ?? [];
  const offered = new Set([...panels, ...freePanels(state.job.value)]);
  return (
    <fieldset class="group">
      <legend>Panels</legend>
      {state.job.value.part.panels.filter(({ id }) => offered.has(id)).map(({ id, name }) => {
        const isOn = panels.includes(id);
        const isFixed = isOn && (panels.length === 1 || panelInUse(id));
        return isFixed
          ? <p key={id}>{name}: {panels.length === 1 ? 'the only one' : 'a sprayed step is planned on it'}</p>
          : <TickField key={id} label={name} on={isOn} turn={(on) => turnPanel(id, on)} />;
      })}
    </fieldset>
  );
}
