import { describe, expect, it } from 'vitest';
import { airblastDrop_m, dropRatio, type Spraying } from '../../../sim/gun/atomise.ts';

const USUAL: Spraying = { capPressure_Pa: 55e3, fluidRate_m3_s: 180e-6 / 60, density_kg_m3: 900, surfaceTension_N_m: 0.027, viscosity_Pa_s: 0.05 };
const ratio = (change: Partial<Spraying>) => dropRatio({ ...USUAL, ...change }, USUAL);

describe('drops of a gun set otherwise', () => {
  it('are what they were where nothing has changed, and back again', () => {
    expect(ratio({})).toBe(1);
    const changed = { ...USUAL, viscosity_Pa_s: 0.1 };
    expect(dropRatio(changed, USUAL) * dropRatio(USUAL, changed)).toBeCloseTo(1, 12);
  });

  it('are coarser for a thicker liquid, more of it and less air (common practice)', () => {
    for (const change of [{ viscosity_Pa_s: 0.067 }, { fluidRate_m3_s: 6e-6 }, { capPressure_Pa: 30e3 }]) {
      expect(ratio(change), JSON.stringify(change)).toBeGreaterThan(1.02);
    }
    expect(ratio({ capPressure_Pa: 80e3 })).toBeLessThan(1);
  });

  it('no longer change with pressure once the air is as fast as sound', () => {
    expect(ratio({ capPressure_Pa: 150e3 })).toBe(ratio({ capPressure_Pa: 300e3 }));
  });

  it('a third more viscosity counts for more in a weak gun, as a length of drop', () => {
    const grows = (capPressure_Pa: number) => ratio({ capPressure_Pa, viscosity_Pa_s: 0.067 }) - ratio({ capPressure_Pa });
    expect(grows(15e3)).toBeGreaterThan(grows(55e3));
  });
});

describe('the airblast formula', () => {
  const at = (viscosity_Pa_s: number, airSpeed_m_s = 200) => airblastDrop_m({ airSpeed_m_s, airLiquidRatio: 2, nozzle_m: 1.4e-3, density_kg_m3: 900, surfaceTension_N_m: 0.026, viscosity_Pa_s });

  it('is coarser for more surface tension where the liquid is thin; where it is thick the drawn part, as σ^-0.5, wins', () => {
    const more = (viscosity_Pa_s: number) =>
      dropRatio({ ...USUAL, viscosity_Pa_s, surfaceTension_N_m: 0.032 }, { ...USUAL, viscosity_Pa_s });
    expect(more(1e-3)).toBeGreaterThan(1);
    expect(more(0.05)).toBeLessThan(1);
  });

  it('is a part that air tears, as U^-0.8, and a part that viscosity draws out, in proportion to it', () => {
    expect(at(0, 100) / at(0, 200)).toBeCloseTo(2 ** 0.8, 12);
    expect((at(0.06) - at(0)) / (at(0.03) - at(0))).toBeCloseTo(2, 9);
    expect(at(0.03, 100) - at(0, 100)).toBeCloseTo(at(0.03, 200) - at(0, 200), 12);
  });
});
