import { planJson, planText, settleCoat, strokesOf, writeRecording, type Job, type UnitSystem } from '../../sim/index.ts';
import { chosenCoats } from './chosenCoats.ts';
import { EXIT } from './exitCodes.ts';
import { writeFile } from './files.ts';
import type { Io } from './io.ts';
import { readJob } from './readInputs.ts';

/** Options of `crosscoat plan` as commander gives them. */
export interface PlanOptions {
  readonly coat?: string;
  readonly out?: string;
  readonly units: UnitSystem;
  readonly json?: true;
}

/** Plans a job's strokes exactly, without the hand. @returns the exit code. */
export async function plan(io: Io, jobPath: string, options: PlanOptions): Promise<number> {
  const { job, warnings } = await readJob(io, jobPath);
  const steady = steadyJob(job);
  const coats = chosenCoats(job, options.coat).map((id) => {
    const setting = settleCoat(steady, id);
    return { setting, strokes: strokesOf(setting, null) };
  });
  const [first] = coats;
  if (options.out !== undefined && first !== undefined) await writeFile(io, options.out, writeRecording(first.strokes.path));
  const planned = { name: job.name, seed: job.seed, warnings };
  if (options.json === true) {
    await io.out(`${JSON.stringify(planJson(coats, planned), null, 2)}\n`);
    return EXIT.done;
  }
  await io.out(planText(coats, planned, options.units));
  if (options.out !== undefined && first !== undefined && coats.length > 1) {
    await io.out(`${options.out} holds the coat "${first.setting.coat.id}"; --coat chooses another.\n`);
  }
  return EXIT.done;
}

function steadyJob(job: Job): Job {
  return { ...job, coats: job.coats.map((coat) => ({ ...coat, hand: { kind: 'steady' } })) };
}
