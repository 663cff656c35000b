import { basename } from 'node:path';
import { counted, textTable } from '../../sim/index.ts';
import { readWorkshop, type DigestState, type ReadWorkshop, type WorkshopFile } from '../workshop/readWorkshop.ts';
import { DIGEST_WORDS, KIND_WORDS, workshopSentence } from '../workshop/workshopWords.ts';
import { ZIP_LIMITS } from '../workshop/zipLimits.ts';
import { EXIT } from './exitCodes.ts';
import { checkFile, checkSize } from './files.ts';
import type { Io } from './io.ts';

/** Options of `crosscoat workshop` as commander gives them. */
export interface WorkshopOptions {
  readonly strict?: true;
  readonly json?: true;
}

/** Lists and checks a workshop's zip without the app. @returns the exit code. */
export async function workshop(io: Io, path: string, options: WorkshopOptions): Promise<number> {
  const { bytes } = await checkFile(io, path, 'zip');
  checkSize(path, bytes, ZIP_LIMITS.zip, 'give a zip that Crosscoat wrote');
  const read = await readWorkshop(await io.bytes(path), basename(path), undefined, ZIP_LIMITS, 'to crosscoat spray');
  await io.out(options.json === true ? `${JSON.stringify(workshopJson(read), null, 2)}\n` : workshopText(basename(path), read));
  return options.strict === true && isDoubtful(read) ? EXIT.faults : EXIT.done;
}

/** Only what is known to be as it was exported is beyond doubt. */
function isDoubtful({ files, leftOut, doubts }: ReadWorkshop): boolean {
  return doubts.length > 0 || leftOut.length > 0 || files.some(({ digest }) => digest !== 'fits');
}

function workshopText(name: string, read: ReadWorkshop): string {
  const rows = read.files.map((file) => [file.name, KIND_WORDS[file.content.kind], `"${titleOf(file)}"`, DIGEST_WORDS[file.digest]]);
  const lines = [
    workshopSentence(name, read),
    ...read.doubts,
    ...(rows.length === 0 ? [] : ['', ...textTable(rows)]),
    ...(read.leftOut.length === 0 ? [] : ['', 'Not read:', ...read.leftOut.map(({ name: file, why }) => `- ${file}: ${why}`)]),
    '',
    `${closing(read)} Nothing was written.`,
  ];
  return `${lines.join('\n')}\n`;
}

/** How many files stand how, in one sentence. */
function closing({ files, leftOut }: ReadWorkshop): string {
  const count = (...states: readonly DigestState[]): string => String(files.filter(({ digest }) => states.includes(digest)).length || 'none');
  const states = files.length === 0 ? '' : `: ${count('fits')} as it was exported, ${count('changed', 'damaged')} changed or damaged, ${count('not-listed')} not listed`;
  return `${counted(files.length, 'file')} read${states}; ${leftOut.length || 'none'} not read.`;
}

function titleOf({ content }: WorkshopFile): string {
  return content.kind === 'session' ? [content.trainee, content.title].filter((part) => part !== '').join(', ') : content.name;
}

function workshopJson({ manifest, doubts, files, leftOut }: ReadWorkshop): object {
  return {
    made: manifest?.made ?? null,
    doubts,
    files: files.map(({ name, digest, sha256, listed, content }) => ({ file: name, kind: content.kind, id: listed?.id ?? null, name: content.name, digest, sha256 })),
    leftOut,
  };
}
