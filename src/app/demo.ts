import recordUrl from '../../sim/job/demo-record.json?url';
import sessionUrl from '../../sim/job/demo-session.csv?url';
import { DEMO_HAND_COAT, DEMO_RECORDING, demoJob, withDemoRecord, withRecording, type Job } from '../../sim/index.ts';

/**
 * The demo job with its recorded session, its log and its surveys. They are files of their own so that a first visit need
 * not wait for them: until they are here the demo's second coat is laid by its plan, and nothing is logged.
 */
export async function demoWithSession(): Promise<Job> {
  const [text, record] = await Promise.all([fetched(sessionUrl, 'recorded session'), fetched(recordUrl, 'record')]);
  return withDemoRecord(withRecording(demoJob(), DEMO_HAND_COAT, { id: DEMO_RECORDING, name: 'Session with a hand', text }), record);
}

async function fetched(url: string, what: string): Promise<string> {
  const answer = await fetch(url);
  if (!answer.ok) throw new Error(`The ${what} could not be fetched (${answer.status}).`);
  return answer.text();
}
