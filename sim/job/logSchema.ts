import * as v from 'valibot';
import { MOST_CHANGES } from '../base/historyLimits.ts';
import { ChangeSchema, moment, PERSON, SignedSchema } from './recordSchema.ts';
import { id, list, number, oneOf, record, text, wholeNumber, yesNo } from './words.ts';

/** What an entry of the log is about. */
export const LOG_KINDS = ['coat', 'fix', 'sand', 'mask', 'rework', 'other'] as const;

/** Most entries of a log. */
export const MOST_ENTRIES = 2000;

/** Longest photograph, letters of base64: some 300 kB. */
export const LONGEST_PHOTO = 400_000;

const DATE = /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/;

function date(description: string) {
  const advice = `give a date such as 2026-05-04 (${description})`;
  return v.pipe(v.string(advice), v.regex(DATE, advice), v.description(description));
}

/** A wet-film comb: the film lies between two teeth, never at one figure. */
export const COMB = {
  low_um: number(0, 5000, 'last tooth that was wetted, µm wet; 0 where none was'),
  high_um: v.optional(number(0.1, 5000, 'next tooth, that stayed dry, µm wet; left out where every tooth was wetted')),
};

/** A place on a panel. */
export const PLACE = {
  x_mm: v.optional(number(-1e5, 1e5, 'x of the place, mm')),
  y_mm: v.optional(number(-1e5, 1e5, 'y of the place, mm')),
};

const NotedAirSchema = record(
  {
    temperature_C: number(-20, 60, 'air temperature, °C'),
    humidity_percent: number(0, 100, 'relative humidity, %'),
    surface_C: v.optional(number(-20, 80, 'temperature of the part\'s surface, °C')),
  },
  'the air as read',
);

const CanSchema = record(
  {
    name: text(200, 'what it is called'),
    batch: v.optional(text(100, 'batch number on the tin')),
    shelfLife: v.optional(date('last day on which it may be used')),
  },
  'what came out of a tin',
);

const PhotoSchema = record(
  {
    id,
    name: text(200, 'what it shows'),
    width: wholeNumber(1, 4000, 'pixels across'),
    height: wholeNumber(1, 4000, 'pixels down'),
    jpeg: v.pipe(text(LONGEST_PHOTO, 'JPEG, base64'), v.regex(/^[A-Za-z0-9+/]+={0,2}$/, 'give base64 (JPEG)')),
  },
  'a photograph, kept small',
);

/** One thing done, as it was done. What is left out was not noted. */
export const LogEntrySchema = record(
  {
    id,
    kind: oneOf(LOG_KINDS, 'what it is about'),
    name: text(200, 'what was done'),
    step: v.optional(text(64, 'id of the step of the scheme')),
    coat: v.optional(v.pipe(id, v.description('id of the coat'))),
    panels: v.optional(list(id, 0, 100, 'ids of the panels'), []),
    started: moment('begun'),
    ended: v.optional(moment('ended')),
    ...PERSON,
    product: v.optional(CanSchema),
    thinner: v.optional(CanSchema),
    ratio: v.optional(text(100, 'finish to thinner, in words')),
    cup: v.optional(
      record(
        {
          kind: text(40, 'id of a cup: ford-4, zahn-2, iso-4, …'),
          seconds: number(1, 1000, 'time to the first break of the stream, s'),
          temperature_C: number(-20, 60, 'temperature of the liquid in the cup, °C'),
        },
        'a cup reading of the mix',
      ),
    ),
    used_mL: v.optional(number(0, 1e6, 'mixed liquid used, mL')),
    airStart: v.optional(NotedAirSchema),
    airEnd: v.optional(NotedAirSchema),
    setUp: v.optional(v.pipe(id, v.description('id of the set-up'))),
    gun: v.optional(text(500, 'the gun as it was set, in words')),
    recording: v.optional(v.pipe(id, v.description('id of the recorded strokes'))),
    combs: v.optional(list(record({ ...COMB, ...PLACE }, 'a reading of the wet-film comb'), 0, 200, 'readings of the wet-film comb'), []),
    faults: v.optional(
      list(record({ what: text(200, 'what was seen'), where: v.optional(text(200, 'where')), done: v.optional(text(500, 'what was done about it')) }, 'a fault seen'), 0, 100, 'faults seen'),
      [],
    ),
    waited_min: v.optional(number(0, 1e6, 'waited before it, minutes')),
    sanding: v.optional(record({ grit: wholeNumber(40, 5000, 'grit number of the paper'), wet: yesNo('sanded wet') }, 'sanding')),
    notes: v.optional(text(5000, 'remark')),
    photos: v.optional(list(PhotoSchema, 0, 12, 'photographs'), []),
    history: v.optional(list(ChangeSchema, 0, MOST_CHANGES, 'changes, oldest first'), []),
    signed: v.optional(SignedSchema),
  },
  'an entry of the log',
);
