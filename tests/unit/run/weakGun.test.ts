import { describe, expect, it } from 'vitest';
import { defaultMix, defaultSetUp, USUAL_AIR } from '../../../sim/job/defaults.ts';
import { makeAir } from '../../../sim/air/moistAir.ts';
import { makeSetUp } from '../../../sim/gun/setUpFromSpec.ts';
import { makeMix } from '../../../sim/mix/makeMix.ts';
import { setUpWithMix } from '../../../sim/run/setUpWithMix.ts';

const usual = defaultSetUp('low-pressure', 'gun', 'Gun');

function drop_um(capPressure_kPa: number, temperature_C: number): number {
  const mix = makeMix(defaultMix('mix', 'Mix'), '/mixes/0');
  const air = makeAir({ ...USUAL_AIR, temperature_C }, '/air');
  return setUpWithMix(makeSetUp({ ...usual, capPressure_kPa }), mix, air).drops.meanDiameter_m * 1e6;
}

describe('drops answer to the air at the cap', () => {
  it('coarsen as the pressure falls below the one at which they were stated, and the colder the liquid the more', () => {
    const warm = [55, 35, 15].map((pressure) => drop_um(pressure, 25));
    const cold = [55, 35, 15].map((pressure) => drop_um(pressure, 8));
    for (const row of [warm, cold]) {
      const [usual, weak, weakest] = row as [number, number, number];
      expect(weak).toBeGreaterThan(usual);
      expect(weakest).toBeGreaterThan(weak);
      // Air speed goes as the root of the pressure; neither part of the drop answers by more than its power -0.8 times the air's share, -0.5.
      expect(weakest / usual).toBeLessThan((15 / 55) ** -0.65);
    }
    // In micrometres: cold liquid in a weak gun is what spatters.
    expect((cold[2] as number) - (cold[0] as number)).toBeGreaterThan((warm[2] as number) - (warm[0] as number));
  });

  it('stay as stated where a set-up names no pressure for them', () => {
    const { atPressure_kPa, ...drops } = usual.drops;
    expect(atPressure_kPa).toBe(usual.capPressure_kPa);
    expect(makeSetUp({ ...usual, drops, capPressure_kPa: 15 }).drops.atPressure_Pa).toBe(15e3);
  });
});
