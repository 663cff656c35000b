import { describe, expect, it } from 'vitest';
import { demoJob } from '../../../sim/job/demo.ts';
import { schemeProgress, waitBefore } from '../../../sim/log/progress.ts';
import { signed } from '../../../sim/log/signing.ts';
import { ENTRY, NOON } from './logCases.ts';

const SCHEME = demoJob().schemes![0]!;
const stateOf = (log: Parameters<typeof schemeProgress>[1]): string => schemeProgress(SCHEME, log).find(({ step }) => step.id === 'clear-2')!.state;
const open = (({ ended, ...entry }) => { void ended; return entry; })(ENTRY);

describe('schemeProgress', () => {
  it('a step is done where an entry about it ended or is signed, under way where one was begun', () => {
    expect(stateOf([])).toBe('not-yet');
    expect(stateOf([open])).toBe('under-way');
    expect(stateOf([ENTRY])).toBe('done');
    expect(stateOf([signed(open, NOON)])).toBe('done');
  });

  it('an entry on another panel is about another step; one without panels is about all', () => {
    expect(stateOf([{ ...ENTRY, panels: ['elsewhere'] }])).toBe('not-yet');
    expect(stateOf([{ ...ENTRY, panels: [] }])).toBe('done');
  });
});

describe('waitBefore', () => {
  const first = { ...ENTRY, id: 'first', started: '2026-05-04T08:00+02:00', ended: '2026-05-04T08:25+02:00' };
  const next = { ...ENTRY, started: '2026-05-04T11:25+02:00' };

  it('runs from the end of the entry begun last before it to its start', () => {
    expect(waitBefore([first, next], next)).toEqual({ entry: first, wait_s: 3 * 3600, fromEnd: true });
    expect(waitBefore([next, first], next)?.entry.id).toBe('first');
    expect(waitBefore([first], first)).toBeNull();
  });

  it('counts across offsets: an hour of summer time is none of the film’s', () => {
    expect(waitBefore([first, next], { ...next, started: '2026-05-04T10:25+01:00' })?.wait_s).toBe(3 * 3600);
  });

  it('without an end it runs from the start; below 0 where the other had not ended', () => {
    expect(waitBefore([{ ...open, id: 'first', started: first.started }, next], next)).toMatchObject({ wait_s: 3 * 3600 + 25 * 60, fromEnd: false });
    expect(waitBefore([{ ...first, ended: '2026-05-04T12:00+02:00' }, next], next)?.wait_s).toBe(-35 * 60);
  });

  it('of two begun at one time the one written above comes first; another panel counts for nothing', () => {
    const twin = { ...next, id: 'twin' };
    expect(waitBefore([twin, next], next)?.entry.id).toBe('twin');
    expect(waitBefore([twin, next], twin)).toBeNull();
    expect(waitBefore([{ ...first, panels: ['elsewhere'] }, next], next)).toBeNull();
  });
});
