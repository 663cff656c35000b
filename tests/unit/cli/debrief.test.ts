import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import {
  debriefJson, debriefSession, debriefText, DEMO_HAND_COAT, DEMO_SESSION_FILE, demoJob, drillById, MEASURES, ownDrill, parseSession, reportJson,
  serialiseJob, serialiseSession, taskOf, USUAL_RUBRIC, whatIf, WHAT_IFS, writeRecording,
  type Drill, type SessionSpec,
} from '../../../sim/index.ts';
import type { StrokeHabit } from '../../../sim/run/demonstrations/handPaths.ts';
import { ready, withHabit } from '../run/drills/sprayed.ts';
import { inPieces, run, scratchFolder } from './fakeIo.ts';

const folder = scratchFolder();
const inFolder = (name: string) => join(folder, name);

/** A drill sprayed as planned, but for a habit in its third stroke. */
function sprayed(drill: Drill, habit: StrokeHabit): SessionSpec {
  const prepared = ready(drill);
  const strokes = [...writeRecording(withHabit(prepared, habit, (stroke) => stroke === 2))].join('');
  return { sessionVersion: 1, id: 'first', trainee: 'Trainee', name: 'First try', sprayedAt: '2026-03-01T09:30:00Z', task: taskOf(drill), job: prepared.job, strokes };
}

const even = drillById('even-speed');
const stopped = sprayed(even, { stop: { share: 0.5, duration_s: 0.6 } });
const steady = sprayed(even, {});
const file = inFolder('stopped.crosscoat-session.json');
const table = inFolder('stopped.csv');
const jobFile = inFolder('even.json');
const rubricFile = inFolder('rubric.json');

beforeAll(() => {
  writeFileSync(file, serialiseSession(stopped));
  writeFileSync(inFolder('steady.json'), serialiseSession(steady));
  writeFileSync(table, stopped.strokes);
  writeFileSync(jobFile, serialiseJob(even.job()));
  writeFileSync(inFolder('demo.json'), serialiseJob(demoJob()));
  writeFileSync(rubricFile, JSON.stringify({ rubricVersion: 1, name: 'Lenient', rows: [{ measure: 'speed', weight: 1, limit: 90, none: 100 }, { measure: 'stops', weight: 3, limit: 1, none: 2 }] }));
  writeFileSync(inFolder('bad.csv'), 't_s,x_mm,y_mm,z_mm,trigger\n0,0,0,200,1\n1,none,0,200,1\n');
});

