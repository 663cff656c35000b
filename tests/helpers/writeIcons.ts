import { mkdirSync, writeFileSync } from 'node:fs';
import { PNG } from 'pngjs';

/**
 * Draws the app's icon: three strokes across three, as a cross coat is laid, darker where they lie over each
 * other. Run it (`npx tsx tests/helpers/writeIcons.ts`) after a change of the drawing.
 */

const FOLDER = 'src/icons';
/** Side of the drawing that all lengths below are in. */
const SIDE = 96;
const PAPER = [247, 244, 236] as const;
const INK = [27, 34, 44] as const;
/** Share of the paper that one stroke hides. */
const HIDES = 0.55;
const STROKE_WIDTH = 14;

interface Bar {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Middles of the strokes of one pass, and where they begin and end: all inside the circle that every shape of a maskable icon shows. */
const MIDDLES = [26, 48, 70];
const [FROM, TO] = [17, 79];
const STROKES: readonly Bar[] = MIDDLES.flatMap((middle) => {
  const edge = middle - STROKE_WIDTH / 2;
  return [
    { x: FROM, y: edge, width: TO - FROM, height: STROKE_WIDTH },
    { x: edge, y: FROM, width: STROKE_WIDTH, height: TO - FROM },
  ];
});
/** Samples along each side of a pixel. */
const FINE = 4;

function svg(): string {
  const bars = STROKES.map(({ x, y, width, height }) => `<rect x="${x}" y="${y}" width="${width}" height="${height}" rx="${STROKE_WIDTH / 2}"/>`);
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${SIDE} ${SIDE}"><rect width="${SIDE}" height="${SIDE}" fill="rgb(${PAPER.join(',')})"/><g fill="rgb(${INK.join(',')})" fill-opacity="${HIDES}">${bars.join('')}</g></svg>\n`;
}

/** Whether a place lies in a bar with round ends. */
function isInside({ x, y, width, height }: Bar, atX: number, atY: number): boolean {
  const r = STROKE_WIDTH / 2;
  const nearX = Math.min(x + width - r, Math.max(x + r, atX));
  const nearY = Math.min(y + height - r, Math.max(y + r, atY));
  return (atX - nearX) ** 2 + (atY - nearY) ** 2 <= r * r;
}

/** Share of the paper that still shows at a place, mean over the samples of one pixel. */
function paperShare(column: number, row: number, perPixel: number): number {
  let sum = 0;
  for (let i = 0; i < FINE * FINE; i++) {
    const x = (column + ((i % FINE) + 0.5) / FINE) * perPixel;
    const y = (row + (Math.floor(i / FINE) + 0.5) / FINE) * perPixel;
    sum += (1 - HIDES) ** STROKES.filter((bar) => isInside(bar, x, y)).length;
  }
  return sum / FINE ** 2;
}

function png(side_px: number): Buffer {
  const picture = new PNG({ width: side_px, height: side_px });
  for (let row = 0; row < side_px; row++) {
    for (let column = 0; column < side_px; column++) {
      const share = paperShare(column, row, SIDE / side_px);
      const at = 4 * (row * side_px + column);
      PAPER.forEach((paper, i) => (picture.data[at + i] = Math.round(paper * share + (INK[i] ?? 0) * (1 - share))));
      picture.data[at + 3] = 255;
    }
  }
  return PNG.sync.write(picture, { colorType: 2 });
}

mkdirSync(FOLDER, { recursive: true });
writeFileSync(`${FOLDER}/icon.svg`, svg());
for (const side_px of [192, 512]) writeFileSync(`${FOLDER}/icon-${side_px}.png`, png(side_px));
