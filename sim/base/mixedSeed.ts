/**
 * The seed of one of many: the bits of seed and index mixed (the finaliser of MurmurHash3, A. Appleby, public
 * domain), so that neighbours have nothing in common and no order or share of the work can change it.
 */
export function mixedSeed(seed: number, index: number): number {
  let mixed = (Math.imul(index + 1, 0x9e3779b1) ^ (seed >>> 0)) >>> 0;
  mixed = Math.imul(mixed ^ (mixed >>> 16), 0x85ebca6b) >>> 0;
  mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35) >>> 0;
  return (mixed ^ (mixed >>> 16)) >>> 0;
}
