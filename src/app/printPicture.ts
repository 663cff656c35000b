import { filmPicture, shownUnit } from '../../sim/index.ts';
import { reported } from './reported.ts';
import { laidField } from './scene.ts';
import { state } from './state.ts';

const PAPER: readonly [number, number, number, number] = [255, 255, 255, 255];

/** Draws the map of the film as laid for paper, zones hatched; at once, since printing does not wait. */
export function drawMap(canvas: HTMLCanvasElement | null): void {
  const coat = reported.peek();
  const now = laidField.peek();
  if (canvas === null || coat === null || now === null) return;
  const { name, size } = shownUnit('film', state.units.peek());
  const picture = filmPicture(now, coat.setting.panelGrid, {
    pixelsPerCell: 2,
    background: PAPER,
    zones: coat.verdict.faults.flatMap(({ kind, zones }) => zones.map(({ cells }) => ({ kind, cells }))),
    thickness: { name, metres: size },
  });
  canvas.width = picture.width;
  canvas.height = picture.height;
  const pixels = new ImageData(new Uint8ClampedArray(picture.rgba), picture.width, picture.height);
  canvas.getContext('2d')?.putImageData(pixels, 0, 0);
}
