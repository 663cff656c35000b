import { signal } from '@preact/signals';
import type { RecordingFacts } from '../worker/protocol.ts';

/** What is in each recording that the worker has read, by id. Found again after a reload. */
export const recordingFacts = signal<ReadonlyMap<string, RecordingFacts>>(new Map());

export function noteFacts(facts: RecordingFacts): void {
  recordingFacts.value = new Map([...recordingFacts.peek(), [facts.id, facts]]);
}
