/** What can be wrong with the shape of a fan. */
export type FanFaultKind = 'heavy-ends' | 'heavy-middle' | 'one-sided' | 'crescent' | 'fluttering';

/** What may lie behind a fan's shape, at the gun. */
export type FanCause =
  | 'air-over-fluid'
  | 'liquid-too-thin'
  | 'fluid-over-air'
  | 'liquid-too-thick'
  | 'air-too-low'
  | 'nozzle-worn'
  | 'horn-plugged'
  | 'tip-dried'
  | 'needle-bent'
  | 'nozzle-loose'
  | 'packing-dry'
  | 'cup-low'
  | 'passage-blocked';

/** What tells one cause from another. */
export type FanTest = 'turn-cap' | 'less-air' | 'more-air' | 'tighten-and-oil';

/**
 * Causes of each fault, likeliest first. That more air than the fluid needs splits the fan is in USAF TO 1-1-8 (from a
 * summary); that a plugged horn port makes a fan heavy on one side or bent, and a loose nozzle, dry packing or a low cup a fan that jumps, is in
 * the FAA airframe handbook, chapter 8 (from a summary); thick, cold or under-atomised liquid in TM 43-0139
 * (from a summary). Their order, the rest, and half a turn of the cap are common practice.
 */
export const FAULT_CAUSES: Readonly<Record<FanFaultKind, { readonly causes: readonly FanCause[]; readonly tests: readonly FanTest[] }>> = {
  'heavy-ends': { causes: ['air-over-fluid', 'liquid-too-thin', 'tip-dried'], tests: ['less-air', 'turn-cap'] },
  'heavy-middle': { causes: ['air-too-low', 'fluid-over-air', 'liquid-too-thick', 'nozzle-worn'], tests: ['more-air'] },
  'one-sided': { causes: ['horn-plugged', 'tip-dried', 'needle-bent', 'nozzle-loose'], tests: ['turn-cap'] },
  crescent: { causes: ['horn-plugged', 'tip-dried'], tests: ['turn-cap'] },
  fluttering: { causes: ['nozzle-loose', 'packing-dry', 'cup-low', 'passage-blocked'], tests: ['tighten-and-oil'] },
};
