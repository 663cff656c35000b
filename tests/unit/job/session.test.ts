import { describe, expect, it } from 'vitest';
import { parseJob } from '../../../sim/job/parse.ts';
import { SCHEMA_VERSION } from '../../../sim/job/schemaFacts.ts';
import { parseSession, serialiseSession, type SessionSpec } from '../../../sim/job/session.ts';
import { drillById } from '../../../sim/run/drills/drills.ts';
import { taskOf } from '../../../sim/run/drills/drill.ts';

const drill = drillById('half-overlap');
const SESSION: SessionSpec = {
  sessionVersion: 1,
  id: 'a-1_B',
  trainee: 'Ö. "Quote", 1/2 in, line\nbreak',
  name: 'Session of the morning',
  sprayedAt: '2026-03-01T09:30:00Z',
  task: taskOf(drill),
  job: drill.job(),
  strokes: 't_s,x_mm,y_mm,z_mm,fan_deg,pitch_deg,yaw_deg,trigger\n0,0,0,200,90,0,0,1\n1,300,0,200,90,0,0,0\n',
};

/** An object less some of its keys, as an older file has it. */
function without(whole: object, ...keys: readonly string[]): Record<string, unknown> {
  return Object.fromEntries(Object.entries(whole).filter(([key]) => !keys.includes(key)));
}

function faultOf(change: Record<string, unknown>): { code: string; message: string; place: { pointer?: string } } {
  try {
    parseSession({ ...SESSION, ...change }, 'session.json');
  } catch (thrown) {
    return thrown as ReturnType<typeof faultOf>;
  }
  throw new Error('it was read');
}

describe('a session', () => {
  it('is read back from its own text as it was', () => {
    const text = serialiseSession(SESSION);
    expect(parseSession(text)).toEqual(SESSION);
    expect(serialiseSession(parseSession(text))).toBe(text);
    expect(text.endsWith('}\n')).toBe(true);
  });

  it('is read back for every drill', () => {
    for (const id of ['two-coats', 'around-a-hole', 'air-on-a-run', 'keep-it-wet']) {
      const other = drillById(id);
      const session = { ...SESSION, task: taskOf(other), job: other.job() };
      expect(parseSession(serialiseSession(session)), id).toEqual(session);
    }
  });

  it('needs no wait in its task; there is none then', () => {
    expect(parseSession({ ...SESSION, task: without(SESSION.task, 'wait_s') }).task.wait_s).toBe(0);
  });

  it('may name no trainee', () => {
    expect(parseSession({ ...SESSION, trainee: '', name: '' })).toMatchObject({ trainee: '', name: '' });
  });

  it('upgrades an older job inside it', () => {
    const { job } = SESSION;
    const first = {
      ...without(job, 'air', 'mixes'),
      schemaVersion: 1,
      part: { ...job.part, panels: job.part.panels.map((panel) => without(panel, 'backing')) },
      setUps: job.setUps.map((setUp) => without(setUp, 'capPressure_kPa')),
      coats: job.coats.map((coat) => without(coat, 'mix')),
    };
    expect(parseSession({ ...SESSION, job: first }).job).toEqual(parseJob(first).job);
    expect(parseSession({ ...SESSION, job: first }).job.schemaVersion).toBe(SCHEMA_VERSION);
  });
});

describe('a session that cannot be used', () => {
  it('its coat is not in its job: the place, what was given, what there is, what to do', () => {
    const fault = faultOf({ task: { ...SESSION.task, coat: 'primer' } });
    expect(fault).toMatchObject({ code: 'not-found', place: { pointer: '/task/coat' } });
    expect(fault.message).toBe('parseSession: session.json: /task/coat = "primer" is not in its job (it has drill); give one of these');
  });

  it.each([
    ['an id with a slash', { id: '../1' }, '/id', /"\.\.\/1": give an id of 1 to 64 letters, digits, - or _/],
    ['no time', { sprayedAt: 'yesterday' }, '/sprayedAt', /"yesterday": give a date and time such as 2026-03-01T09:30:00Z/],
    ['a watch of four hours', { task: { ...SESSION.task, watch_s: 14_400 } }, '/task/watch_s', /= 14400: give a number from 0 to 10800/],
    ['nothing that counts', { task: { ...SESSION.task, counts: [] } }, '/task/counts', /a list of 0: give a list of 1 to 13/],
    ['a measure that is not known', { task: { ...SESSION.task, counts: ['speed', 'gloss'] } }, '/task/counts/1', /= "gloss": give "distance" or/],
    ['another version', { sessionVersion: 7 }, '/sessionVersion', /= 7/],
    ['strokes that are no text', { strokes: 3 }, '/strokes', /= 3: give a text/],
    ['a key that is not known', { trainees: 'x' }, '/trainees', /did you mean "trainee"\?/],
  ] as const)('%s', (_, change, pointer, message) => {
    const fault = faultOf(change);
    expect(fault).toMatchObject({ code: 'schema', place: { pointer } });
    expect(fault.message).toMatch(message);
  });

  it('its job is broken: as the job’s own error, with its place in the session', () => {
    const fault = faultOf({ job: { ...SESSION.job, cell_mm: 99 } });
    expect(fault).toMatchObject({ code: 'schema', place: { pointer: '/job/cell_mm' } });
    expect(fault.message).toMatch(/^parseSession: .*: \/job\/cell_mm: .*99: give a number from 1 to 10/);
  });

  it('is not JSON', () => {
    expect(() => parseSession('{"id":', 'session.json')).toThrow(/parseSession: session\.json is not JSON: in row 1/);
  });
});
