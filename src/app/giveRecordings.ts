import type { WorkerClient } from '../worker/client.ts';
import type { RecordingFacts } from '../worker/protocol.ts';

/** Gives a worker a recording, once; the same promise for the same id. */
export type Give = (id: string, name: string, text: string) => Promise<RecordingFacts>;

/** A giver for one worker; a new worker needs a new one. A recording that could not be read may be given again. */
export function giver(client: WorkerClient, read?: (facts: RecordingFacts) => void): Give {
  const given = new Map<string, Promise<RecordingFacts>>();
  return (id, name, text) => {
    const known = given.get(id);
    if (known !== undefined) return known;
    const asked = client.ask('recording', { id, name, text });
    given.set(id, asked);
    asked.then(read, () => given.delete(id));
    return asked;
  };
}
