import { compareJson, compareSetUps, compareText, CrosscoatError, setUpsPage, type Comparison, type Job, type UnitSystem } from '../../sim/index.ts';
import { parseCell_mm } from './cellSize.ts';
import { coatAsked } from './chosenCoats.ts';
import { EXIT } from './exitCodes.ts';
import { writeFile } from './files.ts';
import type { Io } from './io.ts';
import { setUpsAsked } from './optionValues.ts';
import { makeProgress } from './progress.ts';
import { readJob } from './readInputs.ts';

/** Options of `crosscoat compare` as commander gives them. */
export interface CompareCliOptions {
  readonly setups?: string;
  readonly coat?: string;
  readonly strokes: 'as-stated' | 'to-target';
  readonly cell?: string;
  readonly report?: string;
  readonly units: UnitSystem;
  readonly json?: true;
}

/** Sets a job's set-ups side by side on one coat. @returns the exit code. */
export async function compare(io: Io, jobPath: string, options: CompareCliOptions): Promise<number> {
  const { job } = await readJob(io, jobPath);
  const coat = coatAsked(job, options.coat);
  const comparison = compared(io, job, coat.id, options);
  const notes = options.report === undefined ? [] : [await writeReport(io, options.report, job, comparison, options.units)];
  if (options.json === true) await io.out(`${JSON.stringify({ ...compareJson(comparison), notes }, null, 2)}\n`);
  else await io.out([compareText(comparison, options.units), ...notes.map((note) => `${note}\n`)].join(''));
  if (comparison.sides.every((side) => side.problem !== null)) throw new CrosscoatError('range', 'compare: no set-up can lay this coat; the reasons stand above');
  return EXIT.done;
}

function compared(io: Io, job: Job, coatId: string, options: CompareCliOptions): Comparison {
  const progress = options.json === true ? null : makeProgress(io, 'laying and watching');
  try {
    return compareSetUps(job, coatId, {
      setUps: setUpsAsked(job, options.setups),
      strokes: options.strokes,
      ...(options.cell === undefined ? {} : { cell_mm: parseCell_mm(options.cell) }),
      ...(progress === null ? {} : { onProgress: progress.show }),
    });
  } finally {
    progress?.end();
  }
}

async function writeReport(io: Io, path: string, job: Job, comparison: Comparison, units: UnitSystem): Promise<string> {
  await writeFile(io, path, [setUpsPage({ job, comparison }, units)]);
  return `${path}: the report, one HTML file to read in any browser and to print`;
}
