import { toScreen } from './camera.ts';
import { type Box, LABEL_TEXT_PX, type OverlayView } from './overlay.ts';
import type { SectionScene } from './scene.ts';
import type { SectionPart } from './sectionLine.ts';
import { svgElement } from './svg.ts';
import { tickText } from './ticks.ts';

const END_RADIUS_PX = 11;
const KEY_STEP_M = 0.005;
const KEY_STEP_SHIFT_M = 0.05;
const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowDown: [0, -1],
  ArrowUp: [0, 1],
};

/**
 * The section line from A to B. Each end is a button of 44 px, so that keys reach it: arrows move
 * it 5 mm, with Shift 50 mm; with Alt the whole line moves.
 */
export class SectionLayer {
  readonly group = svgElement('g', { 'font-size': LABEL_TEXT_PX });
  readonly handles: readonly HTMLButtonElement[];

  constructor(private readonly onMove: (part: SectionPart, dx_m: number, dy_m: number) => void) {
    this.handles = [this.handle('start'), this.handle('end')];
  }

  place(view: OverlayView, line: SectionScene): void {
    const { palette } = view;
    const ends = [toScreen(view.camera, line[0], line[1]), toScreen(view.camera, line[2], line[3])] as const;
    const d = `M${ends[0].join(' ')}L${ends[1].join(' ')}`;
    const stroke = { d, fill: 'none', 'stroke-linecap': 'round' };
    this.group.replaceChildren(
      svgElement('path', { ...stroke, stroke: palette.paper, 'stroke-width': 5 }),
      svgElement('path', { ...stroke, stroke: palette.accent, 'stroke-width': 2, 'stroke-dasharray': '14 4 3 4' }),
      ...ends.flatMap((end, i) => drawEnd(view, end, 'AB'.charAt(i))),
    );
    ends.forEach(([x_px, y_px], i) => this.placeHandle(view, i, x_px, y_px, line));
  }

  private placeHandle(view: OverlayView, i: number, x_px: number, y_px: number, line: SectionScene): void {
    const handle = this.handles[i] as HTMLButtonElement;
    const { left_px, right_px, top_px, bottom_px } = view.frame;
    // An end out of sight keeps its place in the tab order, at the edge nearest to it.
    const x = Math.min(right_px - 22, Math.max(left_px + 22, x_px));
    const y = Math.min(bottom_px - 22, Math.max(top_px + 22, y_px));
    handle.style.transform = `translate(${x - 22}px, ${y - 22}px)`;
    handle.style.pointerEvents = x === x_px && y === y_px ? 'auto' : 'none';
    const { unit_m, unitName } = view.ruler;
    const place = [line[2 * i], line[2 * i + 1]].map((at) => tickText(Math.round((at as number) / unit_m * 10) / 10));
    handle.setAttribute(
      'aria-label',
      `Section end ${'AB'.charAt(i)}, ${place[0]} across, ${place[1]} up, ${unitName}. Arrow keys move it`,
    );
  }

  private handle(part: 'start' | 'end'): HTMLButtonElement {
    const button = document.createElement('button');
    button.type = 'button';
    button.className = 'panel-canvas-handle';
    button.addEventListener('keydown', (event) => {
      const arrow = ARROWS[event.key];
      if (arrow === undefined) return;
      event.preventDefault();
      event.stopPropagation();
      const step_m = event.shiftKey ? KEY_STEP_SHIFT_M : KEY_STEP_M;
      this.onMove(event.altKey ? 'middle' : part, arrow[0] * step_m, arrow[1] * step_m);
    });
    return button;
  }
}

/** The boxes that the drawn ends fill. */
export function sectionEndBoxes(view: OverlayView, line: SectionScene): Box[] {
  const side = 2 * END_RADIUS_PX + 2;
  return [toScreen(view.camera, line[0], line[1]), toScreen(view.camera, line[2], line[3])]
    .map(([x_px, y_px]) => [x_px - side / 2, y_px - side / 2, side, side] as const);
}

function drawEnd(view: OverlayView, [x_px, y_px]: readonly [number, number], letter: string): SVGElement[] {
  const { palette } = view;
  return [
    svgElement('circle', { cx: x_px, cy: y_px, r: END_RADIUS_PX, fill: palette.paper, stroke: palette.accent, 'stroke-width': 2 }),
    svgElement(
      'text',
      { x: x_px, y: y_px + 5, 'text-anchor': 'middle', 'font-weight': 700, fill: palette.accent },
      [letter],
    ),
  ];
}
