import { CrosscoatError, planScheme, presetById, presetJson, presetText, reportScheme, schemeJson, schemeText, type PresetParts, type UnitSystem } from '../../sim/index.ts';
import { EXIT } from './exitCodes.ts';
import type { Io } from './io.ts';
import { readJob } from './readInputs.ts';

/** Options of `crosscoat scheme` as commander gives them. */
export interface SchemeOptions {
  readonly scheme?: string;
  readonly preset?: string;
  readonly units: UnitSystem;
  readonly strict?: true;
  readonly json?: true;
}

/** A preset printed without a job refers to mixes by what they are for. */
const PLAIN_PARTS: PresetParts = { mixes: { brush: 'brush', clear: 'clear', aluminium: 'aluminium', colour: 'colour', lacquer: 'lacquer' }, coat: 'coat' };

/** Works a scheme out and says what the rules find, or prints a preset. @returns the exit code. */
export async function scheme(io: Io, jobPath: string | undefined, options: SchemeOptions): Promise<number> {
  if (options.preset !== undefined) return printPreset(io, jobPath, options.preset, options);
  if (jobPath === undefined) throw new CrosscoatError('not-found', 'scheme: neither a job file nor --preset is given; give one of them');
  const { job } = await readJob(io, jobPath);
  const report = reportScheme(planScheme(job, options.scheme));
  await io.out(options.json === true ? `${JSON.stringify(schemeJson(report, options.units), null, 2)}\n` : schemeText(report, options.units));
  return options.strict === true && report.findings.some(({ severity }) => severity === 'stop') ? EXIT.faults : EXIT.done;
}

async function printPreset(io: Io, jobPath: string | undefined, id: string, { json, units }: SchemeOptions): Promise<number> {
  if (jobPath !== undefined) throw new CrosscoatError('range', `--preset = "${id}" prints a preset and reads no job; give it without "${jobPath}"`);
  const preset = presetById(id);
  const steps = preset.steps(PLAIN_PARTS, {});
  await io.out(json === true ? `${JSON.stringify(presetJson(preset, steps), null, 2)}\n` : presetText(preset, steps, units));
  return EXIT.done;
}
