import { readdirSync } from 'node:fs';
import Ajv2020 from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { CrosscoatError, type ErrorCode } from '../../../sim/base/errors.ts';
import { demoJob } from '../../../sim/job/demo.ts';
import { jobJsonSchema } from '../../../sim/job/jsonSchema.ts';
import { parseJob } from '../../../sim/job/parse.ts';
import type { CoatSpec, Job } from '../../../sim/job/schema.ts';
import { jobText, thrownBy } from './fixtures.ts';

/** A job file with one fault: what the reader is told, and whether JSON Schema can tell it too. */
interface BadJob {
  readonly name: string;
  readonly code: ErrorCode;
  readonly pointer?: string;
  /** All of these stand in the message. */
  readonly words: readonly string[];
  readonly inJsonSchema: boolean;
}

const schema = (name: string, pointer: string, ...words: string[]): BadJob => ({ name, code: 'schema', pointer, words, inJsonSchema: true });
/** Faults between two places of a file, which JSON Schema cannot state. */
const crossed = (name: string, pointer: string, ...words: string[]): BadJob => ({ ...schema(name, pointer, ...words), inJsonSchema: false });

const BAD_JOBS: readonly BadJob[] = [
  { name: 'not-an-object', code: 'schema', words: ['a list of 2, not a job', '{"schemaVersion": 6'], inJsonSchema: true },
  { name: 'no-version', code: 'version', pointer: '/schemaVersion', words: ['no schemaVersion', 'add "schemaVersion": 6'], inJsonSchema: true },
  { name: 'newer-version', code: 'version', pointer: '/schemaVersion', words: ['made by a newer Crosscoat', 'schemaVersion 7', 'update'], inJsonSchema: true },
  { name: 'version-text', code: 'version', pointer: '/schemaVersion', words: ['"1" is not a whole number'], inJsonSchema: true },
  schema('missing-key', '/seed', '/seed is missing; give a whole number from 0 to 4294967295'),
  schema('unknown-key', '/coats/0/plan/overlap_percent', 'overlap_pct is not a known key; did you mean "overlap_percent"?'),
  schema('unit-in-key', '/setUps/0/fan/width_mm', 'width_in is not a known key; did you mean "width_mm"?'),
  schema('text-for-number', '/coats/0/plan/distance_mm', '= "8 in": give a number from 20 to 1000 (gun to panel, mm)'),
  schema('overlap-whole', '/coats/0/plan/overlap_percent', '= 100: give a number from 0 to 95'),
  schema('speed-zero', '/coats/0/plan/speed_m_s', '= 0: give a number from 0.01 to 5'),
  schema('cell-small', '/cell_mm', '= 0.1: give a number from 1 to 10'),
  schema('seed-fraction', '/seed', '= 1.5: give a whole number'),
  schema('id-with-space', '/setUps/0/id', '= "my gun": give an id of 1 to 64 letters'),
  schema('family-unknown', '/setUps/0/fan/profile/family', '= "square": give the family "double-beta"'),
  schema('word-unknown', '/coats/0/target/film', '= "damp": give "wet" or "dry"'),
  schema('hand-unknown', '/coats/0/hand/kind', '= "shaky": give the kind "steady", "practised", "beginner" or "own"'),
  schema('hand-own-short', '/coats/0/hand/across_mm', 'is missing; give a number from 0 to 500 (largest error of the aim, square to the travel, mm)'),
  schema('hand-own-wild', '/coats/0/hand/speed_percent', '= 90: give a number from 0 to 89'),
  schema('hand-word-amount', '/coats/0/hand/distance_mm', 'distance_mm is not a known key; known here: kind'),
  schema('no-coats', '/coats', 'a list of 0: give a list of 1 to 500'),
  schema('backing-unknown', '/part/panels/0/backing', '= "steel": give "open-cloth" or "thin-sheet" or "thick-board"'),
  schema('air-too-wet', '/air/humidity_percent', '= 101: give a number from 0 to 100 (relative humidity, %)'),
  schema('thinner-none', '/mixes/0/thinner', 'a list of 0: give a list of 1 to 12 (the thinner'),
  schema('two-shapes', '/part/panels/0/outline', 'has rectangle_mm and circle_mm; give only one'),
  schema('shape-misspelt', '/part/panels/0/outline/path_in', 'did you mean "path_mm"?'),
  schema('shape-short', '/part/panels/0/outline/rectangle_mm/1', '= nothing: give a number from 1 to 100000 (height, mm)'),
  schema('shape-long', '/part/panels/0/outline/rectangle_mm/2', 'give two numbers, width and height in mm'),
  schema('many-problems', '/setUps/0/fan/width_mm', '12 problems', '/setUps/0/drops/spread = 0', 'and 2 more'),
  crossed('id-repeated', '/setUps/1/id', '= "gun" is also the id of /setUps/0'),
  crossed('panel-unknown', '/coats/0/panel', '= "bord" is the id of no panel; did you mean "board"?'),
  crossed('set-up-unknown', '/coats/0/setUp', '= "sprayer" is the id of no set-up; give one of gun'),
  crossed('recording-unknown', '/coats/0/recording', 'the job has no recording'),
  crossed('mix-repeated', '/mixes/1/id', '= "general" is also the id of /mixes/0'),
  crossed('mix-unknown', '/coats/0/mix', '= "genral" is the id of no mix; did you mean "general"?'),
  crossed('thinner-short', '/mixes/0/thinner', 'has shares 30 + 45 + 20 = 95 %, not 100 % (± 0.1)'),
  crossed('thinner-over', '/mixes/0/thinner', 'has shares 30 + 50.2 + 20 = 100.2 %, not 100 % (± 0.1)'),
  crossed('over-unknown', '/coats/1/over/coat', '= "firs" is the id of no coat; did you mean "first"?'),
  crossed('over-itself', '/coats/1/over/coat', '= "second" is this coat itself'),
  crossed('over-circle', '/coats/0/over/coat', 'makes a circle: first over third over second over first;'),
  crossed('over-other-panel', '/coats/1/over/coat', '= "first" lies on panel "lid", and this coat on "board"'),
  crossed('limits-crossed', '/coats/0/target/min_percent', '= 100 is not below max_percent = 100'),
  crossed('holiday-above', '/coats/0/target/holiday_percent', '= 90 is not below min_percent = 80'),
  crossed('range-falls', '/setUps/0/distanceRange_mm', '= [400, 100] does not rise'),
  crossed('table-falls', '/setUps/0/fan/profile/place_mm/2', '= -10 is not above the place before it, 0'),
  crossed('table-uneven', '/setUps/0/fan/profile/film', 'has 4 values for 3 places'),
  crossed('table-empty', '/setUps/0/fan/profile/film', 'has no film above 0'),
];

