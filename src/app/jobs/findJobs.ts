import { counted } from '../../../sim/index.ts';
import type { JobHead } from '../../storage/jobs.ts';
import { foldedText } from '../../workshop/fileStem.ts';

/** A job with what is looked for in it, made once for each list. */
export interface FindableJob {
  readonly head: JobHead;
  readonly text: string;
}

/** What can be looked for in a job's head: its name, its part, its number of coats, its day. Case and accents do not count. */
export function findable(heads: readonly JobHead[]): readonly FindableJob[] {
  return heads.map((head) => ({ head, text: foldedText(`${head.name} ${head.part} ${counted(head.coats, 'coat')} ${head.changedAt.slice(0, 10)}`) }));
}

/** The jobs in which every word of the search stands somewhere, in their order. */
export function findJobs(jobs: readonly FindableJob[], search: string): readonly JobHead[] {
  const words = foldedText(search).split(/\s+/).filter((word) => word !== '');
  return jobs.filter(({ text }) => words.every((word) => text.includes(word))).map(({ head }) => head);
}
