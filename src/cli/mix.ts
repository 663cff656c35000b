import { cupJson, cupText, CrosscoatError, makeMix, mixJson, mixSlip, mixText, planMixing, type ReportedMixing, type UnitSystem } from '../../sim/index.ts';
import { statedMix, type StatedMix } from './chosenMix.ts';
import { cupAnswer } from './cupAnswer.ts';
import { EXIT } from './exitCodes.ts';
import { writeFile } from './files.ts';
import type { Io } from './io.ts';
import { mixingAsked } from './mixingAsked.ts';
import type { MixOptions } from './mixOptions.ts';

/** Turns cup seconds and viscosities into each other, or works a mix out for pouring. @returns the exit code. */
export async function mix(io: Io, jobPath: string | undefined, options: MixOptions): Promise<number> {
  const answer = cupAnswer(options);
  if (answer !== null) {
    refuseBeside(jobPath, options);
    await io.out(options.json === true ? `${JSON.stringify(cupJson(answer), null, 2)}\n` : cupText(answer, options.units));
    return EXIT.done;
  }
  const stated = await mixAsked(io, jobPath, options.mix);
  const mixing = planMixing(stated.spec, stated.pointer, mixingAsked(stated, options));
  const notes = options.slip === undefined ? [] : [await writeSlip(io, options.slip, mixing, jobPath ?? 'No job', options.units)];
  if (options.json === true) await io.out(`${JSON.stringify({ ...mixJson(mixing), notes }, null, 2)}\n`);
  else await io.out([mixText(mixing, options.units, { guess: options.guess === true }), ...notes.map((note) => `${note}\n`)].join(''));
  return EXIT.done;
}

/** What is about a mix says nothing of a cup alone, and is not to be dropped unsaid. */
function refuseBeside(jobPath: string | undefined, options: MixOptions): void {
  const beside = ['mix', 'ratio', 'pot', 'area', 'dry', 'wet', 'coats', 'transfer', 'left', 'want', 'guess', 'slip'] as const;
  const given = [...(jobPath === undefined ? [] : ['the job']), ...beside.filter((name) => options[name] !== undefined).map((name) => `--${name}`), ...(options.reading.length === 0 ? [] : ['--reading'])];
  if (given.length === 0) return;
  const asked = options.seconds === undefined ? '--viscosity' : '--seconds';
  throw new CrosscoatError('range', `${asked} is about a cup alone, so it cannot answer ${given.join(', ')}; leave ${given.length === 1 ? 'it' : 'them'} out, or leave ${asked} out to work the mix out, with --want for the seconds wanted or --reading given twice for your own readings`);
}

/** The mix of a job by its id, its first, or a generic one. */
async function mixAsked(io: Io, jobPath: string | undefined, id: string | undefined): Promise<StatedMix> {
  const stated = await statedMix(io, jobPath === undefined ? (id ?? 'general') : `${jobPath}${id === undefined ? '' : `#${id}`}`);
  // Found out here, so that the message is about the mix and not about what is done with it.
  makeMix(stated.spec, stated.pointer);
  return stated;
}

async function writeSlip(io: Io, path: string, mixing: ReportedMixing, where: string, units: UnitSystem): Promise<string> {
  await writeFile(io, path, [mixSlip(mixing, where, units)]);
  return `${path}: the mixing slip, one HTML file to print`;
}
