import { smallJob, type Job } from '../../../sim/index.ts';

/** Most letters of a job's name. */
const LONGEST_NAME = 200;

/** A small job to begin with: one panel, the usual gun, one coat. */
export function blankJob(): Job {
  return smallJob({
    name: 'New job',
    note: 'Usual values for gun, mix and strokes. Put in your part, your mix and your own test card.',
    part: 'Part',
    panel_mm: [900, 600],
    coat: { id: 'coat', name: 'First coat' },
  });
}

/**
 * A job once more as a plan: part, mixes, set-ups, coats and schemes stay, so that what was done last time can be done again; what was
 * really done (log, surveys, recorded strokes) is left out. A coat that a recording laid is laid by its plan.
 */
export function planAgain(job: Job): Job {
  const again: Job = { ...job, name: namedAfter(job.name, 'again'), recordings: [], coats: job.coats.map((coat) => without(coat, 'recording')) };
  return without(without(again, 'log'), 'surveys');
}

/** A record without one of the keys that it may do without. */
function without<T extends object, K extends keyof T>(record: T, key: K & (undefined extends T[K] ? K : never)): T {
  const rest = { ...record };
  delete rest[key];
  return rest;
}

/** A name with a word behind it, within what a name may have. */
export function namedAfter(name: string, word: string): string {
  return `${name.slice(0, LONGEST_NAME - word.length - 2)}, ${word}`;
}
