import { canonicalForm, CROSSCOAT_VERSION, keepRows, logCsv, recordFaults, recordJson, recordPage, reportRecord, surveysCsv, unsignedNames } from '../../sim/index.ts';
import type { Handlers } from './serve.ts';

/** What the worker does for the sheet of the record. Nothing is kept. */
export function makeRecordHandlers(): Pick<Handlers, 'record'> {
  return {
    record: ({ job, at, units }) => {
      const record = reportRecord(job, { at, version: CROSSCOAT_VERSION }, units);
      return Promise.resolve({
        reply: {
          html: recordPage(record, units),
          readingsCsv: surveysCsv(record.surveys),
          logCsv: logCsv(record.log),
          json: `${JSON.stringify(recordJson(record, units), null, 2)}\n`,
          canonical: canonicalForm(job),
          digest: record.digest,
          look: recordFaults(record),
          unsigned: unsignedNames(record),
          keep: keepRows(record),
        },
      });
    },
  };
}
