import sessionUrl from '../../sim/job/demo-session.csv?url';
import { DEMO_HAND_COAT, DEMO_RECORDING, demoJob, withRecording, type Job } from '../../sim/index.ts';

/**
 * The demo job with its recorded session, which is a file of its own so that a first visit need
 * not wait for it: until it is here the demo's second coat is laid by its plan.
 */
export async function demoWithSession(): Promise<Job> {
  const answer = await fetch(sessionUrl);
  if (!answer.ok) throw new Error(`The recorded session could not be fetched (${answer.status}).`);
  const text = await answer.text();
  return withRecording(demoJob(), DEMO_HAND_COAT, { id: DEMO_RECORDING, name: 'Session with a hand', text });
}
