import { describe, expect, it } from 'vitest';
import { vapourCourse } from '../../../sim/air/roomVapour.ts';
import { exposureLimits, SEA_PRESSURE_Pa, vapourInRoom } from '../../../sim/air/vapour.ts';
import type { Solvent } from '../../../sim/materials/solvent.ts';
import { solventById, SOLVENTS } from '../../../sim/materials/solvents.ts';
import { publishedLimitWords, shownPpm, shutSentence, vapourSentence } from '../../../sim/report/vapourWords.ts';

const AIR = { temperature_K: 293.15, pressure_Pa: SEA_PRESSURE_Pa };
const ROOM = { volume_m3: 60, fresh_m3_s: 0, mixing: 1 };

describe('words of vapour', () => {
  it('say no limit’s name twice, and leave none out', () => {
    for (const solvent of SOLVENTS) {
      const limits = exposureLimits(solvent);
      for (const limit of limits) {
        const said = publishedLimitWords([limit], shownPpm);
        expect(said.split(limit.name).length - 1).toBe(1);
      }
    }
  });

  it('give a liquid’s share of the explosive limit to the figures that the other limit has', () => {
    const shut = vapourInRoom([{ solvent: solventById('mek'), liquid_m3: 1e-3 }], 120, AIR);
    expect(shutSentence(shut, 'metric')).toContain('14.9 % of the lower explosive limit');
  });

  it('name the solvent that takes up most of the exposure limits, by the limit and not by the amount', () => {
    const [mek, toluene, acetone] = ['mek', 'toluene', 'acetone'].map((id) => solventById(id));
    const source = (solvent: Solvent | undefined, vapour_m3: number) => ({ solvent: solvent!, vapour_m3: new Float64Array([0, vapour_m3]) });
    const course = vapourCourse([source(acetone, 0.1), source(toluene, 0.02), source(mek, 0.01)], 60, ROOM);
    const byLimit = (solvent: Solvent | undefined, vapour_m3: number): number => vapour_m3 / exposureLimits(solvent!)[0]!.fraction;
    expect(byLimit(toluene, 0.02)).toBeGreaterThan(byLimit(acetone, 0.1));
    expect(course.mostLimited).toBe('toluene');
    expect(vapourSentence(course)).toContain('toluene the most of it');
    expect(vapourCourse([source({ ...mek!, oshaPel_ppm: null, acgihTlv_ppm: null }, 0.01)], 60, ROOM).mostLimited).toBeNull();
  });
});
