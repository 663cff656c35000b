import { startClient, type WorkerClient } from '../../worker/client.ts';
import type { MessageName, Messages } from '../../worker/protocol.ts';
import { surveyStage } from './survey.ts';

let client: WorkerClient | null = null;

/** Asks the survey's worker, which is started when it is first needed. Rejects with `Stale` when the sheet was closed. */
export function askSurvey<Name extends MessageName>(name: Name, request: Messages[Name]['request']): Promise<Messages[Name]['reply']> {
  client ??= startClient(
    () => new Worker(new URL('../../worker/worker.ts', import.meta.url), { type: 'module', name: 'crosscoat-survey' }),
    (why) => {
      surveyStage.problem.value = { title: 'The simulation stopped and was started again', text: `What you entered is as you left it. Reason: ${why}.`, place: {} };
    },
  );
  return client.ask(name, request);
}

/** Ends the worker: the sheet is closed. */
export function endSurveyWorker(): void {
  client?.end();
  client = null;
}
