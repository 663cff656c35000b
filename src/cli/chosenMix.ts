import { CrosscoatError, genericMixSpec, thinnerById, THINNERS, type MixSpec } from '../../sim/index.ts';
import { STANDARD_INPUT } from './files.ts';
import type { Io } from './io.ts';
import { readJob } from './readInputs.ts';

/** Volumes of a generic thinner to one of clear dope: common practice for spraying is 1:2 to 1:1. */
const GENERIC_RATIO = 1;

/** A mix as stated, and where. */
export interface StatedMix {
  readonly spec: MixSpec;
  readonly pointer: string;
}

/**
 * The mix that `--mix` means: clear dope one to one with a generic thinner, or a mix of a job file,
 * its first or the one behind `#`.
 * @throws `schema` for an unknown word or id, `not-found` for a job without mixes.
 */
export async function statedMix(io: Io, text: string): Promise<StatedMix> {
  if (THINNERS.some(({ id }) => id === text)) return { spec: genericMixSpec('clear-dope', text, GENERIC_RATIO), pointer: '/mix' };
  const [path = '', id] = text.split('#', 2);
  if (!looksLikeFile(path) && (await io.facts(path)) === null) return noMix(text);
  const { job } = await readJob(io, path);
  const at = id === undefined ? 0 : job.mixes.findIndex((mix) => mix.id === id);
  const spec = job.mixes[at];
  if (spec !== undefined) return { spec, pointer: `/mixes/${at}` };
  const known = job.mixes.map((mix) => mix.id).join(', ');
  if (known === '') throw new CrosscoatError('not-found', `${path} holds no mix; add one to "mixes", or give ${words()}`, { file: path });
  throw new CrosscoatError('schema', `${path} holds no mix "${id}"; known are ${known}`, { file: path });
}

function looksLikeFile(path: string): boolean {
  return path === STANDARD_INPUT || /[./\\]/.test(path);
}

/** An unknown word fails as an unknown thinner does, with the near one. */
function noMix(text: string): never {
  try {
    thinnerById(text);
  } catch (error) {
    if (error instanceof CrosscoatError) throw new CrosscoatError('schema', `--mix: ${error.message}; or give a job file`);
    throw error;
  }
  throw new CrosscoatError('internal', `internal: --mix ${text} was not recognised; please report this`);
}

function words(): string {
  return THINNERS.map(({ id }) => id).join(', ');
}
