import { CrosscoatError } from '../base/errors.ts';
import { valueWords } from './problems.ts';
import { SCHEMA_VERSION } from './schema.ts';

/** Turns a job file of one version into the next one. */
type Upgrade = (old: Readonly<Record<string, unknown>>) => Record<string, unknown>;

/** `UPGRADES[n]` turns version n into n + 1. Version 1 is the first, so there is none yet. */
const UPGRADES: Readonly<Record<number, Upgrade>> = {};

/**
 * A job file brought to this build's version, step by step.
 * @throws CrosscoatError `schema` where it is no object; `version` where the version is missing,
 * no whole number, or newer than this build.
 */
export function upgradeJob(input: unknown, file?: string): Record<string, unknown> {
  const place = file === undefined ? {} : { file };
  if (typeof input !== 'object' || input === null || Array.isArray(input)) {
    throw new CrosscoatError('schema', `${fileWords(file)} holds ${valueWords(input)}, not a job; give a JSON object that begins {"schemaVersion": ${SCHEMA_VERSION}, …}`, place);
  }
  const versioned = input as Record<string, unknown>;
  const version = Object.hasOwn(versioned, 'schemaVersion') ? versioned['schemaVersion'] : undefined;
  const at = { ...place, pointer: '/schemaVersion' };
  if (version === undefined) {
    throw new CrosscoatError('version', `${fileWords(file)} has no schemaVersion, so it is not known to be a job file; add "schemaVersion": ${SCHEMA_VERSION}`, at);
  }
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    throw new CrosscoatError('version', `${fileWords(file)}: /schemaVersion = ${valueWords(version)} is not a whole number from 1; this build writes ${SCHEMA_VERSION}`, at);
  }
  if (version > SCHEMA_VERSION) {
    throw new CrosscoatError('version', `${fileWords(file)} was made by a newer Crosscoat (schemaVersion ${version}; this build reads up to ${SCHEMA_VERSION}); update Crosscoat`, at);
  }
  let job = versioned;
  for (let from = version; from < SCHEMA_VERSION; from++) job = (UPGRADES[from] as Upgrade)(job);
  return job;
}

/** The head of a message about a job file. */
export function fileWords(file: string | undefined): string {
  return `parseJob: ${file ?? 'the job'}`;
}
