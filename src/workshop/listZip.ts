import { CrosscoatError } from '../../sim/index.ts';
import { ZIP_LIMITS, type ZipLimits } from './zipLimits.ts';
import { CENTRAL_LENGTH, ENCRYPTED, readCentral, readEnd, readLocal, SIZES_BEHIND, type ZipRecord } from './zipRecords.ts';

/** A file of a zip that may be unpacked. */
export interface ZipEntry {
  readonly name: string;
  readonly method: 0 | 8;
  readonly crc: number;
  /** Bytes that its head states: nobody believes them before they are counted. */
  readonly unpacked: number;
  /** Its packed bytes, a view into the zip. */
  readonly bytes: Uint8Array;
}

/** A file of a zip that is not unpacked, and why. */
export interface RefusedEntry {
  readonly name: string;
  readonly why: string;
}

/** What a zip holds, by its directory, or by the heads of its files where the directory is gone. */
export interface ListedZip {
  readonly entries: readonly ZipEntry[];
  readonly refused: readonly RefusedEntry[];
  /** The zip is cut short or its directory is damaged: what of it, in words. Null for a whole one. */
  readonly torn: string | null;
}

/** What takes a job file, as the app says it. */
const WITH_OPEN = 'with Open';

/**
 * Lists a zip without unpacking any of it. Folders are left out. A file whose name climbs out of the zip, that is encrypted, packed
 * by another method, a zip itself, or that shares bytes with another is refused by name, and the others still stand.
 * @param forJobs what takes a job file that was given by mistake, in the words of the shell.
 * @throws CrosscoatError `limit` for too many bytes or files; `schema` for what is no zip, or one of many disks.
 */
export function listZip(bytes: Uint8Array, file: string, limits: ZipLimits = ZIP_LIMITS, forJobs = WITH_OPEN): ListedZip {
  checkLimit(file, 'bytes', bytes.length, limits.zip, 'give a zip that Crosscoat wrote');
  const end = readEnd(bytes);
  if (end?.isOther === true) throw new CrosscoatError('schema', `${file} is a zip of several disks, or of more than 65,535 files or 4 GB, which is not read; unpack it and open its files one by one`, { file });
  const directory = end === null ? null : readDirectory(bytes, end, file, limits);
  if (directory !== null && directory.isWhole) return { ...judged(bytes, directory.records), torn: null };
  const records = walked(bytes, file, limits);
  if (records.length === 0 && directory === null) throw new CrosscoatError('schema', `${file} is no zip; give the file that “Export all” wrote, or a job file (JSON) ${forJobs}`, { file });
  const found = judged(bytes, records);
  return { ...found, torn: `The zip is ${end === null ? 'cut short' : 'damaged'}: its directory is gone. ${found.entries.length} ${found.entries.length === 1 ? 'file was' : 'files were'} found whole before that.` };
}

function checkLimit(file: string, what: string, found: number, most: number, advice: string): void {
  if (found <= most) return;
  throw new CrosscoatError('limit', `${file} has ${found.toLocaleString('en')} ${what}, more than ${most.toLocaleString('en')}; ${advice}`, { file });
}

function readDirectory(bytes: Uint8Array, end: { readonly files: number; readonly length: number; readonly start: number }, file: string, limits: ZipLimits): { readonly records: readonly ZipRecord[]; readonly isWhole: boolean } {
  checkLimit(file, 'files', end.files, limits.files, 'give a zip that Crosscoat wrote');
  const records: ZipRecord[] = [];
  let at = end.start;
  while (records.length < end.files) {
    const record = readCentral(bytes, at);
    if (record === null) break;
    records.push(record);
    at = record.next;
  }
  // A directory that goes on behind its stated count would let two readers see two different zips.
  return { records, isWhole: records.length === end.files && at === end.start + end.length && (end.files > 0 || end.length < CENTRAL_LENGTH) };
}

/** The files of a zip whose directory is gone, one head after the other, as far as they are whole. */
function walked(bytes: Uint8Array, file: string, limits: ZipLimits): readonly ZipRecord[] {
  const records: ZipRecord[] = [];
  let local = readLocal(bytes, 0);
  while (local !== null && (local.flags & SIZES_BEHIND) === 0 && local.next <= bytes.length) {
    records.push(local);
    checkLimit(file, 'files', records.length, limits.files, 'give a zip that Crosscoat wrote');
    local = readLocal(bytes, local.next);
  }
  return records;
}

function judged(bytes: Uint8Array, records: readonly ZipRecord[]): Omit<ListedZip, 'torn'> {
  const entries: ZipEntry[] = [];
  const refused: RefusedEntry[] = [];
  const names = new Set<string>();
  let taken = 0;
  // In the order in which they lie, so that one that shares bytes with the file before it is seen.
  for (const record of [...records].sort((a, b) => a.at - b.at)) {
    if (record.name.endsWith('/') && record.unpacked === 0) continue;
    const local = readLocal(bytes, record.at);
    const why = refusal(record) ?? (names.has(record.name) ? 'its name stands twice in the zip; the first one is taken' : null) ?? placeRefusal(bytes, record, local, taken);
    names.add(record.name);
    if (why !== null || local === null) {
      refused.push({ name: shownName(record.name), why: why ?? 'its head is damaged' });
      continue;
    }
    taken = local.data + record.packed;
    entries.push({ name: record.name, method: record.method as 0 | 8, crc: record.crc, unpacked: record.unpacked, bytes: bytes.subarray(local.data, taken) });
  }
  return { entries, refused };
}

/** Why a file is not unpacked, by its record alone. */
function refusal({ name, flags, method }: ZipRecord): string | null {
  if (climbs(name)) return 'its name leads out of the zip';
  if ((flags & ENCRYPTED) !== 0) return 'it is encrypted; unpack it with its password and open the file';
  if (method !== 0 && method !== 8) return `it is packed by method ${method}, and only stored (0) and deflated (8) files are read; unpack it and open the file`;
  if (/\.(zip|gz|7z|rar|tar)$/i.test(name)) return 'an archive within the archive is not followed; open it by itself';
  return null;
}

/** Absolute, upward, or with signs that a file system would take for a path of another kind. */
function climbs(name: string): boolean {
  return name === '' || /^[/~]|[\\:\u0000-\u001f\u007f]|(^|\/)\.\.?(\/|$)/.test(name);
}

function placeRefusal(bytes: Uint8Array, record: ZipRecord, local: ReturnType<typeof readLocal>, taken: number): string | null {
  if (local === null || local.name !== record.name) return 'its own head is not where the directory says, or has another name';
  if (record.at < taken) return 'it shares bytes with the file before it';
  if (local.data + record.packed > bytes.length) return 'its end is cut off';
  return null;
}

/** A name for messages: short, and with nothing in it that a terminal would obey. */
function shownName(name: string): string {
  const plain = name.replaceAll(/[\u0000-\u001f\u007f-\u009f\u200e\u200f\u202a-\u202e\u2066-\u2069]/g, '?');
  return plain.length <= 100 ? plain : `${plain.slice(0, 99)}…`;
}
