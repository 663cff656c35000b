import { Inflate } from 'fflate';
import { CrosscoatError } from '../../sim/index.ts';
import { crc32 } from './crc32.ts';
import type { ZipEntry } from './listZip.ts';
import { ZIP_LIMITS, type ZipLimits } from './zipLimits.ts';

/** Packed bytes given to the unpacker at once: they become at most 1032 times as many before they are counted. */
const STEP = 4096;

/** Bytes that may still be unpacked in one go. */
export interface Budget {
  left: number;
}

/** A file unpacked. */
export interface Unpacked {
  readonly bytes: Uint8Array;
  /** Its check sum is the one that the zip states. */
  readonly isSound: boolean;
}

/**
 * Unpacks one file of a zip, counting as it goes: it stops at once where there is more than the head states, than a file may
 * have, than the budget leaves, or where it grows as only a bomb does.
 * @throws CrosscoatError `limit` for each of these; `schema` where the packed bytes are damaged or hold fewer bytes than stated.
 */
export function unpack(entry: ZipEntry, budget: Budget, limits: ZipLimits = ZIP_LIMITS): Unpacked {
  const pieces: Uint8Array[] = [];
  let length = 0;
  const take = (piece: Uint8Array): void => {
    length += piece.length;
    checkGrowth(entry, length, budget, limits);
    if (piece.length > 0) pieces.push(piece);
  };
  if (entry.method === 0) take(entry.bytes);
  else inflated(entry, take);
  if (length !== entry.unpacked) throw new CrosscoatError('schema', `${entry.name} unpacks to ${bytesWords(length)} and its head states ${bytesWords(entry.unpacked)}; the zip is damaged`, { file: entry.name });
  budget.left -= length;
  const bytes = joined(pieces, length);
  return { bytes, isSound: crc32(bytes) === entry.crc };
}

function inflated({ name, bytes }: ZipEntry, take: (piece: Uint8Array) => void): void {
  let refused: unknown = null;
  const stream = new Inflate((piece) => {
    try {
      take(piece);
    } catch (thrown) {
      refused = thrown;
    }
  });
  for (let at = 0; at < bytes.length || at === 0; at += STEP) {
    try {
      stream.push(bytes.subarray(at, at + STEP), at + STEP >= bytes.length);
    } catch (thrown) {
      throw new CrosscoatError('schema', `${name} cannot be unpacked (${thrown instanceof Error ? thrown.message : String(thrown)}); the zip is damaged there`, { file: name });
    }
    if (refused instanceof Error) throw refused;
  }
}

function checkGrowth({ name, bytes, unpacked }: ZipEntry, length: number, budget: Budget, limits: ZipLimits): void {
  const why = length > limits.file ? `is larger than ${bytesWords(limits.file)} when unpacked`
    : length > budget.left ? `brings what the zip unpacks to above ${bytesWords(limits.total)}`
      : length > limits.freely && length > limits.ratio * bytes.length ? `unpacks to more than ${limits.ratio} times its packed size`
        : length > unpacked ? `unpacks to more than the ${bytesWords(unpacked)} that its head states`
          : null;
  if (why !== null) throw new CrosscoatError('limit', `${name} ${why}; it was not read`, { file: name });
}

function joined(pieces: readonly Uint8Array[], length: number): Uint8Array {
  const [only] = pieces;
  if (only !== undefined && pieces.length === 1) return only;
  const whole = new Uint8Array(length);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}

function bytesWords(count: number): string {
  return count < 1e6 ? `${count} bytes` : `${Math.round(count / 1e6)} MB`;
}
