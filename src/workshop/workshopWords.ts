import { counted, type WorkshopSpec } from '../../sim/index.ts';
import type { FileContent } from './judgeContent.ts';
import type { JobRow, RestoreChoice, RestoreRow } from './planRestore.ts';
import type { DigestState, ReadWorkshop } from './readWorkshop.ts';

/** How a file stands to the manifest's digest. */
export const DIGEST_WORDS: Readonly<Record<DigestState, string>> = {
  fits: 'as it was exported',
  changed: 'changed since it was exported',
  'not-listed': 'not listed, so nothing tells whether it was changed',
  damaged: 'damaged: its check sum does not fit; look it through',
};

/** What a file is. */
export const KIND_WORDS: Readonly<Record<FileContent['kind'], string>> = { job: 'job', session: 'practice session', rubric: 'rubric' };

export const CHOICE_WORDS: Readonly<Record<RestoreChoice, string>> = { add: 'Add', copy: 'Add as copy', replace: 'Replace', skip: 'Leave out' };

/** One sentence on what the zip is. */
export function workshopSentence(file: string, { manifest, files }: Pick<ReadWorkshop, 'manifest' | 'files'>): string {
  const count = (kind: FileContent['kind']): number => files.filter(({ content }) => content.kind === kind).length;
  const holds = `${counted(count('job'), 'job')} and ${counted(count('session'), 'practice session')} that can be read`;
  return manifest === null ? `${file}: ${holds}.` : `${file}: a workshop exported ${whenWords(manifest)}, with ${holds}.`;
}

function whenWords({ made }: WorkshopSpec): string {
  return `${made.slice(0, 10)} at ${made.slice(11, 16)} UTC`;
}

/** How a row stands to what is here, in a sentence. */
export function stateWords(row: RestoreRow): string {
  if (row.kind === 'session') return row.state === 'new' ? 'Not here yet.' : row.state === 'same' ? 'Here already, the same.' : 'Here is another session under its id.';
  return `${jobStateWords(row)}${row.isByClock ? ' Told by the devices’ clocks alone, which may be wrong: both may have been changed.' : ''}${signedWords(row)}`;
}

/** What is signed here only; empty where nothing is. */
function signedWords({ notSignedSo: { entries, surveys } }: JobRow): string {
  const parts = [...(entries === 0 ? [] : [counted(entries, 'signed entry', 'signed entries')]), ...(surveys === 0 ? [] : [counted(surveys, 'signed survey')])];
  return parts.length === 0 ? '' : ` ${parts.join(' and ')} here ${entries + surveys === 1 ? 'is' : 'are'} not signed so in the zip.`;
}

function jobStateWords({ state, here }: JobRow): string {
  switch (state) {
    case 'new':
      return 'Not here yet.';
    case 'same':
      return 'Here already, the same.';
    case 'here-newer':
      return 'The one here is newer.';
    case 'zip-newer':
      return 'The one in the zip is newer.';
    case 'both-changed':
      return 'Both were changed since they were the same.';
    case 'unreadable':
      return `The one here (“${here?.name ?? ''}”) cannot be read, so nothing is compared.`;
  }
}

/** What a restore would do in all, by the choices made. */
export function planSentence(choices: readonly RestoreChoice[]): string {
  const count = (choice: RestoreChoice): number => choices.filter((each) => each === choice).length;
  const acts: Readonly<Record<RestoreChoice, string>> = { add: `add ${count('add')}`, copy: `add ${count('copy')} as ${count('copy') === 1 ? 'a copy' : 'copies'}`, replace: `replace ${count('replace')}`, skip: `leave ${count('skip')} out` };
  const parts = (['add', 'copy', 'replace', 'skip'] as const).filter((choice) => count(choice) > 0).map((choice) => acts[choice]);
  return parts.length === 0 ? 'Nothing to restore.' : `Restore would ${parts.join(', ')}. Nothing has been written yet.`;
}
