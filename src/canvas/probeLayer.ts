import { toScreen } from './camera.ts';
import type { OverlayView } from './overlay.ts';
import { svgElement } from './svg.ts';

/** A cross-hair at the probed place, for keys and touch; a mouse has its own pointer. */
export class ProbeLayer {
  readonly group = svgElement('g', { fill: 'none' });

  place(view: OverlayView, at_m: readonly [number, number] | null): void {
    if (at_m === null) {
      this.group.replaceChildren();
      return;
    }
    const [x, y] = toScreen(view.camera, at_m[0], at_m[1]);
    const d = `M${x - 16} ${y}h11M${x + 5} ${y}h11M${x} ${y - 16}v11M${x} ${y + 5}v11`;
    this.group.replaceChildren(
      svgElement('path', { d, stroke: view.palette.paper, 'stroke-width': 5 }),
      svgElement('path', { d, stroke: view.palette.ink, 'stroke-width': 2 }),
    );
  }
}