describe('crosscoat debrief', () => {
  it('prints the debrief of a session file', async () => {
    const { code, out, err } = await run(['debrief', file]);
    expect([code, err]).toEqual([0, '']);
    const debrief = debriefSession(parseSession(serialiseSession(stopped)), USUAL_RUBRIC);
    expect(out).toBe(debriefText(debrief, WHAT_IFS.map((habit) => whatIf(debrief, habit)), 'metric'));
    expect(out).toMatch(/not yet\. Outside the limits: .*stops/s);
  });

  it('asks no questions with --no-what-if, and speaks US units', async () => {
    const quick = (await run(['debrief', file, '--no-what-if'])).out;
    expect(quick).not.toContain('What if');
    const whole = (await run(['debrief', file])).out;
    expect(whole.replace(/What if\n.*?\n\n/s, '')).toBe(quick);
    expect((await run(['debrief', file, '--no-what-if', '--units', 'us'])).out).toMatch(/Gun distance .* in/);
  });

  it('reads a session from standard input, and strokes beside a drill, to the same words', async () => {
    // Strokes alone do not say whose they are.
    const out = (await run(['debrief', file, '--no-what-if'])).out.replace(', Trainee', '');
    const ways: [string[], string][] = [
      [['-'], serialiseSession(stopped)],
      [['--strokes', table, '--drill', 'even-speed'], ''],
      [['--strokes', table, '--drill', '2'], ''],
      [['--strokes', '-', '--drill', 'even-speed'], stopped.strokes],
    ];
    for (const [argv, input] of ways) expect((await run(['debrief', ...argv, '--no-what-if'], { input: () => inPieces(input) })).out.replace(', Trainee', ''), argv.join(' ')).toBe(out);
  });

  it('marks strokes beside a coat of a job by every measure; its only coat needs no name', async () => {
    const { code, out } = await run(['debrief', '--strokes', table, '--job', jobFile, '--no-what-if', '--json']);
    expect(code).toBe(0);
    const json = JSON.parse(out) as { task: string; measures: { measure: string; asked: boolean }[] };
    expect(json.task).toBe('own');
    expect(json.measures.filter(({ asked }) => asked).map(({ measure }) => measure)).toEqual(MEASURES);
    expect((await run(['debrief', '--strokes', table, '--job', '-', '--coat', even.coat, '--no-what-if', '--json'], { input: () => inPieces(serialiseJob(even.job())) })).out).toBe(out);
  });

  it('prints one JSON object and nothing else with --json', async () => {
    const { out, err } = await run(['debrief', file, '--json'], { isTerminal: true });
    const debrief = debriefSession(stopped, USUAL_RUBRIC);
    expect(err).toBe('');
    expect(JSON.parse(out)).toEqual(debriefJson(debrief, WHAT_IFS.map((habit) => whatIf(debrief, habit)), 'metric'));
  });

  it('gives 1 with --strict where the session is not passed, else 0', async () => {
    expect((await run(['debrief', file, '--strict', '--no-what-if'])).code).toBe(1);
    expect((await run(['debrief', file, '--no-what-if'])).code).toBe(0);
    expect((await run(['debrief', inFolder('steady.json'), '--strict', '--no-what-if'])).code).toBe(0);
  });

  it('marks by the rubric given', async () => {
    const { code, out } = await run(['debrief', file, '--rubric', rubricFile, '--strict', '--no-what-if', '--json']);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ passed: true, measures: [{ measure: 'speed', limit: 90 }, { measure: 'stops', limit: 1 }] });
    expect((await run(['debrief', file, '--rubric', '-', '--no-what-if'], { input: () => inPieces(JSON.stringify(USUAL_RUBRIC)) })).out).toBe((await run(['debrief', file, '--no-what-if'])).out);
  });

  it.each<[string, string[], RegExp]>([
    ['nothing', [], /no session is given; give a session file; or --strokes with --drill/],
    ['a session and a drill', [file, '--drill', 'even-speed'], /--drill even-speed and the session file .*stopped.* do not go together/],
    ['a session and strokes', [file, '--strokes', table], /--strokes .* and the session file/],
    ['a drill without strokes', ['--drill', 'even-speed'], /no session is given/],
    ['strokes alone', ['--strokes', table], /--strokes .*stopped\.csv does not say what it was sprayed for; give --drill, or --job and --coat/],
    ['a drill and a job', ['--strokes', table, '--drill', 'even-speed', '--job', jobFile], /--drill even-speed and --job .* do not go together/],
    ['a drill and a coat', ['--strokes', table, '--drill', 'even-speed', '--coat', 'drill'], /--drill even-speed and --coat drill .*leave --coat out/],
    ['a job of many coats and none chosen', ['--strokes', table, '--job', inFolder('demo.json')], /the job has 4 coats .*give one of planned, by-hand/],
    ['an unknown coat', ['--strokes', table, '--job', jobFile, '--coat', 'gold'], /coat "gold" is not in the job/],
    ['an unknown drill', ['--strokes', table, '--drill', 'even-sped'], /did you mean "even-speed"/],
    ['standard input twice', ['--strokes', '-', '--job', '-'], /more than one file is -/],
    ['a table as a session', [table], /stopped\.csv is a table of strokes by its name, not a session file; give it with --strokes/],
    ['a file that is not there', [inFolder('none.json')], /none\.json: no such file; give the session file's path/],
    ['a job as a session', [jobFile], /even\.json: .*\/sessionVersion is missing/s],
    ['a rubric that is none', [file, '--rubric', jobFile], /parseRubric: .*even\.json/],
    ['strokes that cannot be read', ['--strokes', inFolder('bad.csv'), '--drill', 'even-speed'], /bad\.csv: row 3.*none/],
  ])('refuses %s', async (_, argv, message) => {
    const { code, out, err } = await run(['debrief', ...argv]);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(message);
  });

  it('names the session file whose strokes cannot be read', async () => {
    writeFileSync(inFolder('empty.json'), serialiseSession({ ...stopped, strokes: 't_s,x_mm\n' }));
    expect((await run(['debrief', inFolder('empty.json')])).err).toMatch(/^crosscoat: .*empty\.json, \/strokes: row 1 has no column for y/);
  });
});

