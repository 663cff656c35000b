import { type Box, LABEL_TEXT_PX, type OverlayView } from './overlay.ts';
import { paperRim, svgElement } from './svg.ts';

const BOX_PX = 64;
const ARROW_PX = 15;

/** Where gravity pulls in the panel's plane: an arrow lettered "down" at the upper right; none when level. */
export class GravityLayer {
  readonly group = svgElement('g');

  /** @returns the boxes that labels must keep clear of. */
  place(view: OverlayView, down_rad: number | null): Box[] {
    if (down_rad === null) {
      this.group.replaceChildren();
      return [];
    }
    const { frame, palette } = view;
    const left = frame.right_px - BOX_PX - 10;
    const top = frame.top_px + 10;
    // The arrow is drawn pointing right; the screen's y runs down, so the turn is the other way.
    const turn_deg = (-down_rad * 180) / Math.PI;
    const middle = `translate(${left + BOX_PX / 2} ${top + 22}) rotate(${turn_deg})`;
    const d = `M${-ARROW_PX} 0H${ARROW_PX}m-7 -5l7 5l-7 5`;
    this.group.replaceChildren(
      svgElement('path', { d, transform: middle, fill: 'none', stroke: palette.paper, 'stroke-width': 5.5 }),
      svgElement('path', { d, transform: middle, fill: 'none', stroke: palette.ink, 'stroke-width': 1.75 }),
      svgElement(
        'text',
        {
          x: left + BOX_PX / 2, y: top + BOX_PX - 8, 'text-anchor': 'middle',
          'font-size': LABEL_TEXT_PX, fill: palette.ink, ...paperRim(palette.paper),
        },
        ['down'],
      ),
    );
    return [[left, top, BOX_PX, BOX_PX]];
  }
}
