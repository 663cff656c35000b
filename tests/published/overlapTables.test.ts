import { describe } from 'vitest';
import { coatEvenness, OVERLAP_FANS, type Evenness } from '../helpers/coats.ts';
import { testPublished, type PublishedRow } from '../helpers/publishedRow.ts';

const SOURCE = 'reference computation: sum of shifted profiles, 20 001 points a pitch, trapezoid rule';
const OVERLAPS = [0.25, 0.3, 1 / 3, 0.4, 0.45, 0.5, 0.55, 0.6, 2 / 3, 0.75];

const CV: Readonly<Record<string, readonly number[]>> = {
  uniform: [0.3536, 0.3464, 0.3333, 0.2828, 0.2122, 0, 0.1871, 0.2, 0, 0],
  triangular: [0.25, 0.1848, 0.1434, 0.0693, 0.0252, 0, 0.0224, 0.0516, 0.0642, 0],
  'beta e=0.5': [0.1376, 0.1679, 0.1825, 0.1911, 0.1713, 0.1054, 0.039, 0.0826, 0.0584, 0.0382],
  parabolic: [0.085, 0.0533, 0.0642, 0.106, 0.1231, 0.1118, 0.0593, 0.0199, 0.0497, 0.028],
  'beta e=2': [0.3115, 0.2298, 0.1757, 0.074, 0.0132, 0.0409, 0.0587, 0.0417, 0.0081, 0.0026],
  'beta e=2.5': [0.4025, 0.32, 0.2634, 0.1511, 0.0733, 0.0087, 0.0329, 0.0404, 0.0069, 0.0033],
  'cos²': [0.3767, 0.2954, 0.2401, 0.1321, 0.0589, 0, 0.0335, 0.0343, 0, 0],
  'Gauss w=4σ': [0.1578, 0.114, 0.0881, 0.0459, 0.024, 0.0102, 0.0032, 0.0006, 0, 0],
};

const MIN_MAX: Readonly<Record<string, readonly number[]>> = {
  uniform: [0.5, 0.5, 0.5, 0.5, 0.5, 1, 0.6667, 0.6667, 1, 1],
  triangular: [0.5, 0.6, 0.6667, 0.8, 0.9, 1, 0.9167, 0.8571, 0.8, 1],
  'beta e=0.5': [0.6547, 0.6417, 0.6325, 0.6124, 0.5957, 0.5774, 0.8521, 0.809, 0.7571, 0.8382],
  parabolic: [0.75, 0.8235, 0.8, 0.75, 0.7097, 0.6667, 0.8464, 0.9302, 0.8421, 0.9091],
  'beta e=2': [0.3828, 0.5202, 0.6173, 0.8192, 0.9559, 0.8889, 0.8429, 0.8923, 0.9771, 0.9927],
  'beta e=2.5': [0.2532, 0.3715, 0.4601, 0.6554, 0.8126, 0.9743, 0.908, 0.8934, 0.98, 0.9903],
  'cos²': [0.2929, 0.4122, 0.5, 0.691, 0.8436, 1, 0.907, 0.9098, 1, 1],
  'Gauss w=4σ': [0.6353, 0.7223, 0.7784, 0.878, 0.9345, 0.9716, 0.991, 0.9982, 0.9999, 1],
};

/** Two profiles end in a vertical edge, where a cell is either in or out: they need more phases and more room. */
const SHARP = ['uniform', 'beta e=0.5'];

function rowsOf(name: string): PublishedRow[] {
  const sharp = SHARP.includes(name);
  const kept = new Map<number, Evenness>();
  const coat = (overlap: number): Evenness => {
    const known = kept.get(overlap) ?? coatEvenness(OVERLAP_FANS[name]!, overlap, sharp ? 400 : 40);
    kept.set(overlap, known);
    return known;
  };
  const tolerance = sharp ? 0.006 : 0.002;
  const why = 'a 2 mm cell on a fan of 301 mm: 1/150 of the width at a vertical edge, its square elsewhere, and 4 printed digits';
  return OVERLAPS.flatMap((overlap, i) => [
    { source: SOURCE, quantity: `${name}, overlap ${overlap.toFixed(3)}, CV`, expected: CV[name]![i]!, tolerance, why, ours: () => coat(overlap).cv },
    { source: SOURCE, quantity: `${name}, overlap ${overlap.toFixed(3)}, min/max`, expected: MIN_MAX[name]![i]!, tolerance, why, ours: () => coat(overlap).minOverMax },
  ]);
}

describe('evenness of a laid coat on 2 mm cells', () => {
  testPublished(Object.keys(OVERLAP_FANS).flatMap(rowsOf));
});
