import { CrosscoatError } from '../base/errors.ts';
import { valueWords } from './problems.ts';
import { SCHEMA_VERSION } from './schemaFacts.ts';

/** How a job file of one version becomes one of the next. */
interface Upgrade {
  readonly apply: (old: Readonly<Record<string, unknown>>) => Record<string, unknown>;
  /** Values that the next version asks for and this one could not state: as pointers, `*` for any index. */
  readonly added: readonly string[];
  /** The same in words; empty where there are none. */
  readonly addedWords: string;
}

/** `UPGRADES[n]` turns version n into n + 1. */
const UPGRADES: Readonly<Record<number, Upgrade>> = {
  // Version 2 knows the air, what is in the cup and what lies under the film. Each may be left
  // out, and a job without them is sprayed as version 1 sprayed it.
  1: {
    apply: (old) => ({ ...old, schemaVersion: 2 }),
    added: ['/air', '/mixes', '/part/panels/*/backing', '/setUps/*/capPressure_kPa', '/setUps/*/drops/atViscosity_mPa_s'],
    addedWords: 'the air of the room, what lies under the film, cap pressure and the viscosity behind the drop size',
  },
  // Version 3 knows a measured hand beside the three words. It asks for nothing new.
  2: { apply: (old) => ({ ...old, schemaVersion: 3 }), added: [], addedWords: '' },
  // Version 4 knows what a test card said: where the rays seem to start, how well numbers are known, the readings. It
  // asks for nothing new.
  3: { apply: (old) => ({ ...old, schemaVersion: 4 }), added: [], addedWords: '' },
  // Version 5 knows what is planned around the coats: schemes, colours, room, air by the hour, working hours, tins, hinge
  // lines. It asks for nothing new.
  4: { apply: (old) => ({ ...old, schemaVersion: 5 }), added: [], addedWords: '' },
  // Version 6 knows what was really done and what the gauges read. It asks for nothing new.
  5: { apply: (old) => ({ ...old, schemaVersion: 6 }), added: [], addedWords: '' },
};

/** A job file in this build's version, and the version it was written in. */
export interface UpgradedJob {
  readonly job: Record<string, unknown>;
  readonly version: number;
}

/**
 * A job file brought to this build's version, step by step.
 * @throws CrosscoatError `schema` where it is no object; `version` where the version is missing,
 * no whole number, or newer than this build.
 */
export function upgradeJob(input: unknown, file?: string): UpgradedJob {
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
  for (const { apply } of upgradesFrom(version)) job = apply(job);
  return { job, version };
}

/** Whether a value came to the job file only after `version`, so that a file of that version could not state it. */
export function cameAfter(version: number, pointer: string): boolean {
  const anyIndex = pointer.replaceAll(/\/\d+(?=\/|$)/g, '/*');
  return upgradesFrom(version).some(({ added }) => added.includes(anyIndex));
}

/** What came after `version`, in words. */
export function addedSince(version: number): string {
  return upgradesFrom(version).map(({ addedWords }) => addedWords).filter((words) => words !== '').join(', ');
}

function upgradesFrom(version: number): readonly Upgrade[] {
  return Array.from({ length: SCHEMA_VERSION - version }, (_, i) => UPGRADES[version + i] as Upgrade);
}

/** The head of a message about a job file. */
export function fileWords(file: string | undefined): string {
  return `parseJob: ${file ?? 'the job'}`;
}
