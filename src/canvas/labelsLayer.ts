import { toScreen } from './camera.ts';
import { type Box, placeBoxes, LABEL_TEXT_PX, type OverlayView } from './overlay.ts';
import type { StrokeScene, ZoneScene } from './scene.ts';
import { paperRim, svgElement } from './svg.ts';

const TAG_HEIGHT_PX = 22;
const TAG_PAD_PX = 7;
/** From a zone's place up (or down, at the upper edge) to the middle of its tag, so that a small zone stays in sight. */
const LEADER_PX = 34;

interface Label {
  readonly text: string;
  readonly x_px: number;
  readonly y_px: number;
  readonly chosen: boolean;
  /** The zone's key: a tag with a rim and a leader to its place. Null: a stroke's number, standing free. */
  readonly zone: string | null;
  /** -1 to stand to the left of its place, 1 to the right. */
  readonly side: -1 | 1;
}

/** A zone's tag as drawn. */
export interface Tag {
  readonly zone: string;
  readonly box: Box;
}

/**
 * Tags of the zones and numbers of the strokes. What is selected comes first, then the zones in
 * their order (worst first), then the strokes; a label that would cover an earlier one, or an end
 * of the section line, is left out until a zoom makes room.
 */
export class LabelsLayer {
  readonly group = svgElement('g', { 'font-size': LABEL_TEXT_PX });
  /** The tags drawn last, for picking. */
  tags: readonly Tag[] = [];
  private readonly widths = new Map<string, number>();

  place(
    view: OverlayView, zones: readonly ZoneScene[], selectedZone: string | null,
    strokes: readonly StrokeScene[], selectedStrokes: readonly number[], taken: readonly Box[],
  ): void {
    const labels = [
      ...zones.filter(({ label }) => label !== '').map((zone) => zoneLabel(view, zone, zone.key === selectedZone)),
      ...strokes.map((stroke) => strokeLabel(view, stroke, selectedStrokes.includes(stroke.index))),
    ].filter(({ x_px, y_px }) => isInside(view, x_px, y_px));
    const ordered = [...labels.filter((l) => l.chosen), ...labels.filter((l) => !l.chosen)];
    const boxes = placeBoxes(ordered.map((label) => this.choices(view, label)), taken);
    const drawn = ordered.flatMap((label, i) => {
      const box = boxes[i] ?? null;
      return box === null ? [] : [{ label, box }];
    });
    this.tags = drawn.flatMap(({ label, box }) => (label.zone === null ? [] : [{ zone: label.zone, box }]));
    this.group.replaceChildren(...drawn.flatMap(({ label, box }) => drawLabel(view, label, box)));
  }

  /** Where a label may stand, best place first: a stroke's number behind its start, a tag above or below its zone. */
  private choices(view: OverlayView, label: Label): Box[] {
    const text_px = this.textWidth(label.text);
    const top = label.y_px - TAG_HEIGHT_PX / 2;
    if (label.zone === null) {
      const middle = label.x_px + label.side * (8 + text_px / 2);
      return [[middle - text_px / 2 - 1, top, text_px + 2, TAG_HEIGHT_PX]];
    }
    const width = text_px + 2 * TAG_PAD_PX;
    const { left_px, right_px, top_px } = view.frame;
    const left = Math.max(left_px + 2, Math.min(right_px - width - 2, label.x_px - width / 2));
    const above: Box = [left, top - LEADER_PX, width, TAG_HEIGHT_PX];
    const below: Box = [left, top + LEADER_PX, width, TAG_HEIGHT_PX];
    return above[1] > top_px ? [above, below] : [below];
  }

  /** Measured once a text: laying out text on every frame of a drag would cost more than the drawing. */
  private textWidth(text: string): number {
    const known = this.widths.get(text);
    if (known !== undefined) return known;
    const probe = svgElement('text', {}, [text]);
    this.group.append(probe);
    const width = probe.getComputedTextLength();
    this.widths.set(text, width);
    return width;
  }
}

function isInside(view: OverlayView, x_px: number, y_px: number): boolean {
  const { left_px, right_px, top_px, bottom_px } = view.frame;
  return x_px > left_px && x_px < right_px && y_px > top_px && y_px < bottom_px;
}

function zoneLabel(view: OverlayView, zone: ZoneScene, chosen: boolean): Label {
  const [x_px, y_px] = toScreen(view.camera, zone.at_m[0], zone.at_m[1]);
  return { text: zone.label, x_px, y_px, chosen, zone: zone.key, side: 1 };
}

function strokeLabel(view: OverlayView, stroke: StrokeScene, chosen: boolean): Label {
  const [x_px, y_px] = toScreen(view.camera, stroke.line[0] ?? NaN, stroke.line[1] ?? NaN);
  const runsLeft = (stroke.line.at(-2) ?? NaN) < (stroke.line[0] ?? NaN);
  return { text: stroke.label, x_px, y_px, chosen, zone: null, side: runsLeft ? 1 : -1 };
}

function drawLabel(view: OverlayView, label: Label, [left, top, width, height]: Box): SVGElement[] {
  const { palette } = view;
  const isTag = label.zone !== null;
  const ink = label.chosen ? palette.accent : palette.ink;
  const text = svgElement(
    'text',
    {
      x: left + width / 2, y: top + height / 2 + 5, 'text-anchor': 'middle', fill: ink,
      'font-weight': label.chosen ? 700 : 500,
      ...(isTag ? {} : paperRim(palette.paper)),
    },
    [label.text],
  );
  if (!isTag) return [text];
  const rim = { x: left, y: top, width, height, fill: palette.paper, stroke: ink, 'stroke-width': label.chosen ? 2 : 1 };
  const { x_px, y_px } = label;
  const d = `M${x_px} ${y_px}L${left + width / 2} ${top + height / 2}`;
  return [
    svgElement('path', { d, stroke: palette.paper, 'stroke-width': 4 }),
    svgElement('path', { d, stroke: ink, 'stroke-width': 1.25 }),
    svgElement('circle', { cx: x_px, cy: y_px, r: 3.5, fill: ink, stroke: palette.paper, 'stroke-width': 1.5 }),
    svgElement('rect', rim),
    text,
  ];
}
