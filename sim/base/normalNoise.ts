import { mixedSeed } from './mixedSeed.ts';
import { seededRandom } from './noise.ts';

/**
 * Normal noise of mean 0 and deviation 1, a pure function of seed, draw and place, so that no order of asking can change it.
 * From two even numbers (G.E.P. Box and M.E. Muller, "A note on the generation of random normal deviates", 1958).
 * @param draw and @param place whole numbers from 0.
 */
export function normalNoise(seed: number, draw: number, place: number): number {
  const random = seededRandom(mixedSeed(mixedSeed(seed, draw), place));
  const radius = Math.sqrt(-2 * Math.log(1 - random()));
  return radius * Math.cos(2 * Math.PI * random());
}
