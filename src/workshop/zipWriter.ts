import { zipSync } from 'fflate';
import { ZIP_LIMITS } from './zipLimits.ts';
import { END_LENGTH, readEnd, readLocal } from './zipRecords.ts';

/** Years that the time stamp of a zip can hold; a clock may be wrong. */
const FIRST_YEAR = 1981;
const LAST_YEAR = 2098;

/** A zip that is written file by file. */
export interface ZipWriter {
  add(name: string, content: Uint8Array): void;
  /** The whole zip in pieces; nothing may be added afterwards. */
  end(): Uint8Array<ArrayBuffer>[];
}

/**
 * Writes a zip file by file, so that only packed bytes are held. Each file is packed by the package as a zip of its own and its two
 * records are taken over: the package's own streaming writer leaves sizes out of the heads, and without these the files of
 * a torn zip could not be found again. A file that shrinks as only a bomb does is stored as it is, so that our own reader takes it.
 */
export function zipWriter(made: Date): ZipWriter {
  const mtime = new Date(Math.min(Math.max(made.getTime() || 0, Date.UTC(FIRST_YEAR, 0)), Date.UTC(LAST_YEAR, 0)));
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  const directory: Uint8Array<ArrayBuffer>[] = [];
  let at = 0;
  return {
    add: (name, content) => {
      const one = packed(name, content, mtime);
      const start = readEnd(one)?.start ?? 0;
      const record = one.slice(start, one.length - END_LENGTH);
      new DataView(record.buffer).setUint32(42, at, true);
      pieces.push(one.subarray(0, start));
      directory.push(record);
      at += start;
    },
    end: () => [...pieces, ...directory, endRecord(directory, at)],
  };
}

function packed(name: string, content: Uint8Array, mtime: Date): Uint8Array<ArrayBuffer> {
  const deflated = zipSync({ [name]: content }, { level: 6, mtime });
  const length = readLocal(deflated, 0)?.packed ?? 0;
  const isTooGood = content.length > ZIP_LIMITS.freely && content.length > ZIP_LIMITS.ratio * length;
  return isTooGood ? zipSync({ [name]: content }, { level: 0, mtime }) : deflated;
}

function endRecord(directory: readonly Uint8Array[], start: number): Uint8Array<ArrayBuffer> {
  const record = zipSync({}).slice(0, END_LENGTH);
  const view = new DataView(record.buffer);
  view.setUint16(8, directory.length, true);
  view.setUint16(10, directory.length, true);
  view.setUint32(12, directory.reduce((sum, { length }) => sum + length, 0), true);
  view.setUint32(16, start, true);
  return record;
}
