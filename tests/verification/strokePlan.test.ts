import { describe, expect, it } from 'vitest';
import { planStrokes } from '../../sim/stroke/planStrokes.ts';
import { stripSpans, turnPanel } from '../../sim/stroke/strip.ts';
import { panelOf } from '../unit/stroke/panels.ts';

const RADIUS_M = 0.5;

function disc(corners: number) {
  return panelOf(Array.from({ length: corners }, (_, i): [number, number] => {
    const angle = (2 * Math.PI * i) / corners;
    return [RADIUS_M * (1 + Math.cos(angle)), RADIUS_M * (1 + Math.sin(angle))];
  }));
}

/** Widest chord of the disc within a strip at `low` to `high` from its centre. */
function widestChord_m(low: number, high: number): number {
  const nearest = low > 0 ? low : high < 0 ? -high : 0;
  return 2 * Math.sqrt(Math.max(0, RADIUS_M ** 2 - nearest ** 2));
}

describe('strokes over a disc', () => {
  it('span the widest chord of each strip; the polygon\'s error falls as corners squared', () => {
    const strips = [[-0.41, -0.33], [-0.07, 0.11], [0.23, 0.37]] as const;
    const error = (corners: number) => Math.max(...strips.map(([low, high]) => {
      const spans = stripSpans(turnPanel(disc(corners), 0.37), low + centreAcross, high + centreAcross);
      expect(spans.length).toBe(1);
      return Math.abs(spans[0]![1] - spans[0]![0] - widestChord_m(low, high));
    }));
    const centreAcross = RADIUS_M * (Math.cos(0.37) - Math.sin(0.37));
    const [coarse, middle, fine] = [error(101), error(403), error(1613)] as const;
    expect(fine).toBeLessThan(1e-5);
    for (const order of [Math.log(coarse / middle) / Math.log(403 / 101), Math.log(middle / fine) / Math.log(1613 / 403)]) expect(order).toBeGreaterThan(1.6);
  });

  it('open and close at the lead and lag outside the widest chord of half a pitch either side, or where the fan first meets the disc', () => {
    const plan = { overlapFraction: 0.6, speed_m_s: 0.3, distance_m: 0.2, direction_rad: -1.1, order: 'serpentine', lead_m: 0.04, lag_m: 0.07, firstStroke_m: 0, cross: false } as const;
    const width_m = 0.2;
    const { strokes } = planStrokes(disc(4001), plan, width_m, 0.03);
    const pitch_m = 0.4 * width_m;
    strokes.forEach(({ meant: { start_m, end_m } }, i) => {
      const across = i * pitch_m - RADIUS_M;
      const own = widestChord_m(across - pitch_m / 2, across + pitch_m / 2) / 2;
      const reach = widestChord_m(across - width_m / 2, across + width_m / 2) / 2;
      const core = own > 0 ? own : reach;
      const length_m = Math.max(core + 0.04, reach) + Math.max(core + 0.07, reach);
      // The polygon's sagitta, r π² / (2 · 4001²) = 1.5e-7 m, grows at the steep ends by no more than 1/sin of the angle there.
      expect(Math.abs(Math.hypot(end_m[0] - start_m[0], end_m[1] - start_m[1]) - length_m)).toBeLessThan(1e-5);
    });
  });
});
