/**
 * Records of a zip (PKWARE APPNOTE.TXT 6.3, sections 4.3.7, 4.3.12, 4.3.16), read from the file's bytes; numbers are little-endian.
 * Only what a reader must know before it unpacks.
 */

export const LOCAL_LENGTH = 30;
export const CENTRAL_LENGTH = 46;
export const END_LENGTH = 22;
const LONGEST_COMMENT = 65535;

const LOCAL = 0x04034b50;
const CENTRAL = 0x02014b50;
const END = 0x06054b50;

/** Bits of the general purpose flag. */
export const ENCRYPTED = 1;
export const SIZES_BEHIND = 8;
const UTF8 = 0x800;

/** What a zip says of one of its files. */
export interface ZipRecord {
  readonly name: string;
  readonly flags: number;
  /** 0 stored, 8 deflated. */
  readonly method: number;
  readonly crc: number;
  readonly packed: number;
  readonly unpacked: number;
  /** Where the file's own head begins. */
  readonly at: number;
  /** Where the next record begins. */
  readonly next: number;
}

/** Where the directory is, by the record at the end. */
export interface ZipEnd {
  readonly files: number;
  readonly length: number;
  readonly start: number;
  /** More than one disk, or the larger kind of zip (more than 65,535 files or 4 GB). */
  readonly isOther: boolean;
}

/** The record at the end; null where there is none, as in a file cut short. */
export function readEnd(bytes: Uint8Array): ZipEnd | null {
  const view = viewOf(bytes);
  const first = Math.max(0, bytes.length - END_LENGTH - LONGEST_COMMENT);
  for (let at = bytes.length - END_LENGTH; at >= first; at--) {
    if (view.getUint32(at, true) !== END) continue;
    const [disk, files, length, start] = [view.getUint16(at + 4, true), view.getUint16(at + 10, true), view.getUint32(at + 12, true), view.getUint32(at + 16, true)];
    return { files, length, start, isOther: disk !== 0 || files === 0xffff || start === 0xffffffff };
  }
  return null;
}

/** A record of the directory; null where none begins there. */
export function readCentral(bytes: Uint8Array, at: number): ZipRecord | null {
  if (at < 0 || at + CENTRAL_LENGTH > bytes.length) return null;
  const view = viewOf(bytes);
  if (view.getUint32(at, true) !== CENTRAL) return null;
  const [name, extra, comment] = [view.getUint16(at + 28, true), view.getUint16(at + 30, true), view.getUint16(at + 32, true)];
  const next = at + CENTRAL_LENGTH + name + extra + comment;
  if (next > bytes.length) return null;
  const flags = view.getUint16(at + 8, true);
  return {
    name: nameOf(bytes.subarray(at + CENTRAL_LENGTH, at + CENTRAL_LENGTH + name), flags),
    flags,
    method: view.getUint16(at + 10, true),
    crc: view.getUint32(at + 16, true),
    packed: view.getUint32(at + 20, true),
    unpacked: view.getUint32(at + 24, true),
    at: view.getUint32(at + 42, true),
    next,
  };
}

/** A file's own head, in front of its bytes, which begin at `data`; null where none begins there. `next` is where the bytes end, if `packed` is true. */
export function readLocal(bytes: Uint8Array, at: number): (ZipRecord & { readonly data: number }) | null {
  if (at < 0 || at + LOCAL_LENGTH > bytes.length) return null;
  const view = viewOf(bytes);
  if (view.getUint32(at, true) !== LOCAL) return null;
  const [flags, name, extra] = [view.getUint16(at + 6, true), view.getUint16(at + 26, true), view.getUint16(at + 28, true)];
  const data = at + LOCAL_LENGTH + name + extra;
  const packed = view.getUint32(at + 18, true);
  return {
    name: nameOf(bytes.subarray(at + LOCAL_LENGTH, at + LOCAL_LENGTH + name), flags),
    flags,
    method: view.getUint16(at + 8, true),
    crc: view.getUint32(at + 14, true),
    packed,
    unpacked: view.getUint32(at + 22, true),
    at,
    data,
    next: data + packed,
  };
}

function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

/** UTF-8 where the flag says so, and otherwise read byte by byte: only names of our own making are looked for. */
function nameOf(bytes: Uint8Array, flags: number): string {
  return (flags & UTF8) !== 0 ? new TextDecoder().decode(bytes) : Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
}
