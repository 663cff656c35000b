import { jobCardJson, jobCardOf, jobCardPage, jobCardText, type UnitSystem } from '../../sim/index.ts';
import { EXIT } from './exitCodes.ts';
import { writeFile } from './files.ts';
import type { Io } from './io.ts';
import { readJob } from './readInputs.ts';

/** Options of `crosscoat sheet` as commander gives them. */
export interface SheetOptions {
  readonly scheme?: string;
  readonly html?: string;
  readonly units: UnitSystem;
  readonly json?: true;
}

/** The job card of a job: a page a day, as plain text, JSON, or one HTML file that prints. @returns the exit code. */
export async function sheet(io: Io, jobPath: string, options: SheetOptions): Promise<number> {
  const { job } = await readJob(io, jobPath);
  const card = jobCardOf(job, options.scheme);
  const notes: string[] = [];
  if (options.html !== undefined) {
    await writeFile(io, options.html, [jobCardPage(card, options.units)]);
    notes.push(`${options.html}: the job card, one HTML file to print on A4 or Letter`);
  }
  if (options.json === true) await io.out(`${JSON.stringify({ ...jobCardJson(card), notes }, null, 2)}\n`);
  else await io.out([jobCardText(card, options.units), ...notes.map((note) => `${note}\n`)].join(''));
  return EXIT.done;
}
