import { effect } from '@preact/signals';
import type { CanvasEvents, PanelCanvas } from '../canvas/scene.ts';
import { chooseFault, chooseStroke, wantedPlace, wantedSight } from './choose.ts';
import { problemOf } from './problem.ts';
import { RAN_KEY, scene } from './scene.ts';
import { putSection } from './sections.ts';
import { state } from './state.ts';
import { zoneOfKey } from './zones.ts';

const events: CanvasEvents = {
  probe: (at_m) => (state.probe_m.value = at_m),
  section: putSection,
  zone: (key) => {
    if (key !== RAN_KEY) chooseFault(zoneOfKey(key));
  },
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
      // Without a scene the drawing has no picture, or one of a job that is gone: bare paper instead.
      host.classList.toggle('without-scene', scene.value === null);
      if (scene.value !== null) canvas.show(scene.value);
    });
    const stopPlace = effect(() => {
      const wanted = wantedPlace.value;
      if (wanted !== null) canvas.goTo(wanted.at_m, wanted.span_m);
    });
    const stopSight = effect(() => {
      if (wantedSight.value !== null) bringIntoSight(host);
    });
    stop = () => {
      stopSight();
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

/**
 * Scrolls the panel's own column back to the canvas. On a narrow sheet the column does not scroll
 * by itself, and the page stays: there the words that were just opened would leave the screen.
 */
function bringIntoSight(host: HTMLElement): void {
  const column = host.closest('main');
  if (column === null) return;
  const [box, sight] = [host.getBoundingClientRect(), column.getBoundingClientRect()];
  if (box.top >= sight.top && box.bottom <= sight.bottom) return;
  const isCalm = matchMedia('(prefers-reduced-motion: reduce)').matches;
  column.scrollBy({ top: box.top - sight.top, behavior: isCalm ? 'auto' : 'smooth' });
}