const validate = new Ajv2020({ strict: true, strictTypes: false, allErrors: true }).compile({ ...jobJsonSchema() } as Record<string, unknown>);

describe('parseJob on a bad file', () => {
  it.each(BAD_JOBS)('$name', ({ name, code, pointer, words, inJsonSchema }) => {
    const text = jobText(name);
    const error = thrownBy(() => parseJob(text, `${name}.json`)) as CrosscoatError;
    expect(error).toBeInstanceOf(CrosscoatError);
    expect(error.code).toBe(code);
    expect(error.place.file).toBe(`${name}.json`);
    expect(error.place.pointer).toBe(pointer);
    expect(error.message).toContain(`${name}.json`);
    for (const word of words) expect(error.message).toContain(word);
    expect(validate(JSON.parse(text)), 'JSON Schema').toBe(!inJsonSchema);
  });

  it('has a row in the table for every fixture that a job reader can judge', () => {
    const judgedElsewhere = /^(?:good|good-mix|good-own-hand|version-\d+|not-json-.*|outline-.*|hole-.*|holes-.*)\.json$/;
    const files = readdirSync(new URL('../../fixtures/jobs/', import.meta.url)).filter((file) => !judgedElsewhere.test(file));
    expect(files.sort()).toEqual(BAD_JOBS.map(({ name }) => `${name}.json`).sort());
  });
});

describe('parseJob on text that is not JSON', () => {
  it.each([
    ['not-json-comma', 4, 1, '"}" stands where a key in double quotes is expected'],
    ['not-json-cut', 4, 1, 'the text ends where a value or ] is expected'],
    ['not-json-quote', 2, 2, '"\'" stands where a key in double quotes or } is expected'],
  ])('%s: row %d, column %d', (name, row, column, words) => {
    const error = thrownBy(() => parseJob(jobText(name), 'job.json')) as CrosscoatError;
    expect(error.code).toBe('not-json');
    expect(error.place).toEqual({ file: 'job.json', row, column: String(column) });
    expect(error.message).toContain(`in row ${row}, column ${column}, ${words}`);
  });

  it('refuses a text longer than the limit before reading it', () => {
    const error = thrownBy(() => parseJob(' '.repeat(64e6 + 1), 'job.json')) as CrosscoatError;
    expect(error.code).toBe('limit');
    expect(error.message).toContain('more than 64 million');
  });
});

