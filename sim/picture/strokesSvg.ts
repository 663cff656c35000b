import type { Grid } from '../base/grid.ts';
import type { Panel, Polygon } from '../panel/panel.ts';
import type { StrokeMeasures } from '../stroke/stroke.ts';
import type { FaultKind } from '../verdict/verdict.ts';
import { zoneRim } from './zoneRim.ts';

/** The aim line of one stroke with fluid on: x0, y0, x1, y1, … m. */
export interface StrokeLine {
  readonly index: number;
  readonly line: Float64Array;
}

/** A zone to outline; `label` stands at its worst place. */
export interface RimmedZone {
  readonly kind: FaultKind;
  readonly cells: Uint32Array;
  readonly at_m: readonly [number, number];
  readonly label: string;
}

/** What a drawing to scale shows. */
export interface StrokesDrawing {
  readonly title: string;
  readonly panel: Panel;
  readonly grid: Grid;
  readonly lines: readonly StrokeLine[];
  readonly measures: readonly StrokeMeasures[];
  readonly zones: readonly RimmedZone[];
  readonly unit: 'mm' | 'in';
}

const MARGIN_mm = 20;
const LABEL_mm = 9;
const MM_PER_INCH = 25.4;
/** A recorded line is drawn no finer than this. */
const NEAR_mm = 1;

const STYLE = `
  text { font: ${LABEL_mm}px sans-serif; fill: #181818; }
  .panel { fill: #fbf9f4; stroke: #181818; stroke-width: 1.2; fill-rule: evenodd; }
  .stroke { fill: none; stroke: #1f5a8c; stroke-width: 1; }
  .arrow { fill: none; stroke: none; marker-mid: url(#arrow); }
  .trigger { fill: #fff; stroke: #1f5a8c; stroke-width: 1; }
  .zone { fill: none; stroke: #b3400f; stroke-width: 1; }
  .thin-lap { stroke-dasharray: 6 2; } .holiday { stroke-dasharray: 1 2; } .dry-spray { stroke-dasharray: 8 2 1 2; }
`;

/**
 * The strokes of a coat as an SVG drawing to scale: sizes are real (mm or in), one user unit is
 * one millimetre, y is turned so that the panel stands as the sprayer sees it. Shows outline and
 * holes, each stroke's aim line with arrows in its direction, its number (from 1) where it starts,
 * the trigger points (open circle on, filled square off) and the rims of the fault zones.
 */
export function strokesSvg(drawing: StrokesDrawing): string {
  const box = drawingBox(drawing);
  const place = (x_m: number, y_m: number): string => `${mm(x_m * 1000 - box.left)},${mm(box.top - y_m * 1000)}`;
  const size = (length_mm: number): string =>
    drawing.unit === 'in' ? `${mm(length_mm / MM_PER_INCH)}in` : `${mm(length_mm)}mm`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${size(box.width)}" height="${size(box.height)}" viewBox="0 0 ${mm(box.width)} ${mm(box.height)}">`,
    `<title>${escapeXml(drawing.title)}</title>`,
    `<defs><marker id="arrow" viewBox="0 0 6 6" refX="3" refY="3" markerWidth="7" markerHeight="7" orient="auto"><path d="M0,0 L6,3 L0,6 Z" fill="#1f5a8c"/></marker></defs>`,
    `<style>${STYLE}</style>`,
    `<path class="panel" d="${[drawing.panel.outline, ...drawing.panel.holes].map((ring) => closedPath(ring, place)).join(' ')}"/>`,
    ...drawing.lines.flatMap((stroke) => strokeMarks(stroke, drawing.measures, place)),
    ...drawing.zones.flatMap((zone) => zoneMarks(zone, drawing.grid, place)),
    '</svg>',
    '',
  ].join('\n');
}

/** Text that may stand in an XML attribute or element; characters that XML forbids are dropped. */
export function escapeXml(text: string): string {
  return text
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '')
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;')
    .replace(/'/g, '&#39;');
}

/** Micrometres are enough on paper. */
function mm(length_mm: number): string {
  return String(Math.round(length_mm * 1000) / 1000);
}

