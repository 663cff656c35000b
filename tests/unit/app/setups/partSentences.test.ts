import { expect, it } from 'vitest';
import type { FanOpening } from '../../../../sim/index.ts';
import { efficiencySentence, flowSentence, openingSentence } from '../../../../src/app/setups/partSentences.ts';

it('says the fluid rate in the reader\'s unit, with its interval and share', () => {
  const rate = { value: 180e-6 / 60, within: 9e-6 / 60 };
  expect(flowSentence(rate, 'metric')).toBe('Fluid rate 180 mL/min, ± 9 mL/min (5 %).');
  // A US fluid ounce is 29.5735 mL.
  expect(flowSentence(rate, 'us')).toBe('Fluid rate 6.09 fl oz US/min, ± 0.304 fl oz US/min (5 %).');
});

it('says how the fan opens, before or behind the nozzle', () => {
  const opening: FanOpening = {
    slope: { value: 1, within: 0.1 },
    angle_rad: { value: Math.PI / 3, within: Math.PI / 60 },
    origin_m: { value: -0.02, within: 0.01 },
    range_m: [0.15, 0.25],
    middle: { distance_m: 0.2, width_m: { value: 0.2, within: 0.005 } },
    warnings: [],
  };
  expect(openingSentence(opening, 'metric')).toBe('The fan opens by 60°, ± 3°; its edges meet 20 mm behind the nozzle, ± 10 mm; believed from 150 to 250 mm.');
  expect(openingSentence({ ...opening, origin_m: { value: 0.0254, within: 0.0127 } }, 'us')).toContain('meet 1 in in front of the nozzle, ± 0.5 in');
  expect(openingSentence(null, 'metric')).toContain('a second distance');
});

it('says what lands', () => {
  expect(efficiencySentence({ value: 0.62, within: 0.08 })).toBe('62 % of the solids land, ± 8 %.');
});
