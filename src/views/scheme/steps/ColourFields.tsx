import type { JSX } from 'preact';
import type { ColourSpec } from '../../../../sim/index.ts';
import { addColour, removeColour } from '../../../app/scheme/schemeCommands.ts';
import { changeJob } from '../../../app/document.ts';
import { withValueAt } from '../../../app/path.ts';
import { state } from '../../../app/state.ts';
import { NumberField } from '../../fields/NumberField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { TickField } from '../../fields/TickField.tsx';

/** The colours as far as hiding is concerned. */
export function ColourFields(): JSX.Element {
  const { colours = [] } = state.job.value;
  return (
    <details class="scheme-steps-fold">
      <summary>Colours: {colours.length === 0 ? 'none stated' : colours.map(({ name }) => name).join(', ')}</summary>
      <p>What a colour hides follows from two numbers: the light that a thick film of it throws back, and how strongly its pigment scatters. Read the first against a grey scale; the second from a draw-down over black and white, or begin with 100 1/mm for a good white, 20 to 40 for a dark colour (assumed).</p>
      <div class="scheme-steps-colours">
        {colours.map((colour, k) => <Colour key={colour.id} colour={colour} place={k} />)}
      </div>
      <button type="button" onClick={addColour}>Add a colour</button>
    </details>
  );
}

function Colour({ colour, place }: { readonly colour: ColourSpec; readonly place: number }): JSX.Element {
  return (
    <fieldset class="group">
      <legend>{colour.name === '' ? 'Unnamed colour' : colour.name}</legend>
      <TextField path={['colours', place, 'name']} label="Name of the colour" />
      <NumberField path={['colours', place, 'reflectance_percent']} label="Light thrown back by a thick film" hint="Without the shine of its surface." />
      <NumberField path={['colours', place, 'scatter_per_mm']} label="Scattering of the dry film" />
      <TickField label="Stains coats laid over it" on={colour.bleeds} hint="As some reds and maroons do." turn={(on) => changeJob('Colour that stains', withValueAt(state.job.peek(), ['colours', place, 'bleeds'], on))} />
      <button type="button" aria-label={`Remove the colour ${colour.name}`} onClick={() => removeColour(colour.id)}>Remove</button>
    </fieldset>
  );
}
