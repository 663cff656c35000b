import type { ComponentType, JSX } from 'preact';
import { SectionView } from '../panel/SectionView.tsx';
import { state, type StageName } from '../../app/state.ts';
import { PanelView } from '../panel/PanelView.tsx';
import { StrokesForm } from '../strokes/StrokesForm.tsx';
import { StrokeTable } from '../strokes/StrokeTable.tsx';
import { VerdictView } from '../verdict/VerdictView.tsx';
import { DropTarget } from './DropTarget.tsx';
import { fetched } from './fetched.tsx';
import { Header } from './Header.tsx';
import { Notices } from './Notices.tsx';
import { PrintSheet } from './PrintSheet.tsx';
import { SprayCaution } from './SprayCaution.tsx';
import { Stages } from './Stages.tsx';

/** A first visit needs the strokes' form only: the script of the others is fetched when they are opened. */
const FORMS: Readonly<Record<StageName, ComponentType>> = {
  part: fetched(async () => (await import('../part/PartForm.tsx')).PartForm),
  mix: fetched(async () => (await import('../mix/MixForm.tsx')).MixForm),
  air: fetched(async () => (await import('../air/AirForm.tsx')).AirForm),
  gun: fetched(async () => (await import('../gun/GunForm.tsx')).GunForm),
  strokes: StrokesForm,
};

/** The one window: stages and their form, the panel, the verdict; the trace and the strokes below. */
export function Window(): JSX.Element {
  const Form = FORMS[state.stage.value];
  return (
    <DropTarget>
      <div class="window">
        <Header />
        <SprayCaution />
        <Notices />
        <Stages />
        <section class="form-column" aria-label="Settings of this stage">
          <Form />
        </section>
        <main class="panel-column">
          <PanelView />
          <SectionView />
          <StrokeTable />
        </main>
        <aside class="verdict-column" aria-label="Verdict">
          <VerdictView />
        </aside>
      </div>
      <PrintSheet />
    </DropTarget>
  );
}
