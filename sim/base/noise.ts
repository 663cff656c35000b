import { createNoise2D } from 'simplex-noise';

/**
 * A seeded generator of even numbers in [0, 1): "mulberry32" (T. Ettinger 2017, public domain).
 * The model has no other source of chance; a seed is part of every job.
 */
export function seededRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/**
 * Smooth noise along a line (time, or length), a pure function of place, seed and channel, so
 * that the order of asking cannot change it.
 * @returns a function of the place in correlation lengths; values in [-1, 1], mean about 0.
 */
export function wanderNoise(seed: number): (place: number, channel: number) => number {
  const noise = createNoise2D(seededRandom(seed));
  /** Channels stand this far apart across the noise field, so that they do not follow each other. */
  const CHANNEL_SPACING = 97.31;
  return (place, channel) => noise(place, channel * CHANNEL_SPACING);
}
