import './canvas.css';
import { Drawing, makeRenderer } from './drawing.ts';
import { PanelView } from './panelView.ts';
import type { CanvasEvents, PanelCanvas } from './scene.ts';

/**
 * Puts a panel canvas into `host`, which gives it its size. Fails where the browser has no WebGL 2.
 * Arrays in a scene must stay as they are until the next scene: they are read again when the GPU
 * was lost.
 */
export async function createPanelCanvas(host: HTMLElement, events: CanvasEvents): Promise<PanelCanvas> {
  const canvas = document.createElement('canvas');
  const renderer = await makeRenderer(canvas, window.devicePixelRatio);
  const view = new PanelView(host, canvas, renderer, new Drawing(renderer), events);
  return {
    show: (scene) => view.show(scene),
    fit: () => view.fit(),
    zoomBy: (factor) => view.zoomBy(factor),
    panBy: (dx_px, dy_px) => view.panBy(dx_px, dy_px),
    goTo: (at_m, span_m) => view.goTo(at_m, span_m),
    picture: () => view.picture(),
    destroy: () => view.destroy(),
  };
}
