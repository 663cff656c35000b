import { beforeEach, describe, expect, it, vi } from 'vitest';
import { demoJob } from '../../../../sim/index.ts';
import { undo } from '../../../../src/app/document.ts';
import { endUndo } from '../../../../src/app/log/endUndo.ts';
import { changeEntry, endEntryTyping } from '../../../../src/app/log/entryChange.ts';
import { chooseCup, entryCup, isHalfTyped, leaveEntryField, typeEntryNumber, typeEntryText, typeInCan, typeInGroup, unfinishedFields } from '../../../../src/app/log/entryFields.ts';
import { addComb, addItem, combText, removeItem, typeComb } from '../../../../src/app/log/listFields.ts';
import { logStage, lookAtLog, openEntry } from '../../../../src/app/log/log.ts';
import { beginEntry, noteNow, removeEntry, reopenEntry, signEntry } from '../../../../src/app/log/logCommands.ts';
import { state } from '../../../../src/app/state.ts';

beforeEach(() => {
  vi.useFakeTimers({ now: new Date('2026-05-04T10:00:00Z') });
  state.job.value = { ...demoJob(), log: [] };
  state.drafts.value = {};
  state.units.value = 'metric';
  logStage.problem.value = null;
  endUndo();
  lookAtLog({ who: 'Runa', entry: '' });
  beginEntry('Begin', { step: 'clear-2' });
});

const entry = () => openEntry.value!;

describe('figures that count together', () => {
  it('stay as typed until all are there, then are one first fill without a trace in the history', () => {
    for (const text of ['2', '20', '20.6']) typeInGroup('airStart', 'temperature_C', 'Air', text);
    leaveEntryField(['airStart', 'temperature_C']);
    expect(entry().airStart).toBeUndefined();
    expect(isHalfTyped('airStart')).toBe(true);
    expect(unfinishedFields()).toHaveLength(1);
    for (const text of ['5', '54']) typeInGroup('airStart', 'humidity_percent', 'Humidity', text);
    leaveEntryField(['airStart', 'humidity_percent']);
    expect(entry().airStart).toEqual({ temperature_C: 20.6, humidity_percent: 54 });
    expect(unfinishedFields()).toHaveLength(0);
  });

  it('are read in the reader’s units, and a wrong one is told', () => {
    state.units.value = 'us';
    typeInGroup('airStart', 'temperature_C', 'Air', '68');
    typeInGroup('airStart', 'humidity_percent', 'Humidity', '540');
    expect(unfinishedFields()).not.toEqual([]);
    typeInGroup('airStart', 'humidity_percent', 'Humidity', '54');
    expect(entry().airStart?.temperature_C).toBeCloseTo(20, 9);
  });

  it('one emptied box of a reading is told; all emptied take it out, and the history keeps it', () => {
    chooseCup('zahn-2');
    expect(entryCup('ford-4')).toBe('zahn-2');
    typeInGroup('cup', 'seconds', 'Cup', '24');
    typeInGroup('cup', 'temperature_C', 'Liquid', '20');
    expect(entry().cup).toEqual({ kind: 'zahn-2', seconds: 24, temperature_C: 20 });
    endEntryTyping();
    typeInGroup('cup', 'seconds', 'Cup', '');
    expect(entry().cup?.seconds).toBe(24);
    expect(unfinishedFields()).toHaveLength(1);
    typeInGroup('cup', 'temperature_C', 'Liquid', '');
    expect(entry().cup).toBeUndefined();
    expect(entry().history.map(({ what }) => what)).toEqual(['/cup']);
  });
});

