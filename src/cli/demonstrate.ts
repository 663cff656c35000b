import {
  CrosscoatError, demonstrationById, demonstrationJson, demonstrationList, DEMONSTRATIONS, demonstrationText, runDemonstration, serialiseJob,
  type Demonstration, type UnitSystem,
} from '../../sim/index.ts';
import { EXIT } from './exitCodes.ts';
import type { Io } from './io.ts';
import { quantityOf } from './optionValues.ts';

/** Options of `crosscoat demonstrate` as commander gives them. */
export interface DemonstrateOptions {
  readonly knob?: string;
  readonly at?: string;
  readonly job?: true;
  readonly units: UnitSystem;
  readonly json?: true;
}

/** Lists the demonstrations, or runs one and prints its figures, or prints its job. @returns the exit code. */
export async function demonstrate(io: Io, id: string | undefined, options: DemonstrateOptions): Promise<number> {
  if (id === undefined) {
    await io.out(options.json === true ? `${JSON.stringify(DEMONSTRATIONS.map((one) => ({ id: one.id, title: one.title })), null, 2)}\n` : demonstrationList(DEMONSTRATIONS, options.units));
    return EXIT.done;
  }
  const demonstration = demonstrationById(id);
  const knob = options.knob === undefined ? demonstration.knob.wrong : knobValue(demonstration, options.knob);
  if (options.job === true) {
    await io.out(serialiseJob(demonstration.job(knob)));
    return EXIT.done;
  }
  const run = runDemonstration(demonstration, knob, { at_s: timesOf(options.at) });
  await io.out(options.json === true ? `${JSON.stringify(demonstrationJson(run, options.units), null, 2)}\n` : demonstrationText(run, options.units));
  return EXIT.done;
}

/** A plain number in the knob's unit; the unit behind it is let pass. @throws `unit`. */
function knobValue({ knob }: Demonstration, text: string): number {
  const bare = knob.unit !== '' && text.endsWith(knob.unit) ? text.slice(0, -knob.unit.length).trim() : text.trim();
  const value = bare === '' ? NaN : Number(bare);
  if (!Number.isNaN(value)) return checked(knob, value);
  throw new CrosscoatError('unit', `--knob = "${text}" is not a number of ${knob.unit === '' ? knob.name : knob.unit}; give ${knob.name}, such as ${knob.wrong}`);
}

/** @throws `range` before anything is laid, also where only the job is printed. */
function checked(knob: Demonstration['knob'], value: number): number {
  if (value >= knob.low && value <= knob.high) return value;
  throw new CrosscoatError('range', `--knob = ${value} is not from ${knob.low} to ${knob.high}${knob.unit === '' ? '' : ` ${knob.unit}`} (beyond that ${knob.name} was not tried); give ${knob.name}, such as ${knob.wrong}`);
}

/** `30s,2min` as seconds, rising. @throws `unit`. */
function timesOf(text: string | undefined): number[] {
  if (text === undefined) return [];
  return text.split(',').map((one) => quantityOf('--at', one, ['time', 's', '30s,2min'])).sort((a, b) => a - b);
}
