import type { JSX } from 'preact';
import type { BackingWord } from '../../../sim/index.ts';
import { changeJob, panel, panelIndex } from '../../app/document.ts';
import { withValueAt } from '../../app/path.ts';
import { state } from '../../app/state.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { NumberField } from '../fields/NumberField.tsx';
import { TextField } from '../fields/TextField.tsx';
import { HingeFields } from './HingeFields.tsx';
import { ShapeEditor } from './ShapeEditor.tsx';

const ATTITUDES = [
  ['wall', 'Upright, like a wall'],
  ['table', 'Level, like a table'],
  ['ceiling', 'Face down'],
  ['other', 'Other tilt'],
] as const;

const BACKINGS: readonly (readonly [backing: BackingWord, words: string])[] = [
  ['open-cloth', 'Cloth, open to the air behind'],
  ['thin-sheet', 'Thin metal sheet'],
  ['thick-board', 'Thick board'],
];

type AttitudeName = (typeof ATTITUDES)[number][0];
const TILTS: Readonly<Record<AttitudeName, number>> = { wall: 90, table: 0, ceiling: 180, other: 60 };

/** The thing being finished: its name, outline, holes and how it hangs. */
export function PartForm(): JSX.Element {
  const job = state.job.value;
  const path = ['part', 'panels', panelIndex.value] as const;
  const { outline, holes, attitude, backing } = panel.value;
  const shown = state.film.value?.setting.panel;
  const size_mm = [(shown?.width_m ?? 0.6) * 1000, (shown?.height_m ?? 0.4) * 1000] as const;
  return (
    <form class="form" onSubmit={(event) => event.preventDefault()}>
      <h2>Part</h2>
      <TextField path={['name']} label="Job" />
      <TextField path={['part', 'name']} label="Part" />
      <TextField path={[...path, 'name']} label="Panel" />
      <h3>Outline</h3>
      <ShapeEditor path={[...path, 'outline']} shape={outline} name="Outline" size_mm={size_mm} />
      <h3>Holes</h3>
      {holes.length === 0 ? <p class="soft">None.</p> : null}
      {holes.map((hole, i) => (
        <fieldset key={i} class="group">
          <legend>Hole {i + 1}</legend>
          <ShapeEditor path={[...path, 'holes', i]} shape={hole} name={`Hole ${i + 1}`} size_mm={[size_mm[0] / 5, size_mm[1] / 5]} />
          <button type="button" onClick={() => setHoles('Remove a hole', holes.filter((_, each) => each !== i))}>Remove this hole</button>
        </fieldset>
      ))}
      <button
        type="button"
        onClick={() => setHoles('Add a hole', [...holes, { circle_mm: [Math.round(size_mm[0] / 2), Math.round(size_mm[1] / 2), 40] }])}
      >
        Add a round hole
      </button>
      <h3>How it hangs</h3>
      <ChoiceField
        id="attitude"
        label="Attitude"
        value={attitudeName(attitude.tilt_deg)}
        options={ATTITUDES}
        choose={(name) => changeJob('Attitude', withValueAt(state.job.peek(), [...path, 'attitude', 'tilt_deg'], TILTS[name]))}
      />
      <NumberField path={[...path, 'attitude', 'tilt_deg']} label="Tilt from level" />
      <NumberField path={[...path, 'attitude', 'down_deg']} label="Gravity pulls toward" hint="Counter-clockwise from x: -90 is down the page." />
      <h3>What lies under the film</h3>
      <ChoiceField
        id="backing"
        label="Backing"
        value={backing}
        options={BACKINGS}
        choose={(next) => changeJob('Backing', withValueAt(state.job.peek(), [...path, 'backing'], next))}
        hint="Drying cools the film; what lies under it lends it heat, cloth the least."
      />
      <HingeFields />
      <details class="more">
        <summary>Grid and chance</summary>
        <NumberField path={['cell_mm']} label="Grid cell" hint="Finer shows more and takes longer; 2 mm suits most parts." />
        <NumberField path={['seed']} label="Seed" hint="Fixes every chance in the job, so that it can be repeated." />
        <p class="soft">Job file version {job.schemaVersion}.</p>
      </details>
    </form>
  );

  function setHoles(label: string, next: typeof holes): void {
    changeJob(label, withValueAt(state.job.peek(), [...path, 'holes'], next));
  }
}

function attitudeName(tilt_deg: number): AttitudeName {
  return ATTITUDES.map(([name]) => name).find((name) => name !== 'other' && TILTS[name] === tilt_deg) ?? 'other';
}
