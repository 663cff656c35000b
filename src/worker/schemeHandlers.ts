import { planScheme } from '../../sim/index.ts';
import type { Handlers } from './serve.ts';

/** What the worker does for the sheets of the scheme. Nothing is kept. */
export function makeSchemeHandlers(): Pick<Handlers, 'planScheme'> {
  return {
    planScheme: ({ job, scheme }) => Promise.resolve({ reply: { plan: planScheme(job, scheme) } }),
  };
}
