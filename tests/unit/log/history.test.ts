import { describe, expect, it } from 'vitest';
import type { CrosscoatError } from '../../../sim/base/errors.ts';
import { withChange } from '../../../sim/log/history.ts';
import { reopened, signed } from '../../../sim/log/signing.ts';
import { ENTRY, NOON } from './logCases.ts';

const at = (minute: string) => ({ at: `2026-05-04T12:${minute}+02:00`, who: NOON.who });

describe('withChange', () => {
  it('notes who, when and what was there before; the entry before is left as it was', () => {
    const changed = withChange(ENTRY, '/product/batch', 'CD-0413', NOON);
    expect(changed.product).toEqual({ name: 'clear dope', batch: 'CD-0413' });
    expect(changed.history).toEqual([{ ...NOON, what: '/product/batch', before: '"CD-0412"' }]);
    expect(ENTRY.product?.batch).toBe('CD-0412');
  });

  it('a first fill of an empty field is no change: nothing, an empty text, an empty list', () => {
    expect(withChange(ENTRY, '/notes', 'Dusty.', NOON).history).toEqual([]);
    expect(withChange({ ...ENTRY, notes: '' }, '/notes', 'Dusty.', NOON).history).toEqual([]);
    expect(withChange(ENTRY, '/faults', [{ what: 'Blush' }], NOON).history).toEqual([]);
    expect(withChange(ENTRY, '/combs/1', { low_um: 50, high_um: 75 }, NOON).combs).toHaveLength(2);
  });

  it('typing in one field within two minutes is one change, with the value before the typing', () => {
    const first = withChange(ENTRY, '/name', 'Second clea', at('00'));
    const second = withChange(first, '/name', 'Third', at('02'));
    expect(second.history).toEqual([{ ...at('00'), what: '/name', before: '"Second clear"' }]);
    expect(withChange(first, '/name', 'Third', at('03')).history.map(({ before }) => before)).toEqual(['"Second clear"', '"Second clea"']);
  });

  it('another person, another field, or a clock that was put back begins another change', () => {
    const first = withChange(ENTRY, '/name', 'Second', at('10'));
    expect(withChange(first, '/name', 'Third', { ...at('10'), who: 'Oskar' }).history).toHaveLength(2);
    expect(withChange(first, '/who', 'Oskar', at('10')).history).toHaveLength(2);
    expect(withChange(first, '/name', 'Third', at('09')).history.map((each) => each.at)).toEqual([at('10').at, at('09').at]);
  });

  it('what ends as it was leaves no trace; the letters of a first fill are no changes where the beginning is known', () => {
    const first = withChange(ENTRY, '/name', 'Second', at('00'));
    expect(withChange(first, '/name', 'Second clear', at('01'))).toEqual(ENTRY);
    const d = withChange(ENTRY, '/notes', 'D', at('00'), ENTRY);
    const dust = withChange(d, '/notes', 'Dust', at('01'), ENTRY);
    expect(dust.notes).toBe('Dust');
    expect(dust.history).toEqual([]);
  });

  it('undefined takes a key, or an item of a list, out, and keeps what it was', () => {
    const gone = withChange(ENTRY, '/cup', undefined, NOON);
    expect('cup' in gone).toBe(false);
    expect(gone.history[0]?.before).toBe('{"kind":"ford-4","seconds":24,"temperature_C":20.5}');
    const noComb = withChange(ENTRY, '/combs/0', undefined, NOON);
    expect(noComb.combs).toEqual([]);
    expect(noComb.history[0]).toMatchObject({ what: '/combs/0', before: '{"high_um":100,"low_um":75}' });
  });

  it('each item taken out of a list is a change of its own, at the same place too', () => {
    const two = { ...ENTRY, combs: [{ low_um: 50, high_um: 75 }, { low_um: 75, high_um: 100 }] };
    const gone = withChange(withChange(two, '/combs/0', undefined, NOON), '/combs/0', undefined, NOON);
    expect(gone.combs).toEqual([]);
    expect(gone.history.map(({ before }) => before)).toEqual(['{"high_um":75,"low_um":50}', '{"high_um":100,"low_um":75}']);
  });

  it('once there is a history, an addition to a list is told with nothing before; those that follow at once are told by the first', () => {
    const changed = withChange(ENTRY, '/name', 'Third', at('00'));
    const [n, comb] = [ENTRY.combs.length, { low_um: 50, high_um: 75 }];
    const added = withChange(withChange(changed, `/combs/${n}`, comb, at('01')), `/combs/${n + 1}`, comb, at('02'));
    expect(added.combs).toHaveLength(n + 2);
    expect(added.history.slice(1)).toEqual([{ ...at('01'), what: `/combs/${n}`, before: '' }]);
    expect(withChange(added, `/combs/${n + 2}`, comb, at('04')).history).toHaveLength(3);
    expect(withChange(added, `/combs/${n}`, undefined, at('02')).history.at(-1)).toMatchObject({ what: `/combs/${n}`, before: '{"high_um":75,"low_um":50}' });
    expect(withChange(changed, '/notes', 'Dusty.', at('01')).history).toHaveLength(1);
  });

  it('once it was signed, a first fill is told too', () => {
    const open = reopened(signed(ENTRY, NOON), NOON, 'misread');
    expect(withChange(open, '/notes', 'Dusty.', NOON).history.at(-1)).toEqual({ ...NOON, what: '/notes', before: '' });
    expect(withChange(open, '/notes', '', NOON).history).toHaveLength(1);
  });

  it('typing on from a known beginning keeps the time of its first letter', () => {
    const first = withChange(ENTRY, '/name', 'T', at('00'), ENTRY);
    expect(withChange(first, '/name', 'Th', at('01'), ENTRY).history).toEqual([{ ...at('00'), what: '/name', before: '"Second clear"' }]);
  });

  it('what is too long for the history is kept by its length and digest', () => {
    const photo = { id: 'photo-1', name: 'Tip', width: 2, height: 2, jpeg: 'A'.repeat(30_000) };
    const { before } = withChange({ ...ENTRY, photos: [photo] }, '/photos/0', undefined, NOON).history[0]!;
    expect(before).toMatch(/^\{"leftOut":"\d+ letters","sha256":"[0-9a-f]{64}"\}$/);
  });

  it.each([
    ['a signed entry', () => withChange(signed(ENTRY, NOON), '/notes', 'x', NOON), 'locked', /Runa Feldmark signed this on 2026-05-04T12:00\+02:00.*reopen it first/],
    ['a pointer into nothing', () => withChange(ENTRY, '/thinner/batch', 'x', NOON), 'not-found', /leads to no place/],
    ['a list’s item too far', () => withChange(ENTRY, '/combs/5', { low_um: 1 }, NOON), 'not-found', /leads to no place/],
    ['a full history', () => withChange({ ...ENTRY, history: Array.from({ length: 2000 }, () => ({ ...NOON, what: '/notes', before: '"x"' })) }, '/name', 'x', NOON), 'limit', /2000 changes/],
  ] as const)('refuses %s', (_, act, code, message) => {
    expect(act).toThrow(message);
    try {
      act();
    } catch (thrown) {
      expect((thrown as CrosscoatError).code).toBe(code);
    }
  });

  it('never writes into a prototype', () => {
    expect(() => withChange(ENTRY, '/__proto__/polluted', true, NOON)).toThrow(/leads to no place/);
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });
});
