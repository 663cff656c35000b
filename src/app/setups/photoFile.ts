import { CrosscoatError } from '../../../sim/index.ts';

/** A photograph as pixels that can be read again and again, and shown. */
export interface OpenPhoto {
  readonly name: string;
  readonly canvas: HTMLCanvasElement;
}

/** Larger files are refused before they are decoded. */
const MOST_BYTES = 20e6;

/** Larger pictures are scaled down: readings need some hundred pixels across the fan, a phone gives thousands. */
const MOST_PIXELS = 12e6;

/** Fewer pixels along a side show no fan. */
const LEAST_SIDE_PX = 64;

/** Whether a file is meant as a photograph. */
export function isPhoto({ name, type }: Pick<File, 'name' | 'type'>): boolean {
  return /^image\//.test(type) || /\.(?:png|jpe?g|webp|heic|gif|tiff?|bmp)$/i.test(name);
}

/** Refuses what cannot be read as a photograph, before it is decoded. @throws CrosscoatError `limit` or `schema`. */
export function checkPhotoFile({ name, type, size }: Pick<File, 'name' | 'type' | 'size'>): void {
  if (!/^image\/(?:png|jpeg)$/.test(type)) {
    throw new CrosscoatError('schema', `${name} is no PNG or JPEG (it says ${type === '' ? 'nothing of its kind' : type}); save the photograph as one of these`, { file: name });
  }
  if (!(size <= MOST_BYTES)) {
    throw new CrosscoatError('limit', `${name} has ${(size / 1e6).toFixed(1)} MB, more than ${MOST_BYTES / 1e6} MB; crop it to the card, or save it smaller`, { file: name });
  }
}

/** The size at which a picture is kept: its own, or scaled down in proportion. @throws CrosscoatError `limit` for a sliver. */
export function keptSize(width_px: number, height_px: number, name: string): readonly [width_px: number, height_px: number] {
  const scale = Math.min(1, Math.sqrt(MOST_PIXELS / (width_px * height_px)));
  const size = [Math.floor(width_px * scale), Math.floor(height_px * scale)] as const;
  if (!(Math.min(...size) >= LEAST_SIDE_PX)) {
    throw new CrosscoatError('limit', `${name} is ${width_px} × ${height_px} px, less than ${LEAST_SIDE_PX} px along a side; take the photograph from nearer`, { file: name });
  }
  return size;
}

/** Decodes a photograph in the page; it goes nowhere else. @throws CrosscoatError for a file that is none, or too large. */
export async function openPhoto(file: File): Promise<OpenPhoto> {
  checkPhotoFile(file);
  const bitmap = await decoded(file);
  const [width, height] = keptSize(bitmap.width, bitmap.height, file.name);
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (context === null) throw new CrosscoatError('limit', `${file.name}: this browser has no room for a picture of ${width} × ${height} px; save it smaller`, { file: file.name });
  // Clear places of a cut-out picture are read as bare paper, not as black.
  context.fillStyle = '#fff';
  context.fillRect(0, 0, width, height);
  context.imageSmoothingQuality = 'high';
  context.drawImage(bitmap, 0, 0, width, height);
  bitmap.close();
  return { name: file.name, canvas };
}

async function decoded(file: File): Promise<ImageBitmap> {
  try {
    return await createImageBitmap(file);
  } catch {
    throw new CrosscoatError('schema', `${file.name} could not be decoded as a picture (it may be cut short); save it once more as PNG or JPEG`, { file: file.name });
  }
}

/** A copy of the photograph's pixels, to be handed to a worker. */
export function photoPixels({ canvas }: OpenPhoto): Uint8ClampedArray<ArrayBuffer> {
  const context = canvas.getContext('2d', { willReadFrequently: true }) as CanvasRenderingContext2D;
  return context.getImageData(0, 0, canvas.width, canvas.height).data;
}
