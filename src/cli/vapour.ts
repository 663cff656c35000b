import {
  coatVapour, coatVapourText, CrosscoatError, planScheme, schemeSolvent, schemeVapourText, SEA_PRESSURE_Pa, solventById, solventByMinute, spillAnswer, spillJson, spillText,
  USUAL_ROOM, vapourJson, type Job, type LiquidPart, type PlannedScheme, type RoomSpec, type UnitSystem,
} from '../../sim/index.ts';
import { EXIT } from './exitCodes.ts';
import type { Io } from './io.ts';
import { quantityOf } from './optionValues.ts';
import { readJob } from './readInputs.ts';
import { areaOf, roomOf } from './roomSize.ts';

/** Options of `crosscoat vapour` as commander gives them. */
export interface VapourOptions {
  readonly solvent?: string;
  readonly blend?: string;
  readonly litres?: string;
  readonly over?: string;
  readonly room?: string;
  readonly fresh?: string;
  readonly face?: string;
  readonly mixing?: string;
  readonly temp?: string;
  readonly scheme?: string;
  readonly coat?: string;
  readonly units: UnitSystem;
  readonly json?: true;
}

const USUAL_C = '20C';
const SECONDS_PER_HOUR = 3600;

/** Says what liquid, or the coats of a job, do to the air of a room. @returns the exit code. */
export async function vapour(io: Io, jobPath: string | undefined, options: VapourOptions): Promise<number> {
  const isLiquid = options.solvent !== undefined || options.blend !== undefined;
  if (jobPath === undefined && !isLiquid) throw new CrosscoatError('schema', 'vapour: nothing to evaporate; give --solvent or --blend with --litres and --room, or a job file');
  if (jobPath !== undefined && isLiquid) throw new CrosscoatError('schema', 'vapour: a job file and a liquid are two questions; give one of them');
  await io.out(jobPath === undefined ? ofLiquid(options) : ofJob((await readJob(io, jobPath)).job, options));
  return EXIT.done;
}

function ofLiquid(options: VapourOptions): string {
  if (options.litres === undefined) throw new CrosscoatError('unit', '--litres is missing: how much evaporates; give a volume, such as 1L or 1 US gal');
  if (options.room === undefined) throw new CrosscoatError('unit', '--room is missing: the same liquid fills a closet and is lost in a hangar; give its volume or its sides, such as 120m3 or 20x15x10ft');
  if (options.scheme !== undefined || options.coat !== undefined) throw new CrosscoatError('schema', 'vapour: --scheme and --coat are of a job file; leave them out');
  if (options.over === undefined && options.fresh !== undefined && options.face === undefined) throw new CrosscoatError('time', '--fresh says nothing without a time; give --over, the time in which the liquid evaporates, such as 15min');
  const answer = spillAnswer({
    liquids: liquidsOf(options, quantityOf('--litres', options.litres, ['volume', 'L', '1L or 1 US gal'])),
    room_m3: roomOf('--room', options.room),
    air: { temperature_K: quantityOf('--temp', options.temp ?? USUAL_C, ['temperature', '°C', '21C or 70F']), pressure_Pa: SEA_PRESSURE_Pa },
    mixing: mixingOf(options.mixing) ?? USUAL_ROOM.mixing,
    over_s: options.over === undefined ? null : timeOf(options.over),
    fresh_m3_s: options.fresh === undefined ? 0 : flowOf(options.fresh),
    face_m2: options.face === undefined ? null : areaOf('--face', options.face),
  });
  return options.json === true ? `${JSON.stringify(spillJson(answer), null, 2)}\n` : spillText(answer, options.units);
}

/** One solvent, or several by share of the liquid's volume. */
function liquidsOf({ solvent, blend }: VapourOptions, liquid_m3: number): LiquidPart[] {
  if (solvent !== undefined && blend !== undefined) throw new CrosscoatError('schema', 'vapour: --solvent and --blend both say what evaporates; give one of them');
  if (solvent !== undefined) return [{ solvent: solventById(solvent.trim()), liquid_m3 }];
  const parts = (blend ?? '').split(',').map((part) => {
    const [id = '', share = ''] = part.split(':');
    const percent = Number(share.trim().replace(/ ?%$/, ''));
    if (share.trim() === '' || !(percent > 0 && percent <= 100)) throw new CrosscoatError('range', `--blend: "${part.trim()}" has no share from 0 to 100 % of the liquid; give solvents and shares, such as mek:40,toluene:30,n-butyl-acetate:30`);
    return { solvent: solventById(id.trim()), percent };
  });
  if (new Set(parts.map((part) => part.solvent.id)).size < parts.length) throw new CrosscoatError('schema', '--blend names a solvent twice; give each once');
  const all = parts.reduce((sum, { percent }) => sum + percent, 0);
  if (Math.abs(all - 100) > 0.01) throw new CrosscoatError('range', `--blend: the shares add to ${Number(all.toFixed(2))} %, not to 100 %; give all that is in the liquid`);
  return parts.map((part) => ({ solvent: part.solvent, liquid_m3: (liquid_m3 * part.percent) / all }));
}

