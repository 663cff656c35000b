import { batch, effect, signal } from '@preact/signals';
import type { Job, UnitSystem } from '../../../sim/index.ts';
import { download } from '../../storage/download.ts';
import type { RecordReply } from '../../worker/recordMessages.ts';
import { fileStem } from '../../workshop/fileStem.ts';
import { latestOnly } from '../latest.ts';
import { nowMoment } from '../nowMoment.ts';
import type { Problem } from '../problem.ts';
import { stageWorker } from '../stageWorker.ts';
import { state } from '../state.ts';
import { whileWorking } from '../whileWorking.ts';
import { logStage } from './log.ts';

/** The record of the job in hand; kept nowhere, since the job gives it again. */
export const recordSheet = {
  record: signal<RecordReply | null>(null),
  /** The job that it is of, which may be older than the one in hand. */
  madeOf: signal<Job | null>(null),
  problem: signal<Problem | null>(null),
  working: signal(false),
};

/** What it is saved as: what of the reply, its type, the end of its name. */
const FILES = {
  html: ['html', 'text/html', 'record.html'],
  readings: ['readingsCsv', 'text/csv', 'readings.csv'],
  log: ['logCsv', 'text/csv', 'log.csv'],
  json: ['json', 'application/json', 'record.json'],
  canonical: ['canonical', 'application/json', 'canonical.json'],
} as const;
export type RecordFile = keyof typeof FILES;

export type { RecordReply };

const worker = stageWorker('record', logStage.problem);

/** Keeps the record in step with the job and the units while its sheet is shown. @returns a way to stop, which ends the worker. */
export function followRecord(): () => void {
  const write = latestOnly(writeRecord);
  const stop = effect(() => write({ job: state.job.value, units: state.units.value }));
  return () => {
    stop();
    worker.end();
  };
}

async function writeRecord(asked: { readonly job: Job; readonly units: UnitSystem }): Promise<void> {
  recordSheet.problem.value = null;
  await whileWorking(recordSheet, 'The record could not be written; the one shown is the last that could', async () => {
    const record = await worker.ask('record', { ...asked, at: nowMoment() });
    batch(() => {
      recordSheet.record.value = record;
      recordSheet.madeOf.value = asked.job;
    });
  });
}

/** Hands one of the record's files over. */
export function saveRecord(kind: RecordFile): void {
  const [record, job] = [recordSheet.record.peek(), recordSheet.madeOf.peek()];
  if (record === null || job === null) return;
  const [key, type, end] = FILES[kind];
  download(new Blob([record[key]], { type: `${type};charset=utf-8` }), `${fileStem(job.name, 'job')}-${end}`);
}

/** Prints the record as it stands in its frame. */
export function printRecord(frame: HTMLIFrameElement | null): void {
  const page = frame?.contentWindow;
  if (page === null || page === undefined) {
    logStage.problem.value = { title: 'The record could not be printed', text: 'Save it as HTML and print that file from the browser.', place: {} };
    return;
  }
  page.focus();
  page.print();
}
