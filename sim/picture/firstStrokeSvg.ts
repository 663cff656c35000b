import type { Panel, Polygon } from '../panel/panel.ts';
import { escapeXml } from './strokesSvg.ts';

/** Aim lines of a coat's strokes in order, by pass: x0, y0, x1, y1, m. */
export interface AimedStroke {
  readonly pass: number;
  readonly line_m: readonly [number, number, number, number];
}

/** What a small picture of the strokes shows. */
export interface FirstStrokePicture {
  readonly title: string;
  readonly panel: Panel;
  readonly strokes: readonly AimedStroke[];
  /** Names the arrow within the page. */
  readonly id: string;
}

/** Sizes as shares of the panel's longer side, so that a picture of any panel reads alike on paper. */
const LETTER = 0.06;
const LINE = 0.003;
const MARGIN = 0.09;

/**
 * A small picture of a panel for the wall: outline and holes, all strokes as fine lines, the first stroke of each pass heavy with an
 * arrow in its direction and its letter, A then B. One user unit is one millimetre; the picture scales to its box.
 */
export function firstStrokeSvg({ title, panel, strokes, id }: FirstStrokePicture): string {
  const size_mm = 1000 * Math.max(panel.width_m, panel.height_m);
  const box = boxOf(panel, strokes, size_mm * MARGIN);
  const x = (x_m: number): string => fixed(1000 * x_m - box.left_mm);
  const y = (y_m: number): string => fixed(box.top_mm - 1000 * y_m);
  const ring = (points: Polygon): string => {
    const corners: string[] = [];
    for (let i = 0; i + 1 < points.length; i += 2) corners.push(`${x(points[i] as number)},${y(points[i + 1] as number)}`);
    return `M${corners.join(' L')} Z`;
  };
  const line = ({ line_m: [x0, y0, x1, y1] }: AimedStroke, more: string): string => `<line x1="${x(x0)}" y1="${y(y0)}" x2="${x(x1)}" y2="${y(y1)}" ${more}/>`;
  const passes = [...new Set(strokes.map(({ pass }) => pass))];
  const firsts = passes.map((pass) => strokes.find((stroke) => stroke.pass === pass) as AimedStroke);
  const letter_mm = size_mm * LETTER;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${fixed(box.width_mm)} ${fixed(box.height_mm)}" role="img" aria-label="${escapeXml(title)}">`,
    `<defs><marker id="${id}" viewBox="0 0 6 6" refX="5" refY="3" markerWidth="4" markerHeight="4" orient="auto"><path d="M0,0 L6,3 L0,6 Z" fill="#181818"/></marker></defs>`,
    `<path d="${[panel.outline, ...panel.holes].map(ring).join(' ')}" fill="none" stroke="#181818" stroke-width="${fixed(size_mm * LINE * 1.6)}"/>`,
    ...strokes.map((stroke) => line(stroke, `stroke="#6b6b6b" stroke-width="${fixed(size_mm * LINE)}"${stroke.pass > 0 ? ` stroke-dasharray="${fixed(size_mm * 0.012)}"` : ''}`)),
    ...firsts.flatMap((stroke, i) => [
      line(stroke, `stroke="#181818" stroke-width="${fixed(size_mm * LINE * 3)}" marker-end="url(#${id})"`),
      `<text x="${x(stroke.line_m[0])}" y="${y(stroke.line_m[1])}" dx="${fixed(-letter_mm * 0.35)}" dy="${fixed(-letter_mm * 0.35)}" font-size="${fixed(letter_mm)}" font-weight="700" font-family="sans-serif" fill="#181818">${String.fromCharCode(65 + i)}</text>`,
    ]),
    '</svg>',
  ].join('');
}

interface Box {
  readonly left_mm: number;
  readonly top_mm: number;
  readonly width_mm: number;
  readonly height_mm: number;
}

function boxOf(panel: Panel, strokes: readonly AimedStroke[], margin_mm: number): Box {
  const xs = [0, panel.width_m, ...strokes.flatMap(({ line_m }) => [line_m[0], line_m[2]])];
  const ys = [0, panel.height_m, ...strokes.flatMap(({ line_m }) => [line_m[1], line_m[3]])];
  const [left, right, bottom, top] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  return {
    left_mm: 1000 * left - margin_mm,
    top_mm: 1000 * top + margin_mm,
    width_mm: 1000 * (right - left) + 2 * margin_mm,
    height_mm: 1000 * (top - bottom) + 2 * margin_mm,
  };
}

/** A tenth of a millimetre is enough on paper. */
function fixed(value_mm: number): string {
  return String(Math.round(value_mm * 10) / 10);
}
