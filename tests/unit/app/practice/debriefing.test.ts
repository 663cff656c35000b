import 'fake-indexeddb/auto';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { debriefing, finishSession, lookThrough, openFiles, startDebriefing } from '../../../../src/app/practice/debriefing.ts';
import { closeKeptSessions, keepDraft, keptSessions, openKeptSessions, readDraft } from '../../../../src/app/practice/keptSessions.ts';
import { practice } from '../../../../src/app/practice/practice.ts';
import type { SessionDraft } from '../../../../src/storage/sessions.ts';
import type { Answered, Asked } from '../../../../src/worker/protocol.ts';
import { parseSession, serialiseSession } from '../../../../sim/job/session.ts';
import { drillById } from '../../../../sim/run/drills/drills.ts';
import { taskOf } from '../../../../sim/run/drills/drill.ts';

/** A worker that answers when the test says so. */
class SlowWorker {
  static asked: { readonly asked: Asked; readonly answer: (reply: Partial<Answered>) => void }[] = [];
  onmessage: ((event: { data: unknown }) => void) | null = null;
  onerror = null;
  onmessageerror = null;

  postMessage(asked: Asked): void {
    SlowWorker.asked.push({ asked, answer: (reply) => this.onmessage?.({ data: { id: asked.id, ...reply } }) });
  }

  terminate(): void {
    SlowWorker.asked = [];
  }
}

const drill = drillById('square-and-steady');
const draft = (trainee: string): SessionDraft => ({ task: taskOf(drill), job: drill.job(), trainee, strokes: 't_s,x_mm,y_mm\n0,0,0\n1,100,0\n' });
const HAND = { mean: 0, deviation: 0, correlation_s: NaN, count: 0 };

/** What the worker says of a session: as much of it as is kept. */
function debriefed(id: string): Partial<Answered> {
  const hand = { distance_m: HAND, across_m: HAND, speed: HAND, tilt_rad: HAND, overlap: HAND };
  return { kind: 'reply', reply: { id, reported: { score: { total: 1, rows: [], isPassed: true } }, hand } as never };
}

/** The debriefs asked for, oldest first, once there are so many. */
async function debriefs(count: number): Promise<typeof SlowWorker.asked> {
  const found = (): typeof SlowWorker.asked => SlowWorker.asked.filter(({ asked }) => asked.name === 'debrief');
  await vi.waitFor(() => expect(found()).toHaveLength(count));
  return found();
}

function sessionIn({ asked }: (typeof SlowWorker.asked)[number]): { readonly id: string; readonly trainee: string } {
  if (asked.name !== 'debrief') throw new Error(asked.name);
  return asked.request.session;
}

