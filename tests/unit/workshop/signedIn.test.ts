import { expect, it } from 'vitest';
import { demoJob, signed, type Job, type LogEntrySpec } from '../../../sim/index.ts';
import { notSignedSo, signedIn } from '../../../src/workshop/signedIn.ts';

const by = { at: '2026-05-02T10:00:00Z', who: 'A. Painter' };
const entry = (id: string, note = ''): LogEntrySpec => ({ id, kind: 'other', start: '2026-05-01T10:00:00Z', who: 'A', note, panels: [], comb_um: [], faults: [], photos: [], history: [] }) as unknown as LogEntrySpec;
const withLog = (...log: LogEntrySpec[]): Job => ({ ...demoJob(), log });

it('knows the same signed entry again, and neither an unsigned, a changed nor a missing one', () => {
  const here = signedIn(withLog(signed(entry('a'), by), signed(entry('b'), by), entry('c')));
  expect(here.entries).toHaveLength(2);
  const count = (...log: LogEntrySpec[]): number => notSignedSo(here, signedIn(withLog(...log))).entries;
  expect(count(signed(entry('a'), by), signed(entry('b'), by))).toBe(0);
  expect(count(signed(entry('a'), by), entry('b'))).toBe(1);
  expect(count()).toBe(2);
  // Its digest stands there as it did, and its note is another.
  expect(count(signed(entry('a'), by), { ...signed(entry('b'), by), note: 'smooth' } as LogEntrySpec)).toBe(1);
});

it('looks at the recording that was signed for', () => {
  const one = signed({ ...entry('a'), recording: 'r' }, { ...by, recordingSha256: 'a'.repeat(64) });
  const job = withLog(one);
  const withText = (text: string): Job => ({ ...job, recordings: [{ id: 'r', name: 'R', text }] });
  expect(notSignedSo(signedIn(withText('strokes')), signedIn({ ...job, recordings: [] })).entries).toBe(1);
  expect(notSignedSo(signedIn(withText('strokes')), signedIn(withText('strokes'))).entries).toBe(0);
});
