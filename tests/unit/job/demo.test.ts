import { describe, expect, it } from 'vitest';
import { DEMO_HAND_COAT, DEMO_PLANNED_COAT, DEMO_RECORDING, DEMO_SECOND_COAT, demoJob, withRecording } from '../../../sim/job/demo.ts';
import { parseJob } from '../../../sim/job/parse.ts';
import { serialiseJob } from '../../../sim/job/serialise.ts';
import { makePanel } from '../../../sim/panel/makePanel.ts';
import { meanPlannedFilm_m } from '../../../sim/run/planTrials.ts';
import { settleCoat } from '../../../sim/run/settle.ts';

describe('demoJob', () => {
  const job = demoJob();

  it('is read back from its own text, key for key, without a warning', () => {
    const { job: read, warnings } = parseJob(serialiseJob(job));
    expect(read).toEqual(job);
    expect(JSON.stringify(read)).toBe(JSON.stringify(job));
    expect(warnings).toEqual([]);
  });

  it('has a part with a curve and a hole, at the origin, upright', () => {
    const { panel, warnings } = makePanel(job.part.panels[0]!, '/part/panels/0');
    expect(warnings).toEqual([]);
    // To rounding of mm turned into m.
    expect(panel.width_m).toBeCloseTo(0.62, 12);
    expect(panel.height_m).toBeCloseTo(1.25, 12);
    expect(panel.outline.length / 2).toBeGreaterThan(50);
    expect(panel.holes).toHaveLength(1);
  });

  it('has three set-ups that differ', () => {
    const unnamed = job.setUps.map(({ fan, fluidRate_mL_min, transfer }) => JSON.stringify({ fan, fluidRate_mL_min, transfer }));
    expect(new Set(unnamed).size).toBe(3);
  });

  it('has two mixes that differ in the retarder, one of them in every cup', () => {
    const [general, retarded] = job.mixes;
    expect({ ...retarded, id: general!.id, name: general!.name, retarder: undefined }).toEqual({ ...general, retarder: undefined });
    expect([general!.retarder, retarded!.retarder?.percent]).toEqual([undefined, 10]);
    expect(job.coats.map(({ mix }) => mix)).toEqual(job.coats.map(() => 'general'));
  });

  it('has a second coat that is the planned one, laid over it', () => {
    const { id, name, ...planned } = job.coats.find((coat) => coat.id === DEMO_PLANNED_COAT)!;
    const second = job.coats.find((coat) => coat.id === DEMO_SECOND_COAT)!;
    expect(second).toEqual({ ...planned, id: second.id, name: second.name, over: { coat: id, wait_min: 20 } });
    expect([second.id, second.name]).not.toEqual([id, name]);
  });

  // A finisher rounds a target to a handy figure: within 3 % of what the plan lays.
  it.each(job.coats.map(({ id }) => id))('coat %s has a target that its plan meets in the mean', (id) => {
    const setting = settleCoat(job, id);
    expect(meanPlannedFilm_m(setting, setting.plan) / setting.target.thickness_m).toBeGreaterThan(0.97);
    expect(meanPlannedFilm_m(setting, setting.plan) / setting.target.thickness_m).toBeLessThan(1.03);
  });
});

describe('withRecording', () => {
  const recording = { id: DEMO_RECORDING, name: 'Session', text: 't_s,x_mm,y_mm\n' };

  it('adds the recording and lays the coat by it, leaving the job as it was', () => {
    const before = demoJob();
    const after = withRecording(before, DEMO_HAND_COAT, recording);
    expect(after.recordings).toEqual([recording]);
    expect(after.coats.filter((coat) => coat.recording === DEMO_RECORDING).map(({ id }) => id)).toEqual([DEMO_HAND_COAT]);
    expect(before.recordings).toEqual([]);
    expect(parseJob(serialiseJob(after)).job).toEqual(after);
  });

  it('replaces a recording of the same id', () => {
    const once = withRecording(demoJob(), DEMO_HAND_COAT, recording);
    const twice = withRecording(once, DEMO_HAND_COAT, { ...recording, name: 'Second' });
    expect(twice.recordings.map(({ name }) => name)).toEqual(['Second']);
  });
});
