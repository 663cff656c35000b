import { beforeEach, describe, expect, it } from 'vitest';
import { demoJob } from '../../../sim/index.ts';
import { replaceJob, undo } from '../../../src/app/document.ts';
import { addHour, airShown, applyRemedy, dayHours, hoursNotes, removeAllHours, removeHour, setHourTime, takeHours } from '../../../src/app/scheme/airSheet.ts';
import { schemeStage } from '../../../src/app/scheme/scheme.ts';
import { state } from '../../../src/app/state.ts';

const job = () => state.job.value;

function advice() {
  const shown = airShown.value;
  if (shown === null || !('advice' in shown)) throw new Error('no advice');
  return shown.advice;
}

describe('the sheet Air', () => {
  beforeEach(() => {
    const demo = demoJob();
    replaceJob('Start', { ...demo, air: { ...demo.air, temperature_C: 18, humidity_percent: 70 }, hours: [] });
    schemeStage.problem.value = null;
  });

  it('makes a remedy so, gets what it promises, and undoes it in one step', () => {
    const before = job();
    const { found } = advice().remedies;
    expect(found.length).toBeGreaterThan(0);
    for (const remedy of found) {
      applyRemedy('Try', remedy);
      expect(advice().remedies.now.verdict).toBe(remedy.reaches);
      undo();
      expect(job()).toBe(before);
    }
  });

  it('adds, moves and removes hours in order of time', () => {
    addHour();
    addHour();
    expect(job().hours).toHaveLength(2);
    const [first, second] = job().hours!;
    expect(second!.at > first!.at).toBe(true);
    setHourTime(1, `${first!.at.slice(0, 11)}00:30`);
    expect(job().hours!.map(({ at }) => at.slice(11))).toEqual(['00:30', first!.at.slice(11)]);
    setHourTime(0, first!.at);
    expect(schemeStage.problem.value?.text).toMatch(/stands in two rows; give each its own time/);
    removeHour(0);
    expect(dayHours.value.map(({ hour }) => hour.at)).toEqual([first!.at]);
    removeAllHours();
    expect(job().hours).toEqual([]);
    undo();
    expect(job().hours).toHaveLength(1);
  });

  it('takes a logger’s rows, or leaves all as it was', () => {
    expect(takeHours('time,temp_F,rh_percent,lux\n2026-05-04T08:00,55,85,1\n2026-05-04T14:00,73,45,2', 'log.csv')).toBe(true);
    expect(job().hours).toHaveLength(2);
    expect(hoursNotes.value).toEqual(['log.csv: columns passed over: lux']);
    expect(advice().day!.goes.length).toBeGreaterThan(0);
    const before = job();
    expect(takeHours('time,temp_F,rh\n2026-05-04T08:00,55,0.85', 'bad.csv')).toBe(false);
    expect(job()).toBe(before);
    expect(schemeStage.problem.value?.title).toBe('bad.csv was not taken; nothing was changed');
  });
});
