import { InkLines } from './inkLines.ts';
import { InkMesh } from './inkMesh.ts';
import type { StrokeScene } from './scene.ts';
import { travelMarks } from './strokeMarks.ts';
import type { ViewUniforms } from './view.ts';

const CHEVRON_SPACING_PX = 180;
const CHEVRON_PX = 5;
const POINT_PX = 3;
/** Paper on both sides of a line, so that it reads on any colour of the map. */
const CASING_PX = 1;

/** The strokes' aim lines: open circle where fluid opens, filled where it closes, chevrons between. */
export class StrokesLayer {
  readonly ink: InkMesh;
  private readonly lines = new InkLines();
  private shown: readonly StrokeScene[] = [];
  private selected: readonly number[] = [];
  private spacing_m = 0;

  constructor(view: ViewUniforms) {
    this.ink = new InkMesh(view);
  }

  /** Redraws when the strokes, the selection or the zoom's octave (for the chevrons) changed. */
  show(strokes: readonly StrokeScene[], selected: readonly number[], pxPerM: number): void {
    const spacing_m = 2 ** Math.round(Math.log2(CHEVRON_SPACING_PX / pxPerM));
    if (strokes === this.shown && selected === this.selected && spacing_m === this.spacing_m) return;
    this.shown = strokes;
    this.selected = selected;
    this.spacing_m = spacing_m;
    const chosen = new Set(selected);
    const { lines } = this;
    lines.clear();
    const ordinary = strokes.filter((stroke) => !chosen.has(stroke.index));
    for (const stroke of ordinary) drawStroke(lines, stroke, spacing_m, false);
    for (const stroke of strokes) if (chosen.has(stroke.index)) drawStroke(lines, stroke, spacing_m, true);
    this.ink.show(lines);
  }
}

function drawStroke(lines: InkLines, stroke: StrokeScene, spacing_m: number, selected: boolean): void {
  const { line } = stroke;
  if (line.length < 2) return;
  const width = selected ? 3 : 1;
  const tone = selected ? 'accent' : 'ink';
  const marks = travelMarks(line, spacing_m);
  const chevrons = (width_px: number, inked: 'paper' | 'accent' | 'ink'): void => {
    for (const { x_m, y_m, dx, dy } of marks) {
      const tipX = dx * CHEVRON_PX * 0.6;
      const tipY = dy * CHEVRON_PX * 0.6;
      for (const side of [-1, 1]) {
        const armX = -tipX - dy * side * CHEVRON_PX;
        const armY = -tipY + dx * side * CHEVRON_PX;
        lines.stick(x_m, y_m, tipX, tipY, armX, armY, width_px, inked);
      }
    }
  };
  lines.polyline(line, false, width + CASING_PX, 'paper');
  chevrons(width + CASING_PX, 'paper');
  lines.polyline(line, false, width, tone);
  chevrons(width + 0.25, tone);
  const [startX, startY] = [line[0] as number, line[1] as number];
  const [endX, endY] = [line.at(-2) as number, line.at(-1) as number];
  lines.disc(endX, endY, POINT_PX + CASING_PX / 2, 'paper');
  lines.disc(endX, endY, POINT_PX, tone);
  lines.disc(startX, startY, POINT_PX + 1, 'paper');
  lines.ring(startX, startY, POINT_PX, selected ? 2.5 : 1.5, tone);
}
