import { hingeBalances, jobCardOf, jobCardPage, jobCardText, planScheme, schemeSolvent } from '../../sim/index.ts';
import type { Handlers } from './serve.ts';

/** What the worker does for the sheets of the scheme. Nothing is kept. */
export function makeSchemeHandlers(): Pick<Handlers, 'hingeBalances' | 'planScheme' | 'schemeSolvent' | 'jobCard'> {
  return {
    jobCard: ({ job, units }) => {
      const card = jobCardOf(job);
      return Promise.resolve({ reply: { html: jobCardPage(card, units), text: jobCardText(card, units) } });
    },
    schemeSolvent: ({ job, plan }) => Promise.resolve({ reply: { coats: schemeSolvent(job, plan) } }),
    hingeBalances: ({ job, plan }) => Promise.resolve({ reply: { balances: hingeBalances(job, plan) } }),
    planScheme: ({ job, scheme }) => Promise.resolve({ reply: { plan: planScheme(job, scheme) } }),
  };
}
