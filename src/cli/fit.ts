import { CrosscoatError, fitJson, fitText, serialiseJob, shownUnit, workOut, type FitPasses, type UnitSystem, type Wish, type WorkedOut } from '../../sim/index.ts';
import { coatAsked } from './chosenCoats.ts';
import { EXIT } from './exitCodes.ts';
import { writeFile } from './files.ts';
import type { Io } from './io.ts';
import { idsOf, quantityOf, rangeOf } from './optionValues.ts';
import { makeProgress } from './progress.ts';
import { readJob } from './readInputs.ts';

/** Options of `crosscoat fit` as commander gives them. */
export interface FitOptions {
  readonly dry?: string;
  readonly weight?: string;
  readonly coats: string;
  readonly coat?: string;
  readonly setups?: string;
  readonly distance?: string;
  readonly speed?: string;
  readonly overlap?: string;
  readonly passes: FitPasses;
  readonly time?: string;
  readonly liquid?: string;
  readonly out?: string;
  readonly units: UnitSystem;
  readonly json?: true;
  readonly strict?: true;
}

/** Works out set-ups and plans for a wished film. @returns the exit code. */
export async function fit(io: Io, jobPath: string, options: FitOptions): Promise<number> {
  const { job } = await readJob(io, jobPath);
  const coat = coatAsked(job, options.coat);
  const progress = options.json === true ? null : makeProgress(io, 'working it out');
  const found = workOut(job, coat.id, wishAsked(options), progress === null ? {} : { onProgress: progress.show });
  progress?.end();
  await io.out(options.json === true ? `${JSON.stringify(fitJson(found, options.units), null, 2)}\n` : fitText(found, options.units));
  if (options.out !== undefined) await writeBest(io, options.out, found);
  return options.strict === true && found.proposals.length === 0 ? EXIT.faults : EXIT.done;
}

async function writeBest(io: Io, path: string, { proposals }: WorkedOut): Promise<void> {
  const [best] = proposals;
  if (best === undefined) throw new CrosscoatError('range', `--out = "${path}" is not written: nothing meets the wish; see what stands in the way`);
  await writeFile(io, path, [serialiseJob(best.job)]);
}

function wishAsked(options: FitOptions): Wish {
  if (options.dry !== undefined && options.weight !== undefined) throw new CrosscoatError('range', '--dry and --weight both say how much film; give one of them');
  const limits = {
    passes: options.passes,
    ...(options.setups === undefined ? {} : { setUps: idsOf(options.setups) }),
    ...(options.distance === undefined ? {} : { distance_m: rangeOf('--distance', options.distance, ['length', 'mm', '150mm..250mm']) }),
    ...(options.speed === undefined ? {} : { speed_m_s: rangeOf('--speed', options.speed, ['speed', 'm/s', '0.2m/s..0.5m/s']) }),
    ...(options.overlap === undefined ? {} : { overlapFraction: rangeOf('--overlap', options.overlap, ['ratio', '%', '40%..60%']) }),
    ...(options.time === undefined ? {} : { mostTime_s: quantityOf('--time', options.time, ['time', 's', '3min']) }),
    ...(options.liquid === undefined ? {} : { mostLiquid_m3: quantityOf('--liquid', options.liquid, ['volume', 'mL', '500mL']) }),
  };
  return {
    ...(options.dry === undefined ? {} : { dry_m: quantityOf('--dry', options.dry, ['length', 'um', '25um or 1mil']) }),
    ...(options.weight === undefined ? {} : { weight_kg_m2: weightOf(options.weight) }),
    coatCount: Number(options.coats),
    limits,
  };
}

const METRIC_WEIGHT = shownUnit('areal-weight', 'metric').size;
const US_WEIGHT = shownUnit('areal-weight', 'us').size;
/** Weights of a film, and one of each in kg/m². */
const WEIGHTS: Readonly<Record<string, number>> = { 'g/m2': METRIC_WEIGHT, 'g/m²': METRIC_WEIGHT, 'oz/yd2': US_WEIGHT, 'oz/yd²': US_WEIGHT };

function weightOf(text: string): number {
  const parts = /^\s*(\d+\.?\d*|\.\d+)\s*(\S*)\s*$/.exec(text);
  const size = WEIGHTS[parts?.[2] === '' ? 'g/m2' : (parts?.[2] ?? '')];
  if (parts === null || size === undefined) throw new CrosscoatError('unit', `--weight = "${text}" is no weight of film; give g/m2 or oz/yd2, such as 30g/m2`);
  return Number(parts[1]) * size;
}
