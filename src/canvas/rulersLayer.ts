import { toPanel } from './camera.ts';
import { LABEL_TEXT_PX, type OverlayView, RULER_BOTTOM_PX, RULER_LEFT_PX, TICK_TEXT_PX } from './overlay.ts';
import { paperRim, sharp, svgElement } from './svg.ts';
import { roundLength, rulerTicks, tickText } from './ticks.ts';

const LABEL_TICK_PX = 9;
const SMALL_TICK_PX = 5;
/** Widest digit at `TICK_TEXT_PX`. */
const DIGIT_PX = 8;
const SCALE_BAR_MOST_PX = 130;

/** Rulers along the left and the lower edge, in the reader's unit from the panel's lower-left corner, and a scale bar. */
export class RulersLayer {
  readonly group = svgElement('g', { 'font-size': TICK_TEXT_PX });

  place(view: OverlayView): void {
    const { height_px, width_px, frame, palette } = view;
    const bandsOnly = `M0 0H${RULER_LEFT_PX}V${frame.bottom_px}H${width_px}V${height_px}H0Z`;
    const edge = `M${sharp(frame.left_px)} 0V${sharp(frame.bottom_px)}H${width_px}`;
    this.group.replaceChildren(
      svgElement('path', { d: bandsOnly, fill: palette.paper }),
      svgElement('path', { d: edge, fill: 'none', stroke: palette.ink }),
      ...lowerTicks(view),
      ...leftTicks(view),
      // Last, over ticks that would run into the corner.
      svgElement('rect', { x: 0, y: frame.bottom_px + 1, width: RULER_LEFT_PX, height: RULER_BOTTOM_PX, fill: palette.paper }),
      svgElement('text', { x: RULER_LEFT_PX - 8, y: height_px - 8, 'text-anchor': 'end', fill: palette.faint }, [view.ruler.unitName]),
      scaleBar(view),
    );
  }
}

function lowerTicks(view: OverlayView): SVGElement[] {
  const { camera, frame, palette, ruler, height_px } = view;
  const value = (px: number): number => toPanel(camera, px, 0)[0] / ruler.unit_m;
  const place = (at: number): number => camera.originX_px + at * ruler.unit_m * camera.pxPerM;
  const length_px = frame.right_px - frame.left_px;
  const { labelled, small } = rulerTicks(value(frame.left_px), value(frame.right_px), length_px, 95);
  const mark = (at: number, size: number): string => `M${sharp(place(at))} ${sharp(frame.bottom_px)}v${size}`;
  const texts = labelled
    // A label too near an end would be cut off.
    .filter((at) => place(at) > frame.left_px + 4 && place(at) + 6 + DIGIT_PX * tickText(at).length < frame.right_px)
    .map((at) => svgElement('text', { x: place(at) + 4, y: height_px - 8, fill: palette.ink }, [tickText(at)]));
  return [tickPath(small, labelled, mark, palette.ink), ...texts];
}

function leftTicks(view: OverlayView): SVGElement[] {
  const { camera, frame, palette, ruler } = view;
  const value = (py: number): number => toPanel(camera, 0, py)[1] / ruler.unit_m;
  const place = (at: number): number => camera.originY_px - at * ruler.unit_m * camera.pxPerM;
  const length_px = frame.bottom_px - frame.top_px;
  const { labelled, small } = rulerTicks(value(frame.bottom_px), value(frame.top_px), length_px, 70);
  const mark = (at: number, size: number): string => `M${sharp(frame.left_px)} ${sharp(place(at))}h${-size}`;
  const texts = labelled
    .filter((at) => place(at) > 10 && place(at) < frame.bottom_px - 4)
    .map((at) => svgElement(
      'text',
      { x: frame.left_px - LABEL_TICK_PX - 4, y: place(at) + 4.5, 'text-anchor': 'end', fill: palette.ink },
      [tickText(at)],
    ));
  return [tickPath(small, labelled, mark, palette.ink), ...texts];
}

function tickPath(
  small: readonly number[], labelled: readonly number[],
  mark: (at: number, size: number) => string, ink: string,
): SVGElement {
  const d = small.map((at) => mark(at, SMALL_TICK_PX)).join('') + labelled.map((at) => mark(at, LABEL_TICK_PX)).join('');
  return svgElement('path', { d, stroke: ink, fill: 'none' });
}

/** A bar of round length at the lower right. */
function scaleBar(view: OverlayView): SVGElement {
  const { camera, frame, palette, ruler } = view;
  const unit_px = ruler.unit_m * camera.pxPerM;
  const length = roundLength(SCALE_BAR_MOST_PX / unit_px);
  const bar_px = length * unit_px;
  const [right, base] = [frame.right_px - 18, frame.bottom_px - 16];
  const d = `M${sharp(right - bar_px)} ${base - 6}v6H${sharp(right)}v-6`;
  return svgElement('g', { 'font-size': LABEL_TEXT_PX }, [
    svgElement('path', { d, fill: 'none', stroke: palette.paper, 'stroke-width': 5 }),
    svgElement('path', { d, fill: 'none', stroke: palette.ink, 'stroke-width': 1.5 }),
    svgElement(
      'text', { x: right - bar_px / 2, y: base - 11, 'text-anchor': 'middle', fill: palette.ink, ...paperRim(palette.paper) },
      [`${tickText(length)} ${ruler.unitName}`],
    ),
  ]);
}
