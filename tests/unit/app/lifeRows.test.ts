import { expect, it } from 'vitest';
import { lifeRows } from '../../../src/app/lifeRows.ts';
import type { LifeFigures, LifeLimits } from '../../../sim/index.ts';

const limits: LifeLimits = { run_m: 3e-3, gather_m: 12e-6, peel_m: 1.2e-6, lapFraction: 0.2, blush_K: 0, trapped_m: 20e-6, skin: 3, thick_m: 40e-6 };
const figures: LifeFigures = {
  sprayed_s: 70, watched_s: 3600, touchDry_s: 790, recoat_s: null, longestRun_m: 0.043, ranOff_m3: 0, peel_m: 0.6e-6,
  coldest_K: 285, blushMargin_K: -1.2, dry_m: 17e-6, weight_kg_m2: 0.02, evaporated_m3: 1e-4,
};

function texts(of: LifeFigures, system: 'metric' | 'us'): Record<string, string> {
  return Object.fromEntries(lifeRows(of, limits, system).map(({ name, value, band }) => [name, `${value} | ${band}`]));
}

it('gives each figure beside the limit that its fault is found by', () => {
  expect(texts(figures, 'metric')).toMatchObject({
    'Ready for another coat after': 'not within 1 h | ',
    'Coldest wet film against dew point': '1.2 °C below | above 0.0 °C',
    'Longest way that film moved': '43 mm | up to 3 mm where film gathers',
    'Ripple left, on average': '0.6 µm | up to 1.2 µm anywhere',
    'Dry film of all coats, on average': '17 µm | up to 40 µm anywhere',
  });
  expect(texts(figures, 'us')['Coldest wet film against dew point']).toBe('2.2 °F below | above 0.0 °F');
});

it('says what did not happen, and tells of film that ran off only where some did', () => {
  const still = texts({ ...figures, longestRun_m: 0, blushMargin_K: NaN }, 'metric');
  expect(still['Longest way that film moved']).toMatch(/^none moved/);
  expect(still['Coldest wet film against dew point']).toMatch(/^no film/);
  expect(still['Ran off the panel']).toBeUndefined();
  expect(texts({ ...figures, ranOff_m3: 2e-6 }, 'metric')['Ran off the panel']).toMatch(/^2\.?0* mL/);
});
