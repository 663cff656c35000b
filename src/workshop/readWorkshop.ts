import { CrosscoatError, parseWorkshop, WORKSHOP_MANIFEST, type ListedJobSpec, type ListedSessionSpec, type WorkshopSpec } from '../../sim/index.ts';
import { judgeContent, messageOf, textIn, type FileContent } from './judgeContent.ts';
import { listZip, type ZipEntry } from './listZip.ts';
import { unpack, type Budget, type Unpacked } from './unpack.ts';
import { ZIP_LIMITS, type ZipLimits } from './zipLimits.ts';

/** How a file of the zip stands to the digest that the manifest lists. `damaged`: the zip's own check sum does not fit. */
export type DigestState = 'fits' | 'changed' | 'not-listed' | 'damaged';

/** A file of a workshop, read. */
export interface WorkshopFile {
  /** As it is named in the zip. */
  readonly name: string;
  readonly digest: DigestState;
  /** SHA-256 of its bytes. */
  readonly sha256: string;
  readonly listed: ListedJobSpec | ListedSessionSpec | null;
  readonly content: FileContent;
}

/** A file that is not taken, and why. */
export interface LeftOut {
  readonly name: string;
  readonly why: string;
}

/** A workshop's zip, looked through: every file judged on its own. Contents are not held; `content` reads one again. */
export interface ReadWorkshop {
  readonly manifest: WorkshopSpec | null;
  /** Why there is no manifest, or what is torn; in sentences. */
  readonly doubts: readonly string[];
  readonly files: readonly WorkshopFile[];
  readonly leftOut: readonly LeftOut[];
  /** A file's text once more. @throws CrosscoatError as unpacking does. */
  readonly text: (name: string) => string;
}

/** Told before each file, and waited for, so that a page stays awake. */
export type EachFile = (done: number, of: number) => Promise<void> | void;

/**
 * Looks through a workshop's zip, or any zip of jobs and sessions. One bad file spoils no other; nothing is written.
 * @param forJobs as for `listZip`.
 * @throws CrosscoatError `schema` for what is no zip, `limit` for one that is too large or has too many files.
 */
export async function readWorkshop(bytes: Uint8Array, file: string, each: EachFile = () => undefined, limits: ZipLimits = ZIP_LIMITS, forJobs?: string): Promise<ReadWorkshop> {
  const zip = listZip(bytes, file, limits, forJobs);
  const budget: Budget = { left: limits.total };
  const entries = new Map(zip.entries.map((entry) => [entry.name, entry]));
  const head = manifestOf(zip.entries, budget, limits);
  const listed = listedFiles(head.manifest, head.folder);
  const files: WorkshopFile[] = [];
  const leftOut: LeftOut[] = [...zip.refused];
  const wanted = zip.entries.filter(({ name }) => isWanted(name, head.folder));
  for (const [done, entry] of wanted.entries()) {
    await each(done, wanted.length);
    const read = readFile(entry, listed.get(entry.name) ?? null, budget, limits);
    if ('why' in read) leftOut.push(read);
    else files.push(read);
  }
  for (const [name, { name: words }] of listed) {
    if (!entries.has(name) && !zip.refused.some((each) => each.name === name)) leftOut.push({ name, why: `the manifest lists it (${words}), and it is not in the zip` });
  }
  leftOut.push(...zip.entries.filter(({ name }) => isStray(name, head.folder)).map(({ name }) => ({ name, why: 'it is no JSON file; open it by itself' })));
  return {
    manifest: head.manifest,
    doubts: [...(zip.torn === null ? [] : [zip.torn]), ...head.doubts],
    files,
    leftOut,
    text: (name) => textOf(entries.get(name), limits),
  };
}

/** The manifest nearest the top; a zip that was packed again may hold the whole in a folder. */
function manifestOf(entries: readonly ZipEntry[], budget: Budget, limits: ZipLimits): { readonly manifest: WorkshopSpec | null; readonly folder: string; readonly doubts: readonly string[] } {
  const [entry] = entries.filter(({ name }) => name === WORKSHOP_MANIFEST || name.endsWith(`/${WORKSHOP_MANIFEST}`)).sort((a, b) => a.name.length - b.name.length);
  if (entry === undefined) return { manifest: null, folder: '', doubts: ['There is no manifest (workshop.json), so nothing tells whether a file was changed, or which job here it was. What can be read is offered as new.'] };
  const folder = entry.name.slice(0, -WORKSHOP_MANIFEST.length);
  try {
    const { bytes, isSound } = unpack(entry, budget, limits);
    const manifest = parseWorkshop(textIn(bytes, entry.name), entry.name);
    return { manifest, folder, doubts: isSound ? [] : ['The manifest is damaged in the zip (its check sum does not fit): what it says of the files may be wrong.'] };
  } catch (thrown) {
    return { manifest: null, folder, doubts: [`The manifest cannot be read, so nothing tells whether a file was changed. ${messageOf(thrown)}.`] };
  }
}

/** A file as the manifest lists it; the rubric has no name of its own. */
interface Listed {
  readonly sha256: string;
  readonly name: string;
  readonly spec: ListedJobSpec | ListedSessionSpec | null;
}

/** What the manifest lists, by its name in the zip. */
function listedFiles(manifest: WorkshopSpec | null, folder: string): ReadonlyMap<string, Listed> {
  const listed = new Map<string, Listed>();
  for (const spec of [...(manifest?.jobs ?? []), ...(manifest?.sessions ?? [])]) listed.set(folder + spec.file, { sha256: spec.sha256, name: spec.name, spec });
  if (manifest?.rubric !== undefined) listed.set(folder + manifest.rubric.file, { sha256: manifest.rubric.sha256, name: 'the rubric', spec: null });
  return listed;
}

function readFile(entry: ZipEntry, listed: Listed | null, budget: Budget, limits: ZipLimits): WorkshopFile | LeftOut {
  let unpacked: Unpacked;
  try {
    unpacked = unpack(entry, budget, limits);
  } catch (thrown) {
    return { name: entry.name, why: messageOf(thrown) };
  }
  const judged = judgeContent(unpacked.bytes, entry.name);
  if ('why' in judged) return { name: entry.name, why: judged.why };
  const { sha256, content } = judged;
  const digest: DigestState = !unpacked.isSound ? 'damaged' : listed === null ? 'not-listed' : listed.sha256 === sha256 ? 'fits' : 'changed';
  return { name: entry.name, digest, sha256, listed: listed?.spec ?? null, content };
}

/** What systems leave in zips by themselves. */
const NOISE = /(^|\/)(__MACOSX\/|\.DS_Store$|Thumbs\.db$|desktop\.ini$|\._)/i;

function isWanted(name: string, folder: string): boolean {
  return /\.json$/i.test(name) && !NOISE.test(name) && name !== folder + WORKSHOP_MANIFEST;
}

function isStray(name: string, folder: string): boolean {
  return !/\.json$/i.test(name) && !NOISE.test(name) && name !== `${folder}README.txt`;
}

function textOf(entry: ZipEntry | undefined, limits: ZipLimits): string {
  if (entry === undefined) throw new CrosscoatError('not-found', 'the file is not in the zip');
  return textIn(unpack(entry, { left: limits.total }, limits).bytes, entry.name);
}
