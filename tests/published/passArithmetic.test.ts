import { describe } from 'vitest';
import type { Profile } from '../../sim/gun/setUp.ts';
import { coatEvenness, evenness, filmAcross, OVERLAP_FANS } from '../helpers/coats.ts';
import { lastDigit, testPublished, type PublishedRow } from '../helpers/publishedRow.ts';
import { plainSetUp } from '../helpers/sprayCases.ts';

const SOURCE = 'pass arithmetic Q · efficiency / (speed · width · (1 - overlap)), common practice';

/** Mean wet film of a laid coat over whole pitches, µm. */
function meanFilm_um(rate_mL_min: number, width_m: number, speed_m_s: number, efficiency: number, overlap: number): number {
  const setUp = plainSetUp({ width_m, depth_m: 0.15 * width_m }, {
    fluidRate_m3_s: (rate_mL_min * 1e-6) / 60,
    transfer: { efficiencyFraction: efficiency, atDistance_m: 0.2, decayLength_m: 0.6 },
  });
  const pitch_m = (1 - overlap) * width_m;
  const centres_m = Array.from({ length: 20 }, (_, i) => (i - 4) * pitch_m);
  return evenness(filmAcross(setUp, centres_m, Math.round((8 * pitch_m) / 1e-3), 1e-3, speed_m_s)).mean_m * 1e6;
}

const filmRows: PublishedRow[] = (
  [[150, 0.25, 0.4, 0.65, 0.5, 32.5], [150, 0.25, 0.4, 0.4, 0.5, 20], [120, 0.2, 0.3, 0.65, 0.5, 43.33], [200, 0.25, 0.3, 0.65, 0.5, 57.78]] as const
).map(([rate, width_m, speed, efficiency, overlap, expected]) => ({
  source: SOURCE, quantity: `${rate} mL/min, ${width_m} m, ${speed} m/s, ${efficiency}`, expected, tolerance: lastDigit(2), why: 'half a unit in the last digit printed',
  ours: () => meanFilm_um(rate, width_m, speed, efficiency, overlap),
}));

/** Profile, overlap, min/mean, max/mean, CV. */
const UNIFORMITY: readonly (readonly [string, number, number, number, number])[] = [
  ['uniform', 0.5, 1, 1, 0], ['uniform', 2 / 3, 1, 1, 0], ['uniform', 0.75, 1, 1, 0], ['uniform', 0.25, 0.75, 1.5, 0.354],
  ['triangular', 0.5, 1, 1, 0], ['triangular', 2 / 3, 0.889, 1.111, 0.064], ['triangular', 0.75, 1, 1, 0], ['triangular', 0.25, 0.75, 1.5, 0.25],
  ['parabolic', 0.5, 0.75, 1.125, 0.112], ['parabolic', 2 / 3, 0.889, 1.056, 0.05], ['parabolic', 0.75, 0.938, 1.031, 0.028], ['parabolic', 0.25, 0.844, 1.125, 0.085],
  ['beta e=2', 0.5, 0.937, 1.055, 0.041], ['beta e=2', 2 / 3, 0.988, 1.011, 0.008], ['beta e=2', 0.75, 0.996, 1.003, 0.003], ['beta e=2', 0.25, 0.538, 1.406, 0.312],
  ['cos²', 0.5, 1, 1, 0], ['cos²', 2 / 3, 1, 1, 0], ['cos²', 0.75, 1, 1, 0], ['cos²', 0.25, 0.439, 1.5, 0.377],
  ['Gauss w=4σ', 0.5, 0.986, 1.014, 0.01], ['Gauss w=4σ', 2 / 3, 1, 1, 0], ['Gauss w=4σ', 0.75, 1, 1, 0], ['Gauss w=4σ', 0.25, 0.777, 1.223, 0.158],
];

const uniformityRows: PublishedRow[] = UNIFORMITY.flatMap(([name, overlap, low, high, cv]) => {
  const profile = OVERLAP_FANS[name] as Profile;
  const sharp = name === 'uniform';
  const coat = () => coatEvenness(profile, overlap, sharp ? 400 : 40);
  const tolerance = sharp ? 0.006 : 0.002;
  const why = 'a 2 mm cell on a fan of 301 mm, and 3 printed digits';
  return [
    { source: 'reference computation: endless passes', quantity: `${name} ${overlap.toFixed(3)}, CV`, expected: cv, tolerance, why, ours: () => coat().cv },
    { source: 'reference computation: endless passes', quantity: `${name} ${overlap.toFixed(3)}, min/max`, expected: low / high, tolerance, why, ours: () => coat().minOverMax },
  ];
});

describe('pass arithmetic', () => {
  testPublished([...filmRows, ...uniformityRows]);
});
