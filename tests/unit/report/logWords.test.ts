import { describe, expect, it } from 'vitest';
import { demoJob } from '../../../sim/job/demo.ts';
import type { LogEntrySpec } from '../../../sim/job/schema.ts';
import { reopened, signed } from '../../../sim/log/signing.ts';
import { withChange } from '../../../sim/log/history.ts';
import { changeLines, momentShown, pointerWords } from '../../../sim/report/changeWords.ts';
import { logJson } from '../../../sim/report/logJson.ts';
import { logText } from '../../../sim/report/logText.ts';
import { combWords, entryCautions, entryLines } from '../../../sim/report/logWords.ts';
import { reportEntry, reportLog } from '../../../sim/run/log/reportLog.ts';
import { ENTRY, NOON } from '../log/logCases.ts';

function reported(changed: Partial<LogEntrySpec>, before: readonly LogEntrySpec[] = []) {
  const entry = { ...ENTRY, ...changed };
  return reportEntry({ ...demoJob(), log: [...before, entry] }, entry);
}

describe('words of an entry', () => {
  it('a comb is two teeth, never one figure', () => {
    expect(combWords({ low_um: 75, high_um: 100 }, 'metric')).toBe('between 75 and 100 µm wet');
    expect(combWords({ low_um: 76.2, high_um: 101.6 }, 'us')).toBe('between 3 and 4 mil wet');
    expect(combWords({ low_um: 0, high_um: 25 }, 'metric')).toBe('below 25 µm wet: no tooth was wetted');
    expect(combWords({ low_um: 250 }, 'metric')).toBe('250 µm wet or more: every tooth was wetted');
  });

  it('what was noted has a line in the reader’s units, what was not has none', () => {
    const text = (system: 'metric' | 'us') => entryLines(reported({}), system).map(({ head, text: words }) => `${head}: ${words}`);
    expect(text('metric')).toEqual([
      'When: begun 2026-05-04 15:40, ended 16:04 (UTC+02:00), 24 min',
      'Who: Runa Feldmark',
      'On: Rudder, left side',
      'Product: clear dope, batch CD-0412',
      'Cup: 24 s in the Ford cup No. 4, liquid at 20.5 °C',
      'Air at the start: 20.6 °C, 54 %, dew point 11.0 °C; surface not read',
      'Wet-film comb: between 75 and 100 µm wet',
    ]);
    expect(text('us')).toContain('Cup: 24 s in the Ford cup No. 4, liquid at 68.9 °F');
  });

  it('cautions: clock put back, shelf life over, dew, a wait cut short', () => {
    expect(entryCautions(reported({}), 'metric')).toEqual([]);
    expect(entryCautions(reported({ ended: '2026-05-04T15:10+02:00' }), 'metric')[0]).toMatch(/^It ends 30 min before it starts: a clock was put back/);
    expect(entryCautions(reported({ product: { name: 'x', shelfLife: '2026-05-03' } }), 'metric')[0]).toMatch(/shelf life of the product ended on 2026-05-03/);
    expect(entryCautions(reported({ product: { name: 'x', shelfLife: '2026-05-04' } }), 'metric')).toEqual([]);
    expect(entryCautions(reported({ airStart: { temperature_C: 20.6, humidity_percent: 54, surface_C: 12 } }), 'us')[0]).toMatch(/only 1\.8 °F above the dew point\. 5\.4 °F is the usual least/);
    expect(entryCautions(reported({ airEnd: { temperature_C: 20.6, humidity_percent: 54, surface_C: 9 } }), 'metric')[0]).toMatch(/below the dew point: water falls on it/);
    const before = { ...ENTRY, id: 'first', step: 'clear-1', started: '2026-05-04T14:00+02:00', ended: '2026-05-04T14:40+02:00' };
    const soon = reported({}, [before]);
    expect(entryCautions(soon, 'metric')[0]).toMatch(/begun before the wait that the plan states/);
    expect(entryLines(soon, 'metric').find(({ head }) => head === 'Wait before')?.text).toBe('1 h after the end of “Second clear”; the plan asked after “First clear, brushed until the cloth is translucent”: 3 h at 70 °F');
  });

  it('what the job has no more is told as lost', () => {
    expect(entryLines(reported({ setUp: 'gone' }), 'metric')).toContainEqual({ head: 'Set-up', text: 'gone (no longer in this job)' });
  });
});

describe('changes in words', () => {
  it('name the place, the value before in the reader’s units, when and who', () => {
    const changed = withChange(withChange(ENTRY, '/airStart/temperature_C', 22, NOON), '/combs/0', undefined, NOON);
    expect(changeLines(changed.history, 'us')).toEqual([
      { when: '2026-05-04 12:00 (UTC+02:00), Runa Feldmark', what: 'air at the start, temperature', before: '69.1 °F' },
      { when: '2026-05-04 12:00 (UTC+02:00), Runa Feldmark', what: 'comb 1', before: 'high 3.94 mil, low 2.95 mil' },
    ]);
    expect(pointerWords('/rule/nominal_um')).toBe('rule, nominal');
    expect(pointerWords('/product/shelfLife')).toBe('product, shelf life');
  });

  it('a signature that was taken back keeps its words, digest and the reason', () => {
    const first = signed(ENTRY, { ...NOON, words: 'Seen.' });
    const [line] = changeLines(reopened(first, NOON, 'misread').history, 'metric');
    expect(line?.what).toBe('reopened, because: misread');
    expect(line?.before).toBe(`signed 2026-05-04 12:00 (UTC+02:00) by Runa Feldmark: “Seen.”; digest ${first.signed!.sha256}`);
  });

  it('what nobody can read is shown as it is', () => {
    expect(changeLines([{ ...NOON, what: '/notes', before: 'no JSON' }, { ...NOON, what: '/signed', before: '[]' }], 'metric').map(({ before }) => before)).toEqual(['no JSON', '[]']);
    expect(momentShown('2026-05-04T12:00:05Z')).toBe('2026-05-04 12:00:05 (UTC)');
  });
});

describe('a log as text and JSON', () => {
  const photo = { id: 'photo-1', name: 'Tip', width: 2, height: 2, jpeg: 'AAAA' };
  const job = { ...demoJob(), log: [signed({ ...ENTRY, photos: [photo] }, NOON), { ...signed(ENTRY, NOON), id: 'entry-2' }] };

  it('text says signed, digest, and what was changed since', () => {
    const text = logText(reportLog(job), 'metric');
    expect(text).toContain(`Digest ${job.log[0]!.signed!.sha256}`);
    expect(text).toContain('Unchanged since it was signed');
    expect(text).toContain('CHANGED SINCE SIGNED');
    expect(text.split('\n').every((each) => each.length <= 96)).toBe(true);
    expect(logText([], 'metric')).toBe('The log has no entries.\n');
  });

  it('JSON states the entry without its pictures, and what follows from it', () => {
    const [first, second] = logJson(reportLog(job), 'metric') as unknown as { photos: object[]; found: { signature: string; took_s: number } }[];
    expect(first!.photos).toEqual([{ id: 'photo-1', name: 'Tip', width: 2, height: 2 }]);
    expect(first!.found).toMatchObject({ signature: 'matches', took_s: 24 * 60, airStart: { surfaceMargin_K: null } });
    expect(second!.found.signature).toBe('entry-changed');
  });
});