describe('crosscoat schema', () => {
  it('prints the schema of each file; the job’s where none is named', async () => {
    const idOf = async (...argv: string[]) => (JSON.parse((await run(['schema', ...argv])).out) as { $id: string }).$id;
    expect(await idOf()).toBe(await idOf('job'));
    expect(await idOf('session')).toBe('urn:crosscoat:session:1');
    expect(await idOf('rubric')).toBe('urn:crosscoat:rubric:1');
  });

  it('refuses another', async () => {
    expect(await run(['schema', 'coat'])).toMatchObject({ code: 2, err: expect.stringMatching(/Allowed choices are job, session, rubric/) as string });
  });
});

describe('the film of a debrief', () => {
  const own = ownDrill({ ...demoJob(), cell_mm: 5 }, DEMO_HAND_COAT);
  const demoSession = readFileSync(new URL(`../../../sim/job/${DEMO_SESSION_FILE}`, import.meta.url), 'utf8');
  const SESSIONS: [string, SessionSpec][] = [
    ['a stop', stopped],
    ['a slow stroke on an upright board', sprayed(drillById('upright'), { pace: 0.5 })],
    ['air over a wet coat', sprayed(drillById('air-on-a-run'), {})],
    ['the demo’s session', { ...stopped, task: taskOf(own), job: own.job(), strokes: demoSession }],
  ];

  // Both print at 12 figures, through one formatter; what is compared is the model under them.
  it.each(SESSIONS)('is that of crosscoat spray, digit by digit: %s', async (_, session) => {
    writeFileSync(inFolder('sprayed.json'), serialiseJob(session.job));
    writeFileSync(inFolder('sprayed.csv'), session.strokes);
    const { out } = await run(['spray', inFolder('sprayed.json'), '--strokes', inFolder('sprayed.csv'), '--coat', session.task.coat, '--no-cures', '--json']);
    const { setting, strokes, laid, verdict } = debriefSession(session, USUAL_RUBRIC).coat;
    const debriefed = JSON.parse(JSON.stringify(reportJson([{ setting, strokes, laid, verdict }], { name: '', seed: 0, curesTried: false }))) as Report;
    const [panel] = (JSON.parse(out) as Report).panels;
    expect(panel).toMatchObject({ laidBy: 'recording', film: { wet: { mean_um: expect.any(Number) as number } } });
    for (const part of ['film', 'inTargetFraction', 'paint', 'faults', 'strokes'] as const) expect(panel?.[part], part).toEqual(debriefed.panels[0]?.[part]);
  });

  it('prints the same mean film in both commands', async () => {
    writeFileSync(inFolder('sprayed.json'), serialiseJob(stopped.job));
    const sprayedOut = (await run(['spray', inFolder('sprayed.json'), '--strokes', table, '--no-cures', '--json'])).out;
    const debriefOut = (await run(['debrief', file, '--no-what-if', '--json'])).out;
    const mean_um = (JSON.parse(debriefOut) as { sprayed: { mean_um: number } }).sprayed.mean_um;
    expect(mean_um).toBeGreaterThan(40);
    expect(JSON.parse(sprayedOut)).toMatchObject({ panels: [{ film: { wet: { mean_um } } }] });
  });

  it('has a fault to compare', () => {
    for (const [name, session] of SESSIONS.slice(0, 2)) expect(debriefSession(session, USUAL_RUBRIC).coat.verdict.faults.map(({ kind }) => kind), name).toContain('heavy-spot');
  });
});

interface Report {
  readonly panels: readonly Readonly<Record<'laidBy' | 'film' | 'inTargetFraction' | 'paint' | 'faults' | 'strokes', unknown>>[];
}
