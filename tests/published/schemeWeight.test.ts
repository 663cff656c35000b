import { describe, expect, it } from 'vitest';
import { NEWTONS_PER_METRE_PER_LB_IN } from '../../sim/base/force.ts';
import { demoJob } from '../../sim/job/demo.ts';
import { finishById } from '../../sim/materials/finishes.ts';
import { planScheme } from '../../sim/run/scheme/planScheme.ts';
import { LEAST_STRENGTH_N_M, printedFloor_lb_in, strengthFloor } from '../../sim/scheme/strength.ts';
import { presetById, schemeFromPreset } from '../../sim/scheme/presets.ts';
import { lastDigit, testPublished } from '../helpers/publishedRow.ts';

/** One pound to the square foot, kg/m²: 0.45359237 kg over 0.3048 m squared, exact. */
const KG_M2_PER_LB_FT2 = 0.45359237 / 0.3048 ** 2;
const WOOD = 'K. D. Wood, Airplane Design, 8th ed. 1947, weights of coating and of Grade A cotton, as quoted in a builders’ forum; "per coat" is an inference from whole schedules';
const CIRCULAR = 'AC 43.13-1B 2-30 and 2-33: 70 % of the new strength of Table 2-1';
const ROUNDING = 'the finish data keep 4.88243 of 4.88243 kg/m² to the lb/ft²; last printed figure';
/** Grade A cotton, lb/ft²; same source. */
const CLOTH_LB_FT2 = 0.028;

/** Clear, then pigmented coats at the low or the high end of a coat's published weight, kg/m². */
function bandOf(end: 'low' | 'high'): number {
  const of = (finish: string): number => finishById(finish).heaviestCoat_kg_m2[end];
  return 3 * of('clear-dope') + 2 * of('aluminium-dope') + 3 * of('colour-dope');
}

const inLb = (kg_m2: number): number => kg_m2 / KG_M2_PER_LB_FT2;
const meanCoat = (finish: string): number => (finishById(finish).heaviestCoat_kg_m2.low + finishById(finish).heaviestCoat_kg_m2.high) / 2;

describe('weight of a scheme against the published band', () => {
  testPublished([
    { source: WOOD, quantity: '3 clear + 2 aluminium + 3 colour, least, lb/ft²', expected: 0.0436, tolerance: lastDigit(4), why: ROUNDING, ours: () => inLb(bandOf('low')) },
    { source: WOOD, quantity: 'most, lb/ft²', expected: 0.0643, tolerance: lastDigit(4), why: ROUNDING, ours: () => inLb(bandOf('high')) },
    { source: WOOD, quantity: 'least, g/m²', expected: 213, tolerance: lastDigit(0), why: ROUNDING, ours: () => bandOf('low') * 1000 },
    { source: WOOD, quantity: 'most, g/m²', expected: 314, tolerance: lastDigit(0), why: ROUNDING, ours: () => bandOf('high') * 1000 },
    { source: WOOD, quantity: 'with cloth, least, lb/ft²', expected: 0.0716, tolerance: lastDigit(4), why: ROUNDING, ours: () => CLOTH_LB_FT2 + inLb(bandOf('low')) },
    { source: WOOD, quantity: 'with cloth, most, lb/ft²', expected: 0.0923, tolerance: lastDigit(4), why: ROUNDING, ours: () => CLOTH_LB_FT2 + inLb(bandOf('high')) },
    { source: `${WOOD}; all-in figure of control surfaces`, quantity: 'cloth and six mean clear coats, lb/ft²', expected: 0.07, tolerance: 0.0064, why: 'one coat: the source says "from about", six to seven coats', ours: () => CLOTH_LB_FT2 + 6 * inLb(meanCoat('clear-dope')) },
    { source: `${WOOD}; all-in figure of control surfaces`, quantity: 'cloth and six mean pigmented coats, lb/ft²', expected: 0.07, tolerance: 0.00695, why: 'one coat: the source says "from about", six to seven coats', ours: () => CLOTH_LB_FT2 + 6 * inLb(meanCoat('colour-dope')) },
  ]);

  it("lets the circular's preset, laid by the model on the demo's panel, overlap the band with its own doubt", () => {
    const job = demoJob();
    const scheme = schemeFromPreset(job, presetById('ac-43-13'), { id: 'preset', panels: ['left-side'] });
    const plan = planScheme({ ...job, schemes: [scheme] });
    const { value, low, high } = plan.steps.at(-1)!.added_kg;
    const [least, most] = [bandOf('low') * plan.area_m2, bandOf('high') * plan.area_m2];
    const shown = [value, low, high].map((kg) => ((kg / plan.area_m2) * 1000).toFixed(0));
    console.info(`preset: ${shown[0]} g/m² (${shown[1]} to ${shown[2]}), band 213 to 314`);
    // Measured 191 (132 to 251): its films are what dries in the circular's own waits, a tenth below the band's low end.
    expect(high).toBeGreaterThan(least);
    expect(low).toBeLessThan(most);
    expect(value).toBeGreaterThan(0.8 * least);
  });
});

describe('strength of cloth against the circular', () => {
  const floor = (new_lb_in: number): number => strengthFloor(new_lb_in * NEWTONS_PER_METRE_PER_LB_IN) / NEWTONS_PER_METRE_PER_LB_IN;
  testPublished([
    { source: CIRCULAR, quantity: 'least of 80 lb/in', expected: 56, tolerance: 1e-9, why: 'exact', ours: () => floor(80) },
    { source: CIRCULAR, quantity: 'least of 65 lb/in (printed as 46)', expected: 45.5, tolerance: 1e-9, why: 'exact; the circular rounds it up', ours: () => floor(65) },
    { source: CIRCULAR, quantity: 'least of 65 lb/in as printed', expected: 46, tolerance: 0, why: 'whole pounds, a half rounded up', ours: () => printedFloor_lb_in(65 * NEWTONS_PER_METRE_PER_LB_IN) },
    { source: CIRCULAR, quantity: 'least of 80 lb/in as printed', expected: 56, tolerance: 0, why: 'whole pounds', ours: () => printedFloor_lb_in(80 * NEWTONS_PER_METRE_PER_LB_IN) },
    { source: CIRCULAR, quantity: 'least of 50 lb/in', expected: 35, tolerance: 1e-9, why: 'exact', ours: () => floor(50) },
    { source: CIRCULAR, quantity: 'least whatever cloth is fitted, lb/in', expected: 46, tolerance: 1e-9, why: 'as printed', ours: () => LEAST_STRENGTH_N_M / NEWTONS_PER_METRE_PER_LB_IN },
  ]);
});