describe('texts and single figures', () => {
  it('letters of a first fill are no changes; a later typing is one, with the text before it', () => {
    for (const text of ['D', 'Du', 'Dust']) typeEntryText(['notes'], 'Remark', text, true);
    leaveEntryField(['notes']);
    expect(entry().history).toEqual([]);
    vi.setSystemTime(new Date('2026-05-04T10:10:00Z'));
    for (const text of ['Dus', 'Du', 'D', '']) typeEntryText(['notes'], 'Remark', text, true);
    expect(entry().history).toMatchObject([{ who: 'Runa', what: '/notes', before: '"Dust"' }]);
    expect(entry().notes).toBeUndefined();
  });

  it('typing ends after two minutes, so that what stood there by then is in the history', () => {
    typeEntryText(['notes'], 'Remark', 'Dusty', true);
    vi.setSystemTime(new Date('2026-05-04T10:01:59Z'));
    typeEntryText(['notes'], 'Remark', 'Dusty room', true);
    expect(entry().history).toEqual([]);
    vi.setSystemTime(new Date('2026-05-04T10:02:01Z'));
    typeEntryText(['notes'], 'Remark', 'Clean room', true);
    expect(entry().history).toMatchObject([{ what: '/notes', before: '"Dusty room"' }]);
    vi.setSystemTime(new Date('2026-05-04T10:05:00Z'));
    typeEntryText(['notes'], 'Remark', 'Clean', true);
    expect(entry().history.map(({ before }) => before)).toEqual(['"Dusty room"', '"Clean room"']);
  });

  it('an optional number comes and goes; a tin is there while anything of it is', () => {
    typeEntryNumber(['used_mL'], 'Used', '320', true);
    expect(entry().used_mL).toBe(320);
    typeEntryNumber(['used_mL'], 'Used', '', true);
    expect('used_mL' in entry()).toBe(false);
    typeInCan('thinner', 'batch', 'Batch', 'GT');
    expect(entry().thinner).toEqual({ name: '', batch: 'GT' });
    typeInCan('thinner', 'batch', 'Batch', '');
    expect(entry().thinner).toBeUndefined();
  });
});

describe('lists', () => {
  it('a comb is two teeth in order; what is wrong stays typed with its reason', () => {
    typeComb('low_um', '100');
    typeComb('high_um', '75');
    expect(unfinishedFields()).toHaveLength(2);
    addComb();
    expect(entry().combs).toEqual([]);
    expect(combText('high_um').problem).toMatch(/film lies between the two/);
    typeComb('high_um', '125');
    addComb();
    expect(entry().combs).toEqual([{ low_um: 100, high_um: 125 }]);
    expect(combText('low_um').text).toBe('');
    typeComb('low_um', '0');
    addComb();
    expect(combText('high_um').problem).toMatch(/first tooth/);
    removeItem('combs', 0, 'Remove');
    expect(entry().history).toMatchObject([{ what: '/combs/0' }]);
  });

  it('a full list is told', () => {
    for (let k = 0; k < 100; k++) addItem('faults', { what: 'Blush' }, 'Add');
    expect(addItem('faults', { what: 'Blush' }, 'Add')).toBe(false);
    expect(logStage.problem.value?.text).toMatch(/holds 100/);
  });
});

describe('times, sign-off, removal', () => {
  it('a clock that was put back keeps both times', () => {
    vi.setSystemTime(new Date('2026-05-04T09:30:00Z'));
    noteNow('ended');
    const zone = entry().started.slice(16);
    expect(entry().ended?.slice(16)).toBe(zone);
    expect(Date.parse(entry().started) - Date.parse(entry().ended!)).toBe(30 * 60_000);
  });

  it('what is half typed stops a signature; a signed entry refuses changes and removal until it is reopened', () => {
    typeInGroup('cup', 'seconds', 'Cup', '24');
    expect(signEntry({ who: 'Oskar' })).toBe(false);
    typeInGroup('cup', 'seconds', 'Cup', '');
    expect(signEntry({ who: 'Oskar' })).toBe(true);
    const { sha256 } = entry().signed!;
    expect(changeEntry('Remark', '/notes', 'x')).toBe(false);
    expect(logStage.problem.value?.text).toMatch(/Oskar signed this .* locked/);
    removeEntry();
    expect(logStage.problem.value?.title).toBe('Nothing was removed');
    expect(state.job.value.log).toHaveLength(1);
    expect(reopenEntry('Runa', 'misread')).toBe(true);
    expect(entry().history.at(-1)?.before).toContain(sha256);
    removeEntry();
    expect(logStage.problem.value?.text).toMatch(/Oskar signed .* reopened since.*sign it again instead/);
    expect(state.job.value.log).toHaveLength(1);
  });

  it('an entry that was never signed goes, and comes back by undo', () => {
    removeEntry();
    expect(state.job.value.log).toHaveLength(0);
    undo();
    expect(state.job.value.log).toHaveLength(1);
  });

  it('undo takes a change back with its line in the history', () => {
    changeEntry('Name', '/name', 'Third');
    expect(entry().history).toHaveLength(1);
    undo();
    expect(entry().history).toHaveLength(0);
    expect(entry().name).toBe('Second clear, brushed across the first');
  });
});
