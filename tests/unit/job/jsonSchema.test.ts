import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { demoJob, DEMO_HAND_COAT } from '../../../sim/job/demo.ts';
import { jobJsonSchema, rubricJsonSchema, sessionJsonSchema } from '../../../sim/job/jsonSchema.ts';
import { parseRubric, USUAL_RUBRIC } from '../../../sim/job/rubric.ts';
import { parseSession, serialiseSession, type SessionSpec } from '../../../sim/job/session.ts';
import { taskOf } from '../../../sim/run/drills/drill.ts';
import { DRILLS } from '../../../sim/run/drills/drills.ts';
import { ownDrill } from '../../../sim/run/drills/ownDrill.ts';

type Check = (value: unknown) => boolean;

/** JSON Schema only names the format of a date; what a date is, is for the validator to know. */
function checkOf(schema: object): Check {
  const ajv = new Ajv2020({ strict: true, strictTypes: false, allErrors: true, formats: { 'date-time': (text: string) => !Number.isNaN(Date.parse(text)) } });
  const check = ajv.compile({ ...schema });
  return (value) => check(JSON.parse(JSON.stringify(value)));
}

function passes(parse: () => unknown): boolean {
  try {
    parse();
    return true;
  } catch {
    return false;
  }
}

const checkSession = checkOf(sessionJsonSchema());
const checkRubric = checkOf(rubricJsonSchema());

const own = ownDrill(demoJob(), DEMO_HAND_COAT);
const session: SessionSpec = {
  sessionVersion: 1, id: 'first', trainee: 'Trainee', name: 'First try', sprayedAt: '2026-03-01T09:30:00Z', task: taskOf(own), job: own.job(), strokes: 't_s,x_mm\n',
};

describe('sessionJsonSchema', () => {
  it('passes the session of every drill, as it is written', () => {
    for (const drill of DRILLS) {
      const written: unknown = JSON.parse(serialiseSession({ ...session, task: taskOf(drill), job: drill.job() }));
      expect(checkSession(written), drill.id).toBe(true);
      expect(passes(() => parseSession(written)), drill.id).toBe(true);
    }
  });

  it.each<[string, unknown]>([
    ['no version', { ...session, sessionVersion: undefined }],
    ['a newer version', { ...session, sessionVersion: 2 }],
    ['an unknown key', { ...session, colour: 'red' }],
    ['no strokes', { ...session, strokes: undefined }],
    ['an id with a space', { ...session, id: 'first try' }],
    ['no date', { ...session, sprayedAt: 'this morning' }],
    ['an unknown measure', { ...session, task: { ...session.task, counts: ['looks'] } }],
    ['nothing that counts', { ...session, task: { ...session.task, counts: [] } }],
    ['a watch that is too long', { ...session, task: { ...session.task, watch_s: 10801 } }],
    ['no job', { ...session, job: undefined }],
    ['a job that is none', { ...session, job: { name: 'Board' } }],
    ['a value of the job out of range', { ...session, job: { ...session.job, cell_mm: 11 } }],
    ['an unknown key deep in the job', { ...session, job: { ...session.job, part: { ...session.job.part, paint: 'red' } } }],
  ])('refuses %s, as parseSession does', (_, bad) => {
    expect(checkSession(bad)).toBe(false);
    expect(passes(() => parseSession(bad))).toBe(false);
  });

  it('leaves to parseSession whether the job has the coat', () => {
    const bad = { ...session, task: { ...session.task, coat: 'gold' } };
    expect(checkSession(bad)).toBe(true);
    expect(passes(() => parseSession(bad))).toBe(false);
  });

  it('names itself, and holds the job’s schema whole', () => {
    expect(sessionJsonSchema()).toMatchObject({ $id: 'urn:crosscoat:session:1', $defs: { job: jobJsonSchema() } });
  });
});

describe('rubricJsonSchema', () => {
  const [row] = USUAL_RUBRIC.rows;

  it.each<[string, unknown]>([
    ['the usual rubric', USUAL_RUBRIC],
    ['one row', { ...USUAL_RUBRIC, rows: [row] }],
  ])('passes %s', (_, good) => {
    expect(checkRubric(good)).toBe(true);
    expect(passes(() => parseRubric(good))).toBe(true);
  });

  it.each<[string, unknown]>([
    ['no version', { ...USUAL_RUBRIC, rubricVersion: undefined }],
    ['a newer version', { ...USUAL_RUBRIC, rubricVersion: 2 }],
    ['no name', { ...USUAL_RUBRIC, name: undefined }],
    ['no rows', { ...USUAL_RUBRIC, rows: [] }],
    ['an unknown measure', { ...USUAL_RUBRIC, rows: [{ ...row, measure: 'looks' }] }],
    ['a weight below nothing', { ...USUAL_RUBRIC, rows: [{ ...row, weight: -1 }] }],
    ['a limit in words', { ...USUAL_RUBRIC, rows: [{ ...row, limit: '12 mm' }] }],
    ['an unknown key', { ...USUAL_RUBRIC, rows: [{ ...row, bonus: 1 }] }],
  ])('refuses %s, as parseRubric does', (_, bad) => {
    expect(checkRubric(bad)).toBe(false);
    expect(passes(() => parseRubric(bad))).toBe(false);
  });

  it.each<[string, unknown]>([
    ['one measure twice', { ...USUAL_RUBRIC, rows: [row, row] }],
    ['no mark before the limit', { ...USUAL_RUBRIC, rows: [{ ...row, limit: 50, none: 10 }] }],
  ])('leaves %s to parseRubric', (_, bad) => {
    expect(checkRubric(bad)).toBe(true);
    expect(passes(() => parseRubric(bad))).toBe(false);
  });
});