describe('parseJob on a value', () => {
  it.each([NaN, Infinity, -Infinity])('refuses %d where a number belongs', (value) => {
    const job = { ...demoJob(), cell_mm: value };
    expect(() => parseJob(job)).toThrow(`/cell_mm = ${value}: give a number from 1 to 10`);
  });

  it('names every unknown key of an object', () => {
    const job = { ...demoJob(), colour: 'red', owner: 'nobody' };
    expect(() => parseJob(job)).toThrow(/\/colour is not a known key \(nor is "owner"\)/);
  });

  it('does not take keys that every object has for known ones', () => {
    expect(() => parseJob(JSON.stringify(demoJob()).replace('{', '{"constructor":1,'))).toThrow('/constructor is not a known key');
    expect(() => parseJob(JSON.stringify(demoJob()).replace('{', '{"__proto__":{"a":1},'))).toThrow('/__proto__ is not a known key');
  });

  it('fills in what is usual and says so in one warning', () => {
    const { cell_mm, ...job } = demoJob();
    const { attitude, ...panel } = job.part.panels[0]!;
    const parsed = parseJob({ ...job, part: { ...job.part, panels: [panel] } });
    expect(parsed.job.cell_mm).toBe(2);
    expect(parsed.job.part.panels[0]!.attitude).toEqual({ tilt_deg: 90, down_deg: -90 });
    expect(parsed.warnings).toHaveLength(1);
    expect(parsed.warnings[0]).toMatchObject({ code: 'defaults-used', place: { pointer: '/cell_mm' } });
    expect(parsed.warnings[0]!.text).toContain('/cell_mm = 2');
    expect(parsed.warnings[0]!.text).toContain('/part/panels/0/attitude = {"tilt_deg":90,"down_deg":-90}');
    expect([cell_mm, attitude]).toEqual([2, { tilt_deg: 90, down_deg: -90 }]);
  });

  it.each([99.9, 100.1])('takes a thinner whose shares add to %d per cent', (sum) => {
    const job = JSON.parse(jobText('good-mix')) as Job;
    // 33.3 + 33.3 + the rest, none of which a computer holds exactly.
    const shares = [33.3, 33.3, Number((sum - 66.6).toFixed(1))];
    job.mixes[0]!.thinner = shares.map((percent, i) => ({ solvent: ['acetone', 'toluene', 'n-butyl-acetate'][i]!, percent }));
    expect(parseJob(job).job.mixes[0]!.thinner.map(({ percent }) => percent)).toEqual(shares);
  });

  it('leaves a room that is warmer than its ceiling to the model to doubt', () => {
    const job = { ...demoJob(), air: { ...demoJob().air, temperature_C: 35, ceiling_C: 32 } };
    expect(parseJob(job)).toEqual({ job, warnings: [] });
  });

  it('takes coats over each other in any order, and two over the same one', () => {
    const job = JSON.parse(jobText('good-mix')) as Job;
    const [first, second] = job.coats as [CoatSpec, CoatSpec];
    const third = { ...second, id: 'third' };
    expect(parseJob({ ...job, coats: [third, second, first] }).job.coats.map(({ over }) => over?.coat)).toEqual(['first', 'first', undefined]);
  });

  it('tells each circle of coats once', () => {
    const job = JSON.parse(jobText('good-mix')) as Job;
    const lying = (id: string, coat: string): CoatSpec => ({ ...job.coats[0]!, id, over: { coat, wait_min: 1 } });
    const coats = [lying('x', 'a'), lying('a', 'b'), lying('b', 'a'), lying('c', 'd'), lying('d', 'c')];
    const message = thrownBy(() => parseJob({ ...job, coats })).message;
    expect(message).toContain('2 problems');
    expect(message).toContain('/coats/1/over/coat makes a circle: a over b over a;');
    expect(message).toContain('/coats/3/over/coat makes a circle: c over d over c;');
  });

  it('skips a byte order mark', () => {
    expect(parseJob(`\ufeff${jobText('good')}`).job.name).toBe('Test panel');
  });
});

describe('jobJsonSchema', () => {
  it('is a draft 2020-12 schema with a name and descriptions', () => {
    const json = jobJsonSchema();
    expect(json.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(json.title).toBe('Crosscoat job');
    expect(JSON.stringify(json)).toContain('liquid leaving the gun, trigger full on, mL/min');
  });

  it('accepts the demo job and the good fixtures, as parseJob does', () => {
    for (const job of [demoJob(), ...['good', 'good-mix', 'good-own-hand'].map((name) => JSON.parse(jobText(name)) as unknown)]) {
      expect(validate(job), JSON.stringify(validate.errors)).toBe(true);
      expect(parseJob(job).warnings).toEqual([]);
    }
  });

  it('accepts a job that leaves the usual values out', () => {
    const { cell_mm, recordings, ...job } = demoJob();
    expect(parseJob(job).job).toMatchObject({ cell_mm, recordings });
    expect(validate(job), JSON.stringify(validate.errors)).toBe(true);
  });
});
