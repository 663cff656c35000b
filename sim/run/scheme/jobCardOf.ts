import { CrosscoatError } from '../../base/errors.ts';
import type { Job } from '../../job/schema.ts';
import type { JobCard } from '../../report/reportedCard.ts';
import type { PlannedScheme } from '../../scheme/planned.ts';
import { jobCard, type CardDays } from './jobCard.ts';
import { groundDays } from './planDays.ts';
import { planScheme, schemeOf } from './planScheme.ts';

/**
 * The job card of a whole job, or of one scheme: its schemes worked out, laid through the days where a start is known.
 * @throws CrosscoatError `not-found` for an unknown scheme or a job without one; what working them out throws.
 */
export function jobCardOf(job: Job, schemeId?: string): JobCard {
  const first = schemeOf(job, schemeId)[0];
  const ids = schemeId === undefined ? (job.schemes ?? []).map(({ id }) => id) : [first.id];
  const plans = ids.map((id) => planScheme(job, id));
  const { days, why } = daysOf(job, plans);
  return jobCard(job, plans, days, why);
}

/** Without a start there are no days, and the card still holds. */
function daysOf(job: Job, plans: readonly PlannedScheme[]): { readonly days: CardDays | null; readonly why: string } {
  try {
    const { base, air } = groundDays(job, plans);
    return { days: { timeline: base, temperature_K: (minute) => air.at(minute).temperature_K }, why: '' };
  } catch (thrown) {
    if (thrown instanceof CrosscoatError && (thrown.code === 'not-found' || thrown.code === 'time')) return { days: null, why: `No days are laid: ${thrown.message}` };
    throw thrown;
  }
}
