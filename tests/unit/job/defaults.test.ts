import { describe, expect, it } from 'vitest';
import { GENERAL_THINNER, RETARDER, USUAL_AIR, USUAL_BACKING, VOLUME_SOLIDS_PERCENT, defaultMix, defaultSetUp } from '../../../sim/job/defaults.ts';
import { parseJob } from '../../../sim/job/parse.ts';
import type { Job } from '../../../sim/job/schema.ts';
import { finishById } from '../../../sim/materials/finishes.ts';
import { solventById } from '../../../sim/materials/solvents.ts';
import { thinnerById } from '../../../sim/materials/thinners.ts';
import { jobText } from './fixtures.ts';

const good = JSON.parse(jobText('good')) as Job;

describe('the usual values', () => {
  it('are those that a job reader fills in', () => {
    const { air, ...rest } = good;
    const [{ backing, ...panel }] = good.part.panels as [Job['part']['panels'][number]];
    const { capPressure_kPa, distanceRange_mm, drops, ...setUp } = defaultSetUp('low-pressure', 'gun', 'Gun');
    const { atViscosity_mPa_s, ...statedDrops } = drops;
    const bare = { ...rest, part: { ...good.part, panels: [panel] }, setUps: [{ ...setUp, drops: statedDrops }] };
    const read = parseJob(bare).job;
    expect(read.air).toEqual(USUAL_AIR);
    expect(read.part.panels[0]?.backing).toBe(USUAL_BACKING);
    expect(read.setUps[0]).toEqual(defaultSetUp('low-pressure', 'gun', 'Gun'));
    expect([air, backing, capPressure_kPa, distanceRange_mm, atViscosity_mPa_s]).toEqual([USUAL_AIR, 'open-cloth', 55, [100, 400], 50]);
  });

  // US 40 CFR 63.801: more than 10 psig at the point of atomising is conventional; 1 psi is 6.894757 kPa.
  it('put the two kinds of gun on their sides of the legal line', () => {
    expect(defaultSetUp('low-pressure', 'a', '').capPressure_kPa).toBeLessThan(10 * 6.894757);
    expect(defaultSetUp('conventional', 'b', '').capPressure_kPa).toBeGreaterThan(10 * 6.894757);
  });

  it('have the general thinner of the materials, to the whole per cent', () => {
    const parts = thinnerById('general').parts.map(({ solvent, volumeFraction }) => ({ solvent: solvent.id, percent: Math.round(volumeFraction * 100) }));
    expect(GENERAL_THINNER).toEqual(parts);
    expect(GENERAL_THINNER.reduce((sum, { percent }) => sum + percent, 0)).toBe(100);
    expect(solventById(RETARDER.solvent).id).toBe(RETARDER.solvent);
  });

  // A mix and a set-up that are both the usual ones say the same of the cup, to the digit that the set-up has.
  it('thin the usual finish to the usual volume solids', () => {
    const { finish, thinnerPerFinish } = defaultMix('a', '');
    const solids_percent = (finishById(finish).volumeSolidsFraction.value / (1 + thinnerPerFinish)) * 100;
    expect(Math.abs(solids_percent - VOLUME_SOLIDS_PERCENT)).toBeLessThan(0.5);
  });

  it('make a mix that a job takes, and that shares nothing with the next', () => {
    const [one, other] = [defaultMix('one', 'One'), defaultMix('other', 'Other')];
    expect(parseJob({ ...good, mixes: [one, other] }).job.mixes).toEqual([one, other]);
    one.thinner[0]!.percent = 1;
    expect(other.thinner[0]!.percent).not.toBe(1);
  });
});
