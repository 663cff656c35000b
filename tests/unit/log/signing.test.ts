import { describe, expect, it } from 'vitest';
import { parseJob } from '../../../sim/job/parse.ts';
import { demoJob } from '../../../sim/job/demo.ts';
import { serialiseJob } from '../../../sim/job/serialise.ts';
import { canonicalForm, sha256Of, signedForm } from '../../../sim/log/digest.ts';
import { reopened, signatureState, signed, takenBack } from '../../../sim/log/signing.ts';
import { ENTRY, NOON } from './logCases.ts';

const SIGNATURE = { at: '2026-05-04T17:00+02:00', who: 'Oskar Brandlind', certificate: 'invented W-017', words: 'Seen and found as written.' };

describe('signed', () => {
  it('a known entry has a known digest, which any tool finds from the canonical form', () => {
    const entry = signed(ENTRY, SIGNATURE);
    const { sha256, ...signature } = entry.signed!;
    expect(signedForm(ENTRY, SIGNATURE)).toBe(
      '{"airStart":{"humidity_percent":54,"temperature_C":20.6},"combs":[{"high_um":100,"low_um":75}],"cup":{"kind":"ford-4","seconds":24,"temperature_C":20.5},"ended":"2026-05-04T16:04+02:00","faults":[],"history":[],"id":"entry-1","kind":"coat","name":"Second clear","panels":["left-side"],"photos":[],"product":{"batch":"CD-0412","name":"clear dope"},"signed":{"at":"2026-05-04T17:00+02:00","certificate":"invented W-017","who":"Oskar Brandlind","words":"Seen and found as written."},"started":"2026-05-04T15:40+02:00","step":"clear-2","who":"Runa Feldmark"}',
    );
    // By sha256sum of GNU coreutils, of the text above.
    expect(sha256).toBe('86810f7fd174b69a926cef4ad6b8b3042d7a9d669db37eaab3d132b9c77fc30e');
    expect(sha256).toBe(sha256Of(canonicalForm({ ...ENTRY, signed: signature })));
  });

  it('refuses a second signature, and one by nobody; empty parts are left out', () => {
    expect(() => signed(signed(ENTRY, SIGNATURE), SIGNATURE)).toThrow(/Oskar Brandlind signed this .* reopen it first/);
    expect(() => signed(ENTRY, { ...SIGNATURE, who: ' ' })).toThrow(/nobody signs/);
    expect(Object.keys(signed(ENTRY, { ...NOON, certificate: '', words: '' }).signed!)).toEqual(['at', 'who', 'sha256']);
  });

  it('survives the file: what is read back still matches', () => {
    const job = parseJob(JSON.parse(serialiseJob({ ...demoJob(), log: [signed(ENTRY, SIGNATURE)] }))).job;
    expect(signatureState(job.log![0]!, null)).toBe('matches');
  });
});

describe('signatureState', () => {
  const withRecording = signed(ENTRY, { ...SIGNATURE, recordingSha256: sha256Of('t_s,x_mm\n0,0\n') });

  it('tells what was changed', () => {
    expect(signatureState(ENTRY, null)).toBe('unsigned');
    expect(signatureState(signed(ENTRY, SIGNATURE), null)).toBe('matches');
    const other = signed(ENTRY, SIGNATURE);
    const renamed = { ...other, name: 'Third clear' };
    expect(signatureState(renamed, null)).toBe('entry-changed');
    expect(signatureState({ ...other, signed: { ...other.signed!, who: 'Somebody else' } }, null)).toBe('entry-changed');
    expect(signatureState(withRecording, 't_s,x_mm\n0,0\n')).toBe('matches');
    expect(signatureState(withRecording, 't_s,x_mm\n0,1\n')).toBe('recording-changed');
    expect(signatureState(withRecording, null)).toBe('recording-missing');
  });
});

describe('reopened', () => {
  it('keeps the signature, its digest and the reason in the history, and can be signed again', () => {
    const first = signed(ENTRY, SIGNATURE);
    const open = reopened(first, NOON, ' The batch was misread. ');
    expect(open.signed).toBeUndefined();
    expect('signed' in open).toBe(false);
    expect(takenBack(open.history[0]!)).toEqual({ signed: first.signed, why: 'The batch was misread.' });
    const again = signed(open, SIGNATURE);
    expect(again.signed!.sha256).not.toBe(first.signed!.sha256);
    expect(signatureState(again, null)).toBe('matches');
  });

  it.each([
    ['unsigned', () => reopened(ENTRY, NOON, 'x'), /is not signed/],
    ['without a reason', () => reopened(signed(ENTRY, SIGNATURE), NOON, ' '), /who reopens it and why/],
    ['by nobody', () => reopened(signed(ENTRY, SIGNATURE), { ...NOON, who: '' }, 'x'), /who reopens it and why/],
    ['at length', () => reopened(signed(ENTRY, SIGNATURE), NOON, 'x'.repeat(1001)), /1001 letters long, more than 1000/],
  ] as const)('refuses %s', (_, act, message) => {
    expect(act).toThrow(message);
  });

  it('reads no signature out of other changes, or out of nonsense', () => {
    expect(takenBack({ ...NOON, what: '/notes', before: '"x"' })).toBeNull();
    expect(takenBack({ ...NOON, what: '/signed', before: 'no JSON' })).toBeNull();
    expect(takenBack({ ...NOON, what: '/signed', before: 'null' })).toBeNull();
    expect(takenBack({ ...NOON, what: '/signed', before: '{"why":"x"}' })).toBeNull();
  });
});
