import { describe, expect, it } from 'vitest';
import { predictPoints } from '../../../../sim/run/window/predictPoints.ts';
import { sensitivities } from '../../../../sim/run/window/sensitivities.ts';
import { statedPoint, WINDOW_AXES } from '../../../../sim/run/window/sprayPoint.ts';
import { pointOf, wall } from '../../../helpers/walls.ts';

const setting = wall({ coat: { plan: { cross: true } } });

describe('sensitivities', () => {
  const { before, steps, point } = sensitivities(setting);
  const stepOf = (axis: string, sign: number) => steps.find((step) => step.axis === axis && Math.sign(step.by) === sign)!;

  it('steps every axis both ways from the coat as stated', () => {
    expect(point).toEqual(statedPoint(setting));
    expect(before).toEqual(predictPoints(setting, [point])[0]);
    expect(steps.map(({ axis }) => axis)).toEqual(WINDOW_AXES.flatMap((axis) => [axis, axis]));
    expect([stepOf('distance', 1).by, stepOf('overlap', 1).by, stepOf('temperature', -1).by]).toEqual([0.025, 0.1, -3]);
    expect(stepOf('speed', 1).value).toBeCloseTo(0.396, 12);
  });

  it('says how much film each leaves: in inverse proportion to speed, in proportion to fluid', () => {
    expect(stepOf('speed', 1).filmRatio).toBeCloseTo(1 / 1.1, 12);
    // More fluid makes coarser drops, which lose less in flight.
    expect(stepOf('fluid', 1).filmRatio).toBeGreaterThan(1.1);
    expect(stepOf('fluid', 1).filmRatio).toBeLessThan(1.105);
    expect(stepOf('distance', 1).filmRatio).toBeLessThan(1);
    expect(stepOf('distance', 1).after.dryFraction).toBeGreaterThan(before.dryFraction);
    expect(stepOf('temperature', 1).after.blushMargin_K).toBeGreaterThan(before.blushMargin_K);
  });

  it('leaves out steps that lead nowhere, and marks those that leave the distances', () => {
    const odd = sensitivities(setting, { point: pointOf(setting, { thinnerRatio: 0, humidityFraction: 0.95, distance_m: 0.39 }) });
    expect(odd.steps.filter(({ axis }) => axis === 'thinner')).toEqual([]);
    expect(odd.steps.filter(({ axis }) => axis === 'humidity').map(({ by }) => by)).toEqual([-0.1]);
    expect(odd.steps.filter(({ axis }) => axis === 'distance').map(({ after }) => after.distanceInRange)).toEqual([true, false]);
  });
});
