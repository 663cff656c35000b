import { createPanelCanvas } from '../../../src/canvas/createPanelCanvas.ts';
import type { CanvasScene, PanelCanvas } from '../../../src/canvas/scene.ts';
import { analyticField, bareScene, evenStrokes, everyZone, fanRim, squareZones } from './analyticScene.ts';

/** What the tests reach from outside the page. */
export interface CanvasHarness {
  readonly canvas: PanelCanvas;
  /** Every event in order. */
  readonly heard: { readonly name: string; readonly value: unknown }[];
  scene: CanvasScene;
  /** Shows the scene with some parts changed, and waits until it is drawn. */
  change(parts: Partial<CanvasScene>): Promise<void>;
  /** The page's own scene makers. */
  readonly make: {
    bare(theme: 'light' | 'dark'): CanvasScene;
    full(theme: 'light' | 'dark'): CanvasScene;
    zones(): CanvasScene['zones'];
    everyZone(): CanvasScene['zones'];
    strokes(count: number): CanvasScene['strokes'];
    field(cellSize_m: number): NonNullable<CanvasScene['field']>;
  };
  drawn(): Promise<void>;
}

declare global {
  interface Window {
    harness?: CanvasHarness;
  }
}

function fullScene(theme: 'light' | 'dark'): CanvasScene {
  const bare = bareScene(theme);
  const field = bare.field;
  if (field === null) throw new Error('harness: the bare scene has a field');
  return {
    ...bare,
    strokes: evenStrokes(7),
    selectedStrokes: [4],
    zones: squareZones(field),
    selectedZone: 'heavy-spot',
    gun: { x_m: 1.75, y_m: 0.78, rim: fanRim(1.75, 0.78), spraying: true },
  };
}

async function start(): Promise<void> {
  const host = document.getElementById('host');
  if (host === null) throw new Error('harness: no #host');
  const heard: { name: string; value: unknown }[] = [];
  const hear = (name: string) => (value: unknown): void => { heard.push({ name, value }); };
  const canvas = await createPanelCanvas(host, {
    probe: hear('probe'), section: hear('section'), zone: hear('zone'), stroke: hear('stroke'),
  });
  const drawn = (): Promise<void> =>
    new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done())));
  const harness: CanvasHarness = {
    canvas,
    heard,
    scene: bareScene('light'),
    async change(parts) {
      harness.scene = { ...harness.scene, ...parts };
      canvas.show(harness.scene);
      await drawn();
    },
    make: {
      bare: bareScene,
      full: fullScene,
      zones: () => squareZones(harness.scene.field ?? analyticField(0.004)),
      everyZone: () => everyZone(harness.scene.field ?? analyticField(0.004)),
      strokes: evenStrokes,
      field: analyticField,
    },
    drawn,
  };
  canvas.show(harness.scene);
  await drawn();
  window.harness = harness;
}

void start();