describe('a session that is finished', () => {
  let stop = (): void => undefined;

  beforeEach(async () => {
    vi.stubGlobal('Worker', SlowWorker);
    stop = startDebriefing();
    await openKeptSessions();
  });

  afterEach(async () => {
    stop();
    await closeKeptSessions();
    indexedDB.deleteDatabase('crosscoat');
    practice.problem.value = null;
    debriefing.session.value = null;
    debriefing.failed.value = [];
    vi.unstubAllGlobals();
  });

  it('is kept though another one is finished while it is looked through', async () => {
    const first = finishSession(draft('Trainee A'));
    const [one] = await debriefs(1);
    const second = finishSession(draft('Trainee B'));
    const [, two] = await debriefs(2);
    one!.answer(debriefed(sessionIn(one!).id));
    two!.answer(debriefed(sessionIn(two!).id));
    await Promise.all([first, second]);
    expect(keptSessions.list.value.map(({ session }) => session.trainee).sort()).toEqual(['Trainee A', 'Trainee B']);
    expect(debriefing.reply.value?.id).toBe(sessionIn(two!).id);
    expect(sessionIn(one!).id).not.toBe(sessionIn(two!).id);
  });

  it('keeps the job whole, with the recording that lays the coat beneath', async () => {
    const cure = drillById('air-on-a-run');
    const finishing = finishSession({ ...draft('Trainee A'), task: taskOf(cure), job: cure.job() });
    const [one] = await debriefs(1);
    const { asked } = one!;
    if (asked.name !== 'debrief') throw new Error(asked.name);
    expect(parseSession(serialiseSession(asked.request.session)).job.recordings).toHaveLength(1);
    one!.answer(debriefed(sessionIn(one!).id));
    await finishing;
  });

  it('is stored before it is looked through, and forgets no later draft', async () => {
    const finishing = finishSession(draft('Trainee A'));
    const [one] = await debriefs(1);
    expect((await readDraft())?.trainee).toBe('Trainee A');
    await keepDraft({ ...draft('Trainee B'), strokes: 't_s,x_mm,y_mm\n0,0,0\n' });
    one!.answer(debriefed(sessionIn(one!).id));
    await finishing;
    expect((await readDraft())?.trainee).toBe('Trainee B');
  });

  it('stays as the draft where it cannot be looked through, and the page says so', async () => {
    await keepDraft(draft('Trainee A'));
    const finishing = finishSession(draft('Trainee A'));
    const [one] = await debriefs(1);
    one!.answer({ kind: 'problem', problem: { title: '', text: 'row 3 is odd', place: { row: 3 } } });
    await finishing;
    expect(practice.problem.value).toMatchObject({ title: expect.stringContaining('save it as a file') as string, text: 'row 3 is odd' });
    expect((await readDraft())?.trainee).toBe('Trainee A');
    expect(keptSessions.list.value).toEqual([]);
    expect(debriefing.failed.value.map(({ trainee }) => trainee)).toEqual(['Trainee A']);
  });

  it('asks for each habit in turn, and stops asking for a session that is no longer in view', async () => {
    const finishing = finishSession(draft('Trainee A'));
    const [one] = await debriefs(1);
    one!.answer(debriefed(sessionIn(one!).id));
    await finishing;
    await vi.waitFor(() => expect(SlowWorker.asked.filter(({ asked }) => asked.name === 'whatIf')).toHaveLength(1));
    const shown = debriefing.session.value!;
    void lookThrough({ ...shown, id: 'another' });
    const habit = SlowWorker.asked.find(({ asked }) => asked.name === 'whatIf')!;
    habit.answer({ kind: 'reply', reply: { id: shown.id } as never });
    await debriefs(2);
    expect(debriefing.whatIfs.value).toEqual([]);
    expect(SlowWorker.asked.filter(({ asked }) => asked.name === 'whatIf')).toHaveLength(1);
  });

  it('is looked through again when practice is opened again, since the worker is a new one', async () => {
    const finishing = finishSession(draft('Trainee A'));
    const [one] = await debriefs(1);
    one!.answer(debriefed(sessionIn(one!).id));
    await finishing;
    await vi.waitFor(() => expect(debriefing.whatIfsBusy.value).toBe(true));
    stop();
    expect(debriefing.whatIfsBusy.value).toBe(false);
    stop = startDebriefing();
    const [again] = await debriefs(1);
    expect(sessionIn(again!).trainee).toBe('Trainee A');
  });

  it('can come from a file, or from strokes alone, which are the drill’s that is chosen; a bad file is told and the rest opens', async () => {
    const file = (name: string, text: string) => ({ name, size: text.length, text: () => Promise.resolve(text) });
    const opening = openFiles([file('odd.json', '{'), file('strokes.csv', draft('').strokes)]);
    const [one] = await debriefs(1);
    one!.answer(debriefed(sessionIn(one!).id));
    await opening;
    expect(debriefing.session.value).toMatchObject({ name: 'strokes.csv', task: { id: 'square-and-steady' } });
    expect(practice.problem.value?.title).toContain('odd.json');
    expect(keptSessions.list.value).toHaveLength(1);
  });
});
