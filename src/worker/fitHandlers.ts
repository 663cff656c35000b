import { workOut } from '../../sim/index.ts';
import type { Handlers } from './serve.ts';

/** What the worker does for a wish. Nothing is kept. */
export function makeFitHandlers(): Pick<Handlers, 'workOut'> {
  return {
    workOut: ({ job, coat, wish }) => {
      const fit = workOut(job, coat, wish);
      return Promise.resolve({ reply: { fit, jobs: fit.proposals.map((proposal) => proposal.job) } });
    },
  };
}
