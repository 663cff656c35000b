import { PNG } from 'pngjs';
import { CrosscoatError } from '../../sim/index.ts';
import { writeFile } from './files.ts';
import type { Io } from './io.ts';

/** Pixels row by row from the top, four bytes each. */
export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8Array | Uint8ClampedArray;
}

/** Writes a picture as PNG. */
export async function writePng(io: Io, path: string, { width, height, rgba }: Pixels): Promise<void> {
  const png = new PNG({ width, height });
  png.data.set(rgba);
  await writeFile(io, path, [PNG.sync.write(png)]);
}

/** The picture of a PNG file. @throws `columns` where the bytes are none. */
export async function readPng(io: Io, path: string): Promise<Pixels & { readonly rgba: Uint8Array<ArrayBuffer> }> {
  const bytes = await io.bytes(path);
  checkStatedSize(bytes, path);
  try {
    const { width, height, data } = PNG.sync.read(Buffer.from(bytes));
    return { width, height, rgba: new Uint8Array(data) };
  } catch (error) {
    throw new CrosscoatError('columns', `${path}: not a PNG that can be read (${error instanceof Error ? error.message : String(error)}); save the photograph as PNG again`, { file: path });
  }
}

/** Where the header chunk (PNG, ISO/IEC 15948, 11.2.2) states the sides. */
const WIDTH_AT = 16;
const HEIGHT_AT = 20;
/** Most pixels that are decoded: what the reading of photographs takes. */
const MOST_PIXELS = 100e6;
/** Deflate makes at most so many bytes of one (RFC 1951: 258 of two bits); a pixel takes a bit at least. */
const MOST_BYTES_OF_ONE = 1032;

/** Before anything is decoded: a few bytes may say that they are gigabytes of picture. */
function checkStatedSize(bytes: Uint8Array, path: string): void {
  if (bytes.length < HEIGHT_AT + 4) return;
  const view = new DataView(bytes.buffer, bytes.byteOffset);
  const [width, height] = [view.getUint32(WIDTH_AT), view.getUint32(HEIGHT_AT)];
  if (width * height > MOST_PIXELS) throw new CrosscoatError('limit', `${path}: ${width} × ${height} pixels are more than ${MOST_PIXELS / 1e6} million; give a smaller copy`, { file: path });
  if ((width * height) / 8 > bytes.length * MOST_BYTES_OF_ONE) {
    throw new CrosscoatError('columns', `${path}: says it has ${width} × ${height} pixels, more than its ${bytes.length} bytes can hold; it was cut or changed: save the photograph as PNG again`, { file: path });
  }
}
