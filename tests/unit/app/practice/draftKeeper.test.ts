import 'fake-indexeddb/auto';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { PathBuilder, writeRecording } from '../../../../sim/index.ts';
import { DraftKeeper } from '../../../../src/app/practice/draftKeeper.ts';
import { clearDraft, closeKeptSessions, keepDraft, openKeptSessions, readDraft } from '../../../../src/app/practice/keptSessions.ts';
import { openSessions, type SessionDraft, type SessionShelf } from '../../../../src/storage/sessions.ts';
import { session } from './samples.ts';

let shelf: SessionShelf;
let wholes = 0;
let isFull = false;

beforeEach(async () => {
  wholes = 0;
  isFull = false;
  shelf = await openSessions(`draft-keeper-${expect.getState().currentTestName}`);
  const refuse = (): Promise<never> => Promise.reject(new Error('no room left'));
  await openKeptSessions(() =>
    Promise.resolve({
      ...shelf,
      putDraft: (draft, stamp) => (wholes++, isFull ? refuse() : shelf.putDraft(draft, stamp)),
      addToDraft: (stamp, index, rows) => (isFull ? refuse() : shelf.addToDraft(stamp, index, rows)),
    }),
  );
});

afterEach(async () => {
  await closeKeptSessions();
  vi.useRealTimers();
});

/** Goes on for so many rows, 10 ms apart. */
function spray(rows: PathBuilder, count: number): PathBuilder {
  for (let i = 0; i < count; i++) {
    const t_s = rows.count / 100;
    rows.add({ t_s, x_m: t_s / 3, y_m: 0.25, z_m: 0.2, fan_rad: 0, pitch_rad: 0, yaw_rad: 0, trigger: 1 });
  }
  return rows;
}

function wholeOf(rows: PathBuilder): SessionDraft {
  const { task, job, trainee } = session();
  return { task, job, trainee, strokes: [...writeRecording(rows.build())].join('') };
}

it('is written whole once, then what came since, and reads as the whole recording', async () => {
  const keeper = new DraftKeeper();
  const rows = new PathBuilder();
  const keep = (): Promise<void> => keeper.keep(rows, () => (rows.count === 0 ? null : wholeOf(rows)));
  await keep();
  expect(await readDraft()).toBeNull();
  for (const more of [7, 3, 0, 5000]) {
    spray(rows, more);
    await keep();
  }
  expect(wholes).toBe(1);
  expect(await readDraft()).toEqual(wholeOf(rows));
});

it('begins anew with another session, and where another has become the draft', async () => {
  const keeper = new DraftKeeper();
  const first = spray(new PathBuilder(), 5);
  await keeper.keep(first, () => wholeOf(first));
  const second = spray(new PathBuilder(), 3);
  await keeper.keep(second, () => wholeOf(second));
  expect(await readDraft()).toEqual(wholeOf(second));
  await keepDraft({ ...wholeOf(first), trainee: 'Another window' });
  spray(second, 4);
  await keeper.keep(second, () => wholeOf(second));
  expect(await readDraft()).toEqual(wholeOf(second));
  expect(wholes).toBe(4);
});

it('is written whole again once it was taken for gone, though no row came since', async () => {
  const keeper = new DraftKeeper();
  const rows = spray(new PathBuilder(), 5);
  await keeper.keep(rows, () => wholeOf(rows));
  await clearDraft();
  await keeper.keep(rows, () => wholeOf(rows));
  expect(await readDraft()).toBeNull();
  keeper.forget();
  await keeper.keep(rows, () => wholeOf(rows));
  expect(await readDraft()).toEqual(wholeOf(rows));
});

it('leaves cleared what was begun again, though it was still to be kept', async () => {
  const keeper = new DraftKeeper();
  const rows = spray(new PathBuilder(), 5);
  await keeper.keep(rows, () => wholeOf(rows));
  spray(rows, 5);
  // The room has no rows any more when its turn comes.
  const keeping = clearDraft().then(() => keeper.keep(rows, () => null));
  await keeping;
  expect(await readDraft()).toBeNull();
});

it('tries what was refused again whole, and not at each turn', async () => {
  vi.useFakeTimers({ toFake: ['performance'] });
  const keeper = new DraftKeeper();
  const rows = spray(new PathBuilder(), 5);
  isFull = true;
  for (let turn = 0; turn < 5; turn++) await keeper.keep(spray(rows, 5), () => wholeOf(rows));
  expect(wholes).toBe(1);
  isFull = false;
  vi.advanceTimersByTime(3001);
  await keeper.keep(rows, () => wholeOf(rows));
  expect(await readDraft()).toEqual(wholeOf(rows));
});
