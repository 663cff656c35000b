import type { JSX } from 'preact';
import { LAYERS, LAYER_WORDS, type StepSpec } from '../../../../sim/index.ts';
import type { JobPath } from '../../../app/path.ts';
import { shownScheme } from '../../../app/scheme/scheme.ts';
import { setInStep } from '../../../app/scheme/stepCommands.ts';
import { state } from '../../../app/state.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { NumberField } from '../../fields/NumberField.tsx';
import { TickField } from '../../fields/TickField.tsx';

type CoatStepSpec = Extract<StepSpec, { readonly kind: 'brush' | 'spray' }>;

export interface CoatFieldsProps {
  readonly step: CoatStepSpec;
  readonly place: number;
  readonly path: JobPath;
}

/** The fields of a brushed or sprayed coat. */
export function CoatFields({ step, place, path }: CoatFieldsProps): JSX.Element {
  const { colours = [] } = state.job.value;
  return (
    <>
      <ChoiceField id={`layer-${step.id}`} label="Kind of film" value={step.layer} options={LAYERS.map((layer) => [layer, LAYER_WORDS[layer]] as const)} choose={(layer) => setInStep('Kind of film', place, 'layer', layer)} />
      {step.kind === 'brush' ? <BrushFields step={step} place={place} path={path} /> : <SprayFields step={step} place={place} />}
      <NumberField path={[...path, 'share_percent']} label="Share of the area that it covers" />
      {step.layer === 'colour' || step.colour !== undefined
        ? <ChoiceField id={`colour-${step.id}`} label="Colour" value={step.colour ?? ''} options={[['', 'not stated'] as const, ...colours.map(({ id, name }) => [id, name] as const)]} choose={(id) => setInStep('Colour', place, 'colour', id === '' ? undefined : id)} />
        : null}
      {step.layer === 'aluminium' || step.paste_g_L !== undefined ? <PasteField step={step} place={place} path={path} /> : null}
    </>
  );
}

function BrushFields({ step, place, path }: CoatFieldsProps): JSX.Element | null {
  if (step.kind !== 'brush') return null;
  return (
    <>
      <ChoiceField id={`mix-${step.id}`} label="Mix" value={step.mix} options={mixOptions()} choose={(id) => setInStep('Mix of the step', place, 'mix', id)} />
      <NumberField path={[...path, 'dry_um']} label="Dry film that it leaves" hint="Stated: no model brushes. Weigh a coupon to know it." />
      <NumberField path={[...path, 'within_percent']} label="The film is known within ±" />
      <NumberField path={[...path, 'loss_percent']} label="Stays in brush and pot" />
    </>
  );
}

function SprayFields({ step, place }: Omit<CoatFieldsProps, 'path'>): JSX.Element | null {
  if (step.kind !== 'spray') return null;
  const panels = shownScheme.value?.panels ?? [];
  const coats = state.job.value.coats.filter(({ panel }) => panels.includes(panel));
  return (
    <>
      <ChoiceField id={`coat-${step.id}`} label="Sprayed as" value={step.coat} options={coats.map(({ id, name }) => [id, name] as const)} hint="Set-up, strokes and target are that coat’s; change them in the stages Gun and Strokes." choose={(id) => setInStep('Coat of the step', place, 'coat', id)} />
      <ChoiceField id={`mix-${step.id}`} label="Mix" value={step.mix ?? ''} options={[['', 'the coat’s own'] as const, ...mixOptions()]} choose={(id) => setInStep('Mix of the step', place, 'mix', id === '' ? undefined : id)} />
    </>
  );
}

function mixOptions(): (readonly [id: string, name: string])[] {
  return state.job.value.mixes.map(({ id, name }) => [id, name] as const);
}

/** 22.4 g/L is 2.99 oz to the US gallon, just under the most allowed. */
const USUAL_PASTE_G_L = 22.4;

function PasteField({ step, place, path }: CoatFieldsProps): JSX.Element {
  return (
    <div class="scheme-steps-optional">
      <TickField label="State the aluminium paste" on={step.paste_g_L !== undefined} turn={(on) => setInStep('Aluminium paste', place, 'paste_g_L', on ? USUAL_PASTE_G_L : undefined)} />
      {step.paste_g_L === undefined ? null : <NumberField path={[...path, 'paste_g_L']} label="Paste to a litre of unthinned finish" hint="At most 22.5 g/L, 3 oz (weight) to the US gallon." />}
    </div>
  );
}
