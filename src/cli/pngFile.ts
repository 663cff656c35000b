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
  try {
    const { width, height, data } = PNG.sync.read(Buffer.from(bytes));
    return { width, height, rgba: new Uint8Array(data) };
  } catch (error) {
    throw new CrosscoatError('columns', `${path}: not a PNG that can be read (${error instanceof Error ? error.message : String(error)}); save the photograph as PNG again`, { file: path });
  }
}
