import { canonicalForm, CROSSCOAT_VERSION, logCsv, recordFaults, recordJson, recordPage, recordText, reportRecord, surveysCsv, type UnitSystem } from '../../sim/index.ts';
import { EXIT } from './exitCodes.ts';
import { writeFile } from './files.ts';
import type { Io } from './io.ts';
import { readJob } from './readInputs.ts';

/** Options of `crosscoat report` as commander gives them. */
export interface ReportOptions {
  readonly html?: string;
  readonly csvReadings?: string;
  readonly csvLog?: string;
  readonly canonical?: string;
  readonly units: UnitSystem;
  readonly strict?: true;
  readonly json?: true;
}

/** The record of a job: plan, log, surveys, signatures checked, digest; as text or JSON, and as files to keep. @returns the exit code. */
export async function report(io: Io, jobPath: string, options: ReportOptions): Promise<number> {
  const { job } = await readJob(io, jobPath);
  const record = reportRecord(job, { at: io.moment(), version: CROSSCOAT_VERSION }, options.units);
  const files: readonly (readonly [path: string | undefined, what: string, write: () => string])[] = [
    [options.html, 'the record, one HTML file to print on A4 or Letter', () => recordPage(record, options.units)],
    [options.csvReadings, 'the readings of all surveys, CSV', () => surveysCsv(record.surveys)],
    [options.csvLog, 'the log, CSV', () => logCsv(record.log)],
    [options.canonical, 'the job in canonical form (RFC 8785); its SHA-256 is the digest of the record', () => canonicalForm(job)],
  ];
  const notes: string[] = [];
  for (const [path, what, write] of files) {
    if (path === undefined) continue;
    await writeFile(io, path, [write()]);
    notes.push(`${path}: ${what}`);
  }
  if (options.json === true) await io.out(`${JSON.stringify({ ...recordJson(record, options.units), notes }, null, 2)}\n`);
  else await io.out([recordText(record, options.units), ...notes.map((note) => `${note}\n`)].join(''));
  return options.strict === true && recordFaults(record).length > 0 ? EXIT.faults : EXIT.done;
}
