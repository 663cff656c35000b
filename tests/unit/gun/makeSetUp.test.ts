import { describe, expect, it } from 'vitest';
import { CrosscoatError } from '../../../sim/base/errors.ts';
import { makeSetUp } from '../../../sim/gun/setUpFromSpec.ts';
import type { SetUpSpec } from '../../../sim/job/schema.ts';

const spec: SetUpSpec = {
  id: 'low',
  name: 'low pressure',
  fan: { width_mm: 250, depth_mm: 38, atDistance_mm: 200, profile: { family: 'double-beta', beta1: 3, beta2: 3 } },
  fluidRate_mL_min: 150,
  transfer: { efficiency_percent: 65, atDistance_mm: 200, decayLength_mm: 600 },
  volumeSolids_percent: 12,
  drops: { meanDiameter_um: 35, spread: 2, solventSpeed: 2.7, atViscosity_mPa_s: 50 },
  triggerLag_ms: 50,
  capPressure_kPa: 55,
  distanceRange_mm: [100, 400],
};
type Fan = SetUpSpec['fan'];

function refusal(changed: Partial<SetUpSpec>): CrosscoatError {
  try {
    makeSetUp({ ...spec, ...changed }, '/setUps/0');
  } catch (error) {
    if (error instanceof CrosscoatError) return error;
  }
  throw new Error('not refused');
}
const withFan = (fan: Partial<Fan>) => ({ fan: { ...spec.fan, ...fan } });
const table = (place_mm: number[], film: number[]) => withFan({ profile: { family: 'table', place_mm, film } });

describe('makeSetUp', () => {
  it('turns file units into SI', () => {
    const setUp = makeSetUp(spec);
    expect(setUp.fan.width_m).toBeCloseTo(0.25, 15);
    expect(setUp.fluidRate_m3_s).toBeCloseTo(2.5e-6, 18);
    expect(setUp.transfer.decayLength_m).toBeCloseTo(0.6, 15);
    expect(setUp.drops.meanDiameter_m).toBeCloseTo(35e-6, 18);
    expect(setUp.triggerLag_s).toBeCloseTo(0.05, 15);
    expect(setUp.volumeSolidsFraction).toBeCloseTo(0.12, 15);
  });

  it('names the JSON pointer of what does not fit', () => {
    const cases: [Partial<SetUpSpec>, string][] = [
      [withFan({ depth_mm: 251 }), '/setUps/0/fan/depth_mm'],
      [withFan({ width_mm: NaN }), '/setUps/0/fan/width_mm'],
      [withFan({ profile: { family: 'flat-top', taper_mm: 126 } }), '/setUps/0/fan/profile/taper_mm'],
      [withFan({ profile: { family: 'double-beta', beta1: 0.9, beta2: 3 } }), '/setUps/0/fan/profile/beta1'],
      [table([-100, 0, 0], [0, 1, 0]), '/setUps/0/fan/profile/place_mm/2'],
      [table([-100, 0, 100], [0, 0, 0]), '/setUps/0/fan/profile/film'],
      [table([-100, 0, 100], [0, -1, 0]), '/setUps/0/fan/profile/film/1'],
      [table([-100, 0, 100], [0, 1]), '/setUps/0/fan/profile'],
      [table([-100, 0, 251], [0, 1, 0]), '/setUps/0/fan/profile/place_mm/2'],
      [{ distanceRange_mm: [400, 100] }, '/setUps/0/distanceRange_mm/0'],
      [{ fluidRate_mL_min: Infinity }, '/setUps/0/fluidRate_mL_min'],
    ];
    for (const [changed, pointer] of cases) expect(refusal(changed).place.pointer).toBe(pointer);
  });

  it('says value, limits and what to do', () => {
    expect(refusal(withFan({ depth_mm: 300 })).message).toContain('= 300 mm is not from 1 to 250 mm (the width is the long axis); give');
  });
});
