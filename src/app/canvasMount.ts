import { effect } from '@preact/signals';
import type { CanvasEvents, PanelCanvas } from '../canvas/scene.ts';
import { chooseFault, chooseStroke, wantedPlace } from './choose.ts';
import { panel } from './document.ts';
import { problemOf } from './problem.ts';
import { scene } from './scene.ts';
import { state } from './state.ts';
import { zoneOfKey } from './zones.ts';

const events: CanvasEvents = {
  probe: (at_m) => (state.probe_m.value = at_m),
  section: (line) => (state.sections.value = { ...state.sections.peek(), [panel.peek().id]: line }),
  zone: (key) => chooseFault(zoneOfKey(key)),
  stroke: chooseStroke,
};

/**
 * Puts the panel's canvas into `host` and keeps it in step with the scene. The drawing library
 * is most of the page's script, so it is fetched only here, beside the first film.
 * @returns the canvas's handle for buttons, and a way to take it down.
 */
export function mountCanvas(host: HTMLElement, ready: (canvas: PanelCanvas) => void): () => void {
  let isGone = false;
  let stop = (): void => undefined;

  const start = async (): Promise<void> => {
    const { createPanelCanvas } = await import('../canvas/createPanelCanvas.ts');
    if (isGone) return;
    const canvas = await createPanelCanvas(host, events);
    if (isGone) {
      canvas.destroy();
      return;
    }
    ready(canvas);
    const stopScene = effect(() => {
      if (scene.value !== null) canvas.show(scene.value);
    });
    const stopPlace = effect(() => {
      const wanted = wantedPlace.value;
      if (wanted !== null) canvas.goTo(wanted.at_m, wanted.span_m);
    });
    stop = () => {
      stopScene();
      stopPlace();
      canvas.destroy();
    };
  };

  start().catch((thrown: unknown) => {
    state.notice.value = problemOf('The panel cannot be drawn in this browser; figures and faults are still right', thrown);
  });
  return () => {
    isGone = true;
    stop();
  };
}
