import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { counted, LEAVING_OUT, presetById, presetParts, PRESETS, wholeCoatCount } from '../../../../sim/index.ts';
import { addBlank, addPreset, freePanels } from '../../../app/scheme/schemeCommands.ts';
import { state } from '../../../app/state.ts';
import { TickField } from '../../fields/TickField.tsx';

/** Begins a scheme: from a preset or blank, on panels that have none. */
export function NewScheme({ isFirst }: { readonly isFirst: boolean }): JSX.Element | null {
  const free = freePanels(state.job.value);
  const [left, setLeft] = useState<readonly string[]>([]);
  const [fourth, setFourth] = useState(false);
  const panels = free.filter((id) => !left.includes(id));
  if (free.length === 0) return isFirst ? null : <p class="soft">Every panel has a scheme: for another one, add a panel in the stage Part, or take a panel out of this scheme.</p>;
  const body = (
    <>
      {isFirst ? <p>The job has no scheme of coats yet. Begin with a preset and change what you like, or write one step by step.</p> : null}
      <fieldset class="group">
        <legend>Panels that it is laid on</legend>
        {state.job.value.part.panels.filter(({ id }) => free.includes(id)).map(({ id, name }) =>
          <TickField key={id} label={name} on={panels.includes(id)} turn={(on) => setLeft(on ? left.filter((each) => each !== id) : [...left, id])} />)}
      </fieldset>
      <div class="scheme-steps-presets">
        {PRESETS.map(({ id }) => <PresetCard key={id} id={id} panels={panels} fourth={fourth} setFourth={setFourth} />)}
        <section class="group" aria-labelledby="preset-blank">
          <h3 id="preset-blank">Blank</h3>
          <p>One step to begin with.</p>
          <button type="button" disabled={panels.length === 0} onClick={() => addBlank(panels)}>Begin blank</button>
        </section>
      </div>
      <p class="soft">{LEAVING_OUT}</p>
    </>
  );
  return isFirst
    ? <section class="scheme-steps-new" aria-labelledby="steps-new"><h2 id="steps-new">Begin a scheme</h2>{body}</section>
    : <details class="scheme-steps-fold"><summary>Another scheme, for other panels</summary>{body}</details>;
}

interface PresetCardProps {
  readonly id: string;
  readonly panels: readonly string[];
  readonly fourth: boolean;
  readonly setFourth: (on: boolean) => void;
}

function PresetCard({ id, panels, fourth, setFourth }: PresetCardProps): JSX.Element {
  const preset = presetById(id);
  const { mixes, coat, missing } = presetParts(state.job.value, preset, panels);
  const hasChoice = preset.clearCoats > 0;
  const steps = preset.steps({ mixes: { brush: '', clear: '', aluminium: '', colour: '', lacquer: '', ...mixes }, coat: coat ?? '' }, { fourthClear: hasChoice && fourth });
  return (
    <section class="group" aria-labelledby={`preset-${id}`}>
      <h3 id={`preset-${id}`}>{preset.name}</h3>
      <p>{preset.note} {counted(steps.length, 'step')}, {counted(wholeCoatCount(steps), 'whole coat')}. Source: {preset.source}.</p>
      {hasChoice ? <TickField label="With a fourth clear coat" on={fourth} hint="Where the cloth is not taut or the film not glossy." turn={setFourth} /> : null}
      {missing.length === 0 ? null : <p>It adds to the job: {missing.map(({ name }) => name).join('; ')}.</p>}
      {coat === null && panels.length > 0 ? <p>It adds a coat on the panel, sprayed as the job’s first one is.</p> : null}
      <details>
        <summary>Its steps, with their sources</summary>
        <ol>{steps.map((step) => <li key={step.id}>{step.name}. <span class="soft">{step.source}</span></li>)}</ol>
      </details>
      <button type="button" class="act" disabled={panels.length === 0} onClick={() => addPreset(id, panels, { fourthClear: hasChoice && fourth })}>Begin with this</button>
    </section>
  );
}
