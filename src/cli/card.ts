import { cardJson, cardText, CrosscoatError, fanFaults, fitFan, fitIntervals, parseReadings, readPhoto, type CardReadings, type PhotoFan, type PhotoTask, type ReportedCard, type UnitSystem } from '../../sim/index.ts';
import { EXIT } from './exitCodes.ts';
import { checkFile, checkSize } from './files.ts';
import type { Io } from './io.ts';
import { quantityOf, seedOf, type TypedQuantity } from './optionValues.ts';
import { readPng } from './pngFile.ts';
import { readText, type TextFile } from './readText.ts';

/** Options of `crosscoat card` as commander gives them. */
export interface CardOptions {
  readonly size?: string;
  readonly corners?: string;
  readonly kind: 'burst' | 'stroke';
  readonly along: 'x' | 'y';
  readonly seed: string;
  readonly units: UnitSystem;
  readonly json?: true;
}

const READINGS: TextFile = { what: 'card', mostBytes: 1e6, advice: 'a card has a few dozen readings' };
const MOST_PHOTO_BYTES = 60e6;

/** Fits the fan of a test card, from readings (CSV) or a photograph (PNG). @returns the exit code. */
export async function card(io: Io, path: string, options: CardOptions): Promise<number> {
  const photo = /\.png$/i.test(path) ? await photoOf(io, path, options) : null;
  if (photo === null && /\.(jpe?g|webp|heic)$/i.test(path)) throw new CrosscoatError('columns', `${path}: only PNG photographs are read here; save it as PNG, or open it in the app`, { file: path });
  const read = reported(photo?.readings ?? parseReadings(await readText(io, path, READINGS), path), photo, seedOf(options.seed));
  await io.out(options.json === true ? `${JSON.stringify(cardJson(read), null, 2)}\n` : cardText(read, options.units));
  return EXIT.done;
}

function reported(readings: CardReadings, photo: PhotoFan | null, seed: number): ReportedCard {
  const fits = fitFan(readings);
  const [chosen] = fits.fits;
  if (chosen === undefined) throw new CrosscoatError('range', 'card: too few readings for any family of fans; read more places across the fan');
  return { fits, chosen, intervals: fitIntervals(readings, chosen.family, seed), spot: photo?.spot ?? null, faults: fanFaults(fits, seed, photo?.spot), warnings: [...fits.warnings, ...(photo?.warnings ?? [])] };
}

async function photoOf(io: Io, path: string, options: CardOptions): Promise<PhotoFan> {
  checkSize(path, (await checkFile(io, path, 'photograph')).bytes, MOST_PHOTO_BYTES, 'save the photograph smaller');
  if (options.size === undefined) throw new CrosscoatError('unit', `--size is missing: a photograph does not say how large the card is; give the width and height of what --corners span (the whole picture without it), such as 420mmx297mm`);
  const picture = await readPng(io, path);
  const corners = options.corners === undefined ? {} : { corners: cornersOf(options.corners) };
  const task: PhotoTask = { size_m: sizeOf(options.size), kind: options.kind, ...(options.kind === 'stroke' ? { strokeAlong: options.along } : {}), ...corners };
  return readPhoto(picture, task);
}

const SIDE: TypedQuantity = ['length', 'mm', '420mmx297mm'];

function sizeOf(text: string): readonly [number, number] {
  const sides = text.split(/\s*[x×]\s*/);
  if (sides.length !== 2) throw new CrosscoatError('unit', `--size = "${text}" has no two sides; give width and height, such as 420mmx297mm`);
  return [quantityOf('--size', sides[0] as string, SIDE), quantityOf('--size', sides[1] as string, SIDE)];
}

/** `x,y` in pixels from the upper left: lower left, lower right, upper right, upper left. */
function cornersOf(text: string): NonNullable<PhotoTask['corners']> {
  const numbers = text.split(/[\s,;]+/).filter((part) => part !== '').map(Number);
  if (numbers.length !== 8 || !numbers.every(Number.isFinite)) {
    throw new CrosscoatError('unit', `--corners = "${text}" are not eight numbers; give x,y in pixels of the lower left, lower right, upper right and upper left corner, from the picture's upper left`);
  }
  const [a, b, c, d, e, f, g, h] = numbers as [number, number, number, number, number, number, number, number];
  return [[a, b], [c, d], [e, f], [g, h]];
}