/** Panel and strokes with a margin, mm; `top` is the largest y. */
function drawingBox({ panel, lines }: StrokesDrawing): { left: number; top: number; width: number; height: number } {
  let [left, bottom, right, top] = [0, 0, panel.width_m, panel.height_m];
  for (const { line } of lines) {
    for (let i = 0; i + 1 < line.length; i += 2) {
      left = Math.min(left, line[i] as number);
      right = Math.max(right, line[i] as number);
      bottom = Math.min(bottom, line[i + 1] as number);
      top = Math.max(top, line[i + 1] as number);
    }
  }
  return {
    left: left * 1000 - MARGIN_mm,
    top: top * 1000 + MARGIN_mm,
    width: (right - left) * 1000 + 2 * MARGIN_mm,
    height: (top - bottom) * 1000 + 2 * MARGIN_mm,
  };
}

type Placer = (x_m: number, y_m: number) => string;

function corners(line: ArrayLike<number>, place: Placer): string[] {
  const texts: string[] = [];
  for (let i = 0; i + 1 < line.length; i += 2) texts.push(place(line[i] as number, line[i + 1] as number));
  return texts;
}

function closedPath(ring: Polygon, place: Placer): string {
  return `M${corners(ring, place).join(' L')} Z`;
}

function strokeMarks({ index, line }: StrokeLine, measures: readonly StrokeMeasures[], place: Placer): string[] {
  if (line.length < 4) return [];
  const points = thinned(line);
  const [x0 = 0, y0 = 0] = line;
  const [x1 = 0, y1 = 0] = line.slice(-2);
  const [startX = '', startY = ''] = place(x0, y0).split(',');
  const [endX, endY] = place(x1, y1).split(',').map(Number) as [number, number];
  const measured = measures.find(({ stroke }) => stroke === index);
  const about = measured === undefined ? '' : `, ${Math.round(measured.length_m * 1000)} mm at ${measured.speed.mean_m_s.toFixed(2)} m/s`;
  return [
    `<g id="stroke-${index + 1}"><title>Stroke ${index + 1}${about}</title>`,
    `<polyline class="stroke" points="${corners(points, place).join(' ')}"/>`,
    `<polyline class="arrow" points="${corners(arrowPiece(points), place).join(' ')}"/>`,
    `<circle class="trigger" cx="${startX}" cy="${startY}" r="2.5"/>`,
    `<rect fill="#1f5a8c" x="${mm(endX - 2)}" y="${mm(endY - 2)}" width="4" height="4"/>`,
    `<text x="${startX}" y="${mm(Number(startY) - 4)}">${index + 1}</text></g>`,
  ];
}

/** The line without points that lie closer than `NEAR_mm` to the one kept before them; ends stay. */
function thinned(line: Float64Array): number[] {
  const kept: number[] = [];
  let [lastX, lastY] = [Infinity, Infinity];
  for (let i = 0; i + 1 < line.length; i += 2) {
    const [x, y] = [line[i] as number, line[i + 1] as number];
    const isEnd = i === 0 || i + 3 >= line.length;
    if (!isEnd && Math.hypot(x - lastX, y - lastY) * 1000 < NEAR_mm) continue;
    kept.push(x, y);
    [lastX, lastY] = [x, y];
  }
  return kept;
}

/** Two ends and the middle, by travel, of the piece of a line on which its arrow stands. */
function arrowPiece(line: readonly number[]): number[] {
  const far = lengthsAlong(line);
  const half = (far[far.length - 1] as number) / 2;
  const after = Math.max(1, far.findIndex((length) => length >= half));
  const [x0, y0, x1, y1] = line.slice(2 * after - 2, 2 * after + 2) as [number, number, number, number];
  const piece = (far[after] as number) - (far[after - 1] as number);
  const share = piece > 0 ? (half - (far[after - 1] as number)) / piece : 0.5;
  return [x0, y0, x0 + (x1 - x0) * share, y0 + (y1 - y0) * share, x1, y1];
}

/** Travel to each point of a line. */
function lengthsAlong(line: readonly number[]): number[] {
  const far = [0];
  for (let i = 2; i + 1 < line.length; i += 2) {
    const step = Math.hypot((line[i] as number) - (line[i - 2] as number), (line[i + 1] as number) - (line[i - 1] as number));
    far.push((far[far.length - 1] as number) + step);
  }
  return far;
}

function zoneMarks(zone: RimmedZone, grid: Grid, place: Placer): string[] {
  const [x = '', y = ''] = place(zone.at_m[0], zone.at_m[1]).split(',');
  const rims = zoneRim(zone.cells, grid).map((ring) => closedPath(ring, place));
  return [
    `<g><title>${escapeXml(zone.label)}</title><path class="zone ${zone.kind}" d="${rims.join(' ')}"/>`,
    `<text x="${x}" y="${y}">${escapeXml(zone.label)}</text></g>`,
  ];
}