function ofJob(job: Job, options: VapourOptions): string {
  if (options.litres !== undefined || options.over !== undefined || options.temp !== undefined) throw new CrosscoatError('schema', 'vapour: --litres, --over and --temp are of a liquid; a job says its own coats and air');
  const room = statedRoom(job, options);
  const { plan, step } = planned(job, options);
  const solvents = step === null ? schemeSolvent(job, plan) : [solventByMinute(job, plan, step)];
  if (solvents.length === 0) throw new CrosscoatError('not-found', `vapour: scheme "${plan.scheme.id}" has no coat; add one`, { pointer: '/schemes' });
  const coats = solvents.map((solvent) => coatVapour(solvent, room, plan.air));
  if (options.json === true) return `${JSON.stringify(vapourJson(coats), null, 2)}\n`;
  const [only] = coats;
  return step !== null && only !== undefined ? coatVapourText(only, options.units) : schemeVapourText(coats, options.units);
}

/** The job's room, with what was given beside it. */
function statedRoom(job: Job, options: VapourOptions): RoomSpec {
  const room = job.room ?? (options.room === undefined ? null : USUAL_ROOM);
  if (room === null) throw new CrosscoatError('not-found', 'vapour: the job states no room; give --room, such as 120m3 or 20x15x10ft, and --fresh for its fan', { pointer: '/room' });
  const mixing = mixingOf(options.mixing);
  return {
    ...room,
    ...(options.room === undefined ? {} : { volume_m3: roomOf('--room', options.room) }),
    ...(options.fresh === undefined ? {} : { fresh_m3_h: flowOf(options.fresh) * SECONDS_PER_HOUR }),
    ...(options.face === undefined ? {} : { face_m2: areaOf('--face', options.face) }),
    ...(mixing === null ? {} : { mixing }),
  };
}

/** The scheme asked for, and the step of it; a coat of the job that no step has the id of is planned by itself. */
function planned(job: Job, { scheme, coat }: VapourOptions): { readonly plan: PlannedScheme; readonly step: PlannedScheme['steps'][number] | null } {
  const alone = coat === undefined ? undefined : job.coats.find(({ id }) => id === coat);
  const isStep = job.schemes?.some((one) => (scheme === undefined || one.id === scheme) && one.steps.some(({ id }) => id === coat)) === true;
  if (alone !== undefined && !isStep) {
    const plan = planScheme(jobOfOneCoat(job, alone));
    return { plan, step: plan.steps[0] ?? null };
  }
  const plan = planScheme(job, scheme);
  if (coat === undefined) return { plan, step: null };
  const step = plan.steps.find(({ spec }) => spec.id === coat);
  if (step !== undefined && step.coat !== null) return { plan, step };
  const known = plan.steps.filter((one) => one.coat !== null).map(({ spec }) => spec.id).join(', ');
  throw new CrosscoatError('not-found', `--coat = "${coat}" is no coat of scheme "${plan.scheme.id}" (it has ${known}) nor of the job; give one of these`, { pointer: '/schemes' });
}

/** A coat by itself, on its own panel. */
function jobOfOneCoat(job: Job, { id, name, panel }: Job['coats'][number]): Job {
  const step = { kind: 'spray' as const, id, name, coat: id, layer: 'clear' as const, share_percent: 100, wait_h: 0 };
  return { ...job, schemes: [{ id: 'coat', name, panels: [panel], sides: 1, clearCoats: 0, steps: [step] }] };
}

function flowOf(text: string): number {
  const flow_m3_s = quantityOf('--fresh', text, ['flow', 'm³/h', '3000 m3/h or 5600cfm']);
  if (flow_m3_s >= 0 && flow_m3_s <= 1e6 / SECONDS_PER_HOUR) return flow_m3_s;
  throw new CrosscoatError('range', `--fresh = "${text}" is not from 0 to 1000000 m³/h; give the outside air that the fan brings`);
}

function timeOf(text: string): number {
  const time_s = quantityOf('--over', text, ['time', 'min', '15min or 2h']);
  if (time_s >= 1 && time_s <= 48 * SECONDS_PER_HOUR) return time_s;
  throw new CrosscoatError('range', `--over = "${text}" is not from 1 s to 48 h; give the time in which the liquid evaporates`);
}

function mixingOf(text: string | undefined): number | null {
  if (text === undefined) return null;
  const factor = Number(text);
  if (text.trim() !== '' && factor >= 1 && factor <= 10) return factor;
  throw new CrosscoatError('range', `--mixing = "${text}" is not from 1 to 10; give 1 for perfectly mixed air, 3 to 10 for a usual room`);
}
