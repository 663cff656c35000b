import { coatFaults, judgeLife, momentFigures, reportJson, reportText, runJob, runLife, type CoatResult, type Job, type Recording, type ReportedCoat, type UnitSystem } from '../../sim/index.ts';
import { parseCell_mm } from './cellSize.ts';
import { chosenCoats, recordedCoat } from './chosenCoats.ts';
import { EXIT } from './exitCodes.ts';
import { writeDrawing, writeFilm, writeMap, type FieldName } from './filmFiles.ts';
import type { Io } from './io.ts';
import { makeProgress } from './progress.ts';
import { readJob, readStrokes } from './readInputs.ts';
import { parseWatch, type Watch } from './watch.ts';

/** Options of `crosscoat spray` as commander gives them. */
export interface SprayOptions {
  readonly strokes?: string;
  readonly coat?: string;
  readonly cell?: string;
  readonly until?: string;
  readonly at?: string;
  readonly map?: string;
  readonly field: FieldName;
  readonly film?: string;
  readonly svg?: string;
  readonly units: UnitSystem;
  readonly cures: boolean;
  readonly strict?: true;
  readonly json?: true;
}

/** Id of the recording given beside the job, while it runs. */
const GIVEN_RECORDING = 'strokes';

/** Lays and judges a job's coats, writes what was asked for, reports. @returns the exit code. */
export async function spray(io: Io, jobPath: string, options: SprayOptions): Promise<number> {
  const cell_mm = options.cell === undefined ? undefined : parseCell_mm(options.cell);
  const { job, warnings } = await readJob(io, jobPath);
  const coatIds = options.strokes === undefined ? chosenCoats(job, options.coat) : recordedCoat(job, options.coat);
  const recording = options.strokes === undefined ? null : await readStrokes(io, options.strokes);
  const watch = parseWatch(options);
  const laid = run(io, recording === null ? job : laidByRecording(job, coatIds), coatIds, recording, cell_mm, options);
  const results = watch === null ? laid : laid.map((coat) => watched(coat, watch, options.cures));
  const notes = await writeFiles(io, results, options);
  const reported = { name: job.name, seed: job.seed, warnings, curesTried: options.cures };
  if (options.json === true) {
    await io.out(`${JSON.stringify({ ...reportJson(results, reported), notes }, null, 2)}\n`);
  } else {
    await io.out([reportText(results, reported, options.units), ...notes.map((note) => `${note}\n`)].join(''));
  }
  const isFaulty = results.some((coat) => coatFaults(coat).length > 0);
  return options.strict === true && isFaulty ? EXIT.faults : EXIT.done;
}

function laidByRecording(job: Job, coatIds: readonly string[]): Job {
  return {
    ...job,
    coats: job.coats.map((coat) => (coatIds.includes(coat.id) ? { ...coat, recording: GIVEN_RECORDING } : coat)),
  };
}

function run(
  io: Io,
  job: Job,
  coatIds: readonly string[],
  recording: Recording | null,
  cell_mm: number | undefined,
  options: SprayOptions,
): CoatResult[] {
  const progress = options.json === true ? null : makeProgress(io, 'laying and judging');
  try {
    return runJob(job, {
      coatIds,
      cures: options.cures,
      ...(cell_mm === undefined ? {} : { cell_mm }),
      ...(recording === null ? {} : { recordings: new Map([[GIVEN_RECORDING, recording]]) }),
      ...(progress === null ? {} : { onProgress: progress.show }),
    });
  } finally {
    progress?.end();
  }
}

/** A coat with its film's life, watched and judged. */
function watched(coat: CoatResult, watch: Watch, cures: boolean): ReportedCoat & CoatResult {
  const life = runLife(coat.setting, coat.strokes, watch);
  const { dewPoint_K } = coat.setting.air;
  return {
    ...coat,
    life: {
      verdict: judgeLife(life, coat.strokes, { until_s: watch.until_s, cures, laidFaults: coat.verdict.faults }),
      moments: life.moments.map((moment) => momentFigures(moment, dewPoint_K)),
    },
  };
}

/** Files show one coat: the first that was run. @returns what to say of them. */
async function writeFiles(io: Io, results: readonly CoatResult[], options: SprayOptions): Promise<string[]> {
  const [first] = results;
  if (first === undefined) return [];
  const notes: string[] = [];
  if (options.map !== undefined) notes.push(await writeMap(io, options.map, first, options.field, options.units));
  if (options.film !== undefined) await writeFilm(io, options.film, first);
  if (options.svg !== undefined) await writeDrawing(io, options.svg, first, options.units);
  const isWritten = options.map !== undefined || options.film !== undefined || options.svg !== undefined;
  if (isWritten && results.length > 1) notes.push(`The files show the coat "${first.setting.coat.id}"; --coat chooses another.`);
  return notes;
}
