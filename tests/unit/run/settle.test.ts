import { describe, expect, it } from 'vitest';
import { CrosscoatError } from '../../../sim/base/errors.ts';
import { settleCoat } from '../../../sim/run/settle.ts';
import { testJob, testSetting } from './testJob.ts';

function errorOf(work: () => unknown): CrosscoatError {
  try {
    work();
  } catch (error) {
    if (error instanceof CrosscoatError) return error;
    throw error;
  }
  throw new Error('did not throw');
}

describe('settleCoat', () => {
  it('turns the words of the file into SI records', () => {
    const setting = testSetting();
    expect(setting.plan.speed_m_s).toBe(0.3);
    expect(setting.target.thickness_m * 1e6).toBeCloseTo(57.7778, 3);
    expect(setting.panelGrid.grid).toEqual({ columns: 175, rows: 125, cellSize_m: 0.004 });
    expect(setting.panelGrid.covered_m2).toBeCloseTo(0.35, 9);
    expect(setting.spray.setUpId).toBe('gun');
  });

  it('takes the cell that is asked for', () => {
    expect(settleCoat(testJob(), 'coat', { cell_mm: 10 }).panelGrid.grid.columns).toBe(70);
  });

  it('names an unknown coat and those that there are', () => {
    const error = errorOf(() => settleCoat(testJob(), 'cote'));
    expect(error.code).toBe('not-found');
    expect(error.message).toContain('"cote" is not in the job (it has coat)');
  });

  it('points at a coat whose panel or set-up is missing', () => {
    const job = testJob();
    const coat = { ...job.coats[0]!, setUp: 'other' };
    const error = errorOf(() => settleCoat({ ...job, coats: [coat] }, 'coat'));
    expect(error.code).toBe('not-found');
    expect(error.place.pointer).toBe('/coats/0/setUp');
  });

  it('doubts a cell above a sixth of the fan’s depth, and says which would do', () => {
    // 50 mm deep: 8.3 mm.
    const doubts = (cell_mm: number) => testSetting({ cell_mm }).warnings.filter((w) => w.code === 'coarse-grid');
    expect(doubts(8)).toEqual([]);
    expect(doubts(9)[0]?.text).toContain('give a cell of 8.3 mm or less');
  });

  it('doubts a plan outside the distances at which the fan may be believed', () => {
    const setting = testSetting({ plan: { distance_mm: 450 }, size_mm: [1200, 1200] });
    expect(setting.warnings.map((w) => w.code)).toContain('distance-range');
  });

  it('doubts a target thinner than one drop', () => {
    const thin = (target: { film: 'wet' | 'dry'; thickness_um: number }) =>
      testSetting({ target }).warnings.filter((w) => w.text.includes('thinner than one mean drop'));
    expect(thin({ film: 'wet', thickness_um: 30 })).toHaveLength(1);
    expect(thin({ film: 'wet', thickness_um: 36 })).toEqual([]);
    // 15 % solids: 4 µm dry is 27 µm wet, 6 µm dry is 40 µm.
    expect(thin({ film: 'dry', thickness_um: 4 })).toHaveLength(1);
    expect(thin({ film: 'dry', thickness_um: 6 })).toEqual([]);
  });
});
