import * as v from 'valibot';
import { MEASURES } from './measures.ts';
import { fitted, readJson } from './readFile.ts';
import { id, list, number, oneOf, record, text, wholeNumber, yesNo } from './words.ts';

/** Version of the manifest that this build writes. */
export const WORKSHOP_VERSION = 1;

/** Name of the manifest inside a workshop's zip. */
export const WORKSHOP_MANIFEST = 'workshop.json';

/** Most jobs, and most sessions, that one manifest lists. */
export const MOST_LISTED = 5000;

/** Digests of earlier states of a job that are kept, the newest ones. */
export const EARLIER_KEPT = 20;

/** A version of a record that this build does not read is told by its number. */
const VERSION_ADVICE = `give ${WORKSHOP_VERSION}, the version that this build reads`;

const TIME_ADVICE = 'give a date and time such as 2026-03-01T09:30:00Z';
const DIGEST_ADVICE = 'give 64 hexadecimal digits (SHA-256)';

function time(description: string) {
  return v.pipe(v.string(TIME_ADVICE), v.isoTimestamp(TIME_ADVICE), v.description(description));
}

function digest(description: string) {
  return v.pipe(v.string(DIGEST_ADVICE), v.regex(/^[0-9a-f]{64}$/, DIGEST_ADVICE), v.description(description));
}

const FILE = { file: text(300, 'name of the file within the zip'), sha256: digest('SHA-256 of that file\'s bytes') };

const ListedJobSchema = record(
  {
    id,
    name: text(200, 'name of the job'),
    ...FILE,
    changedAt: time('when the job was last changed'),
    archived: v.optional(yesNo('put away in the list of jobs'), false),
    earlier: v.optional(list(digest('SHA-256 of the job\'s file as it was'), 0, EARLIER_KEPT, 'digests under which this job was handed over before, oldest first: they tell which of two states is the older'), []),
  },
  'a job of the workshop',
);

/** A figure that could not be measured is null: JSON has no other word for it. */
const figure = v.union([v.number(), v.null()], 'give a number, or null where there is none');

const WanderSchema = record({ mean: figure, deviation: figure, correlation_s: figure, count: wholeNumber(0, 1e9, 'samples') }, 'mean, spread and length in time of an error');

/** What lists show of a session; worked out from it again whenever it is looked through. */
const ListedFiguresSchema = record(
  {
    total: figure,
    isPassed: yesNo('all that the task asks for is within its limits'),
    rows: list(
      record(
        {
          measure: oneOf(MEASURES, 'what is marked'),
          weight: number(0, 100, 'share in the total'),
          limit: figure,
          none: figure,
          value: figure,
          mark: figure,
          isMet: yesNo('within its limit'),
          counts: yesNo('the task asks for it'),
        },
        'one measure, marked; SI',
      ),
      0,
      MEASURES.length,
      'the marks',
    ),
    hand: record({ distance_m: WanderSchema, across_m: WanderSchema, speed: WanderSchema, tilt_rad: WanderSchema, overlap: WanderSchema }, 'what the hand did'),
  },
  'figures of a session as lists show them',
);

const ListedSessionSchema = record(
  {
    id,
    name: text(200, 'name of the session'),
    trainee: text(100, 'who sprayed; may be empty'),
    ...FILE,
    sprayedAt: time('when it was sprayed'),
    keptAt: time('when it was kept'),
    figures: ListedFiguresSchema,
  },
  'a practice session of the workshop',
);

/** The manifest of a workshop's zip: what is in it, and under which digests. */
export const WorkshopSchema = record(
  {
    format: v.pipe(v.literal('crosscoat-workshop', 'give "crosscoat-workshop"'), v.description('what this file is')),
    schemaVersion: v.pipe(v.literal(WORKSHOP_VERSION, VERSION_ADVICE), v.description('version of this file format')),
    made: time('when the zip was made'),
    jobs: v.optional(list(ListedJobSchema, 0, MOST_LISTED, 'the jobs'), []),
    sessions: v.optional(list(ListedSessionSchema, 0, MOST_LISTED, 'the practice sessions'), []),
    rubric: v.optional(record(FILE, 'the rubric that practice is marked by, where it is not the usual one')),
    preferences: v.optional(record({ units: v.optional(oneOf(['metric', 'us'], 'units on the screen')), who: v.optional(text(200, 'who writes the log')) }, 'what the reader had set')),
  },
  'a workshop',
);

/** The manifest of a workshop as read. */
export type WorkshopSpec = v.InferOutput<typeof WorkshopSchema>;
/** A job that a manifest lists. */
export type ListedJobSpec = WorkshopSpec['jobs'][number];
/** A practice session that a manifest lists. */
export type ListedSessionSpec = WorkshopSpec['sessions'][number];

/**
 * The manifest of a workshop from its text. Whether its files are there, and fit their digests, is for the reader of the zip.
 * @throws CrosscoatError `limit`, `not-json` (with row and column) or `schema`.
 */
export function parseWorkshop(input: unknown, file = WORKSHOP_MANIFEST): WorkshopSpec {
  const head = { words: `parseWorkshop: ${file}`, file };
  return fitted(WorkshopSchema, typeof input === 'string' ? readJson(input, head) : input, head);
}
