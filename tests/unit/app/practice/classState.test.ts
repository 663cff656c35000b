import { beforeEach, describe, expect, it } from 'vitest';
import { USUAL_RUBRIC, type RubricSpec } from '../../../../sim/job/rubric.ts';
import { serialiseSession, type SessionSpec } from '../../../../sim/job/session.ts';
import { classState, clearClass, markClass, openClassFiles, stopMarking, waitAgain, waitingCount } from '../../../../src/views/practice/progress/classState.ts';
import type { ClassReply } from '../../../../src/worker/protocol.ts';
import { classReply, score, session } from './samples.ts';

const STRICT: RubricSpec = { ...USUAL_RUBRIC, name: 'Strict' };
const reply = (id: string): ClassReply => classReply(id, score({}));

async function open(...trainees: string[]): Promise<void> {
  await openClassFiles(trainees.map((trainee) => {
    const text = serialiseSession(session({ trainee }));
    return { name: `${trainee}.json`, size: text.length, text: () => Promise.resolve(text) };
  }));
}

describe('markClass', () => {
  beforeEach(clearClass);

  it('asks for one session at a time, in the order opened', async () => {
    await open('B', 'A');
    const log: string[] = [];
    await markClass(async ({ trainee, id }) => {
      log.push(`ask ${trainee}`);
      await Promise.resolve();
      log.push(`end ${trainee}`);
      return reply(id);
    }, USUAL_RUBRIC);
    expect(log).toEqual(['ask B', 'end B', 'ask A', 'end A']);
    expect(waitingCount.value).toBe(0);
  });

  it('goes on past one that cannot be marked, and asks for it again on demand', async () => {
    await open('A', 'B');
    let isBroken = true;
    const mark = ({ trainee, id }: SessionSpec): Promise<ClassReply> => (isBroken && trainee === 'A' ? Promise.reject(new Error('row 3: time goes back')) : Promise.resolve(reply(id)));
    await markClass(mark, USUAL_RUBRIC);
    expect(classState.rows.value.map(({ problem }) => problem?.text ?? null)).toEqual(['row 3: time goes back', null]);
    isBroken = false;
    waitAgain();
    await markClass(mark, USUAL_RUBRIC);
    expect(classState.rows.value.every((row) => row.reply !== null && row.problem === null)).toBe(true);
  });

  it('marks all again by another rubric, and drops the answer that was on its way', async () => {
    await open('A', 'B');
    const asked: string[] = [];
    let release = (): void => undefined;
    const slow = new Promise<void>((resolve) => (release = resolve));
    const first = markClass(async ({ trainee }) => {
      asked.push(`usual ${trainee}`);
      await slow;
      return reply('late');
    }, USUAL_RUBRIC);
    await markClass(({ trainee, id }) => {
      asked.push(`strict ${trainee}`);
      return Promise.resolve(reply(id));
    }, STRICT);
    release();
    await first;
    expect(asked).toEqual(['usual A', 'strict A', 'strict B']);
    expect(classState.rows.value.map((row) => row.reply?.id)).toEqual(['session-1', 'session-1']);
  });

  it('takes up sessions opened meanwhile, and does not ask twice for the same', async () => {
    await open('A');
    const asked: string[] = [];
    const mark = async ({ trainee, id }: SessionSpec): Promise<ClassReply> => {
      asked.push(trainee);
      if (trainee === 'A') await open('B');
      return reply(id);
    };
    await Promise.all([markClass(mark, USUAL_RUBRIC), markClass(mark, USUAL_RUBRIC)]);
    await markClass(mark, USUAL_RUBRIC);
    expect(asked).toEqual(['A', 'B']);
  });

  it('stops when the view is left and goes on when it comes back', async () => {
    await open('A', 'B');
    await markClass(({ id }) => {
      stopMarking();
      return Promise.resolve(reply(id));
    }, USUAL_RUBRIC);
    expect(waitingCount.value).toBe(2);
    await markClass(({ id }) => Promise.resolve(reply(id)), USUAL_RUBRIC);
    expect(waitingCount.value).toBe(0);
  });
});
