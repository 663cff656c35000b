import { describe, expect, it } from 'vitest';
import { USUAL_RUBRIC, type RubricSpec } from '../../../../sim/job/rubric.ts';
import { drillById } from '../../../../sim/run/drills/drills.ts';
import { settleCoat } from '../../../../sim/run/settle.ts';
import type { HandNow } from '../../../../sim/stroke/handNow.ts';
import { gaugesOf, type Gauge } from '../../../../src/app/practice/gauges.ts';

const drill = drillById('half-overlap');
const setting = settleCoat(drill.job(), drill.coat);
const DEGREE = Math.PI / 180;
const NOW: HandNow = { x_m: 0.1, y_m: 0.2, speed_m_s: 0.31, distance_m: 0.22, tilt_rad: 0.1, overlapFraction: 0.4, trigger: 1 };

function withoutRows(rubric: RubricSpec): RubricSpec {
  return { ...rubric, rows: rubric.rows.filter(({ measure }) => measure === 'coverage') };
}

function expectBand({ low, high }: Gauge, from: number, to: number): void {
  expect([low, high]).toEqual([expect.closeTo(from, 9), expect.closeTo(to, 9)]);
}

describe('the gauges', () => {
  it('show what the hand does', () => {
    const { distance, speed, angle, overlap } = gaugesOf(NOW, setting, USUAL_RUBRIC);
    expect([distance.value, speed.value, angle.value, overlap.value]).toEqual([0.22, 0.31, 0.1, 0.4]);
    expect(gaugesOf({ ...NOW, overlapFraction: NaN }, setting, USUAL_RUBRIC).overlap.value).toBeNaN();
  });

  it.each([['the usual rubric', USUAL_RUBRIC], ['a rubric that leaves them out', withoutRows(USUAL_RUBRIC)]])('have, by %s, the bands of common practice about what the plan means', (_, rubric) => {
    // The drill means 200 mm, 0.36 m/s and half overlap.
    const { distance, speed, angle, overlap } = gaugesOf(NOW, setting, rubric);
    expectBand(distance, 0.175, 0.225);
    expectBand(speed, 0.36 * 0.85, 0.36 * 1.15);
    expectBand(angle, 0, 10 * DEGREE);
    expectBand(overlap, 0.4, 0.6);
  });

  it('follow a rubric of one’s own: a distance’s band is two of its root mean squares', () => {
    const rows = USUAL_RUBRIC.rows.map((row) => ({ ...row, limit: row.limit / 2 }));
    const { distance, speed, angle, overlap } = gaugesOf(NOW, setting, { ...USUAL_RUBRIC, rows });
    expectBand(distance, 0.1875, 0.2125);
    expectBand(speed, 0.36 * 0.925, 0.36 * 1.075);
    expectBand(angle, 0, 5 * DEGREE);
    expectBand(overlap, 0.45, 0.55);
  });

  it('have their bands inside their scales', () => {
    for (const { low, high, from, to } of Object.values(gaugesOf(NOW, setting, USUAL_RUBRIC)) as Gauge[]) {
      expect(from).toBeLessThanOrEqual(low);
      expect(low).toBeLessThan(high);
      expect(high).toBeLessThan(to);
    }
  });
});
