import { beforeEach, describe, expect, it, vi } from 'vitest';
import { demoJob, entryFromPlan, parseJob, reopened, serialiseJob, signed, type Job, type LogEntrySpec } from '../../../../sim/index.ts';
import { changeJob, undo } from '../../../../src/app/document.ts';
import { keeping } from '../../../../src/app/keeping/keeping.ts';
import { takeOver } from '../../../../src/app/keeping/otherWindows.ts';
import { endUndo } from '../../../../src/app/log/endUndo.ts';
import { state } from '../../../../src/app/state.ts';

const NOON = { at: '2026-05-04T12:00+02:00', who: 'Runa Feldmark' };

const withEntry = (job: Job, change: (entry: LogEntrySpec) => LogEntrySpec): Job => ({ ...job, log: (job.log ?? []).map(change) });
const taken = (job: Job) => takeOver({ head: { id: 'job-1', revision: 2 }, job: parseJob(serialiseJob(job)).job } as never, () => true);

beforeEach(() => {
  const job = demoJob();
  state.job.value = { ...job, log: [entryFromPlan(job, {}, NOON)] };
  state.drafts.value = {};
  state.notice.value = null;
  endUndo();
  keeping.now = { keeper: { hold: vi.fn() }, store: {} } as never;
});

describe('what another window wrote', () => {
  it('is a step that Undo takes back', () => {
    const before = state.job.peek();
    taken({ ...before, name: 'Renamed' });
    expect(state.job.peek().name).toBe('Renamed');
    expect(state.notice.peek()?.act?.words).toBe('Undo');
    state.notice.peek()?.act?.run();
    expect(state.job.peek()).toBe(before);
  });

  it('ends Undo where a signature came with it, which Undo would take back without a word', () => {
    changeJob('Rename', { ...state.job.peek(), name: 'Mine' });
    taken(withEntry(state.job.peek(), (entry) => signed(entry, NOON)));
    expect(state.notice.peek()?.act).toBeUndefined();
    expect(state.notice.peek()?.text).toMatch(/signed or reopened there/);
    undo();
    expect(state.job.peek().log?.[0]?.signed?.who).toBe(NOON.who);
  });

  it('and where one was taken back there, though it was signed again', () => {
    state.job.value = withEntry(state.job.peek(), (entry) => signed(entry, NOON));
    taken(withEntry(state.job.peek(), (entry) => signed(reopened(entry, NOON, 'misread'), NOON)));
    expect(state.past.peek()).toEqual([]);
    taken({ ...state.job.peek(), name: 'Renamed' });
    expect(state.notice.peek()?.act?.words).toBe('Undo');
  });
});
