import type { StepSpec } from '../job/schema.ts';

/** What is done at one moment, as far as cautions go. */
export type Act = 'mix' | 'spray' | 'brush' | 'sand' | 'mask' | 'dry' | 'release';

/**
 * Cautions where the act is, in our own words. After the work rules for spray finishing with flammable materials, 29 CFR 1910.107 as
 * in its state copies (WAC 296-24-370, Pa. Code 34-35.92), 29 CFR 1910.134 for respirators, FAA AC 43.13-1B table 2-3 for earthing
 * and clothing; balance after paragraph 2-2 and the maker's manual (from memory). They are reminders and allow nothing.
 */
export const ACT_CAUTIONS: Readonly<Record<Act, readonly string[]>> = {
  mix: [
    'No flame, heater, grinder or switch that can spark near; closed cans; bond both vessels and earth them before pouring; stir by hand or air, no electric drill.',
    'Only the maker’s own thinner; dope that nobody can name is not used. Gloves, eye cover, organic-vapour respirator. The mixing slip says the rest.',
  ],
  spray: [
    'Fan on before the gun and until the film is dry; part, gun and booth earthed; no ignition source within 20 ft (6 m).',
    'Organic-vapour respirator with particulate prefilter at least, air-supplied for two-part material or above the limits; cotton clothes, no rubber soles.',
    'Dried nitrate overspray burns fast and can heat itself: never in turns with other finishes unless every deposit is gone; scrape with non-sparking tools.',
  ],
  brush: [
    'Fan on; no ignition source within 20 ft (6 m); organic-vapour respirator; part earthed.',
    'Rags and brushes into closed metal cans at once, emptied every shift.',
  ],
  sand: [
    'Earth the structure: rubbing charges it. Sand wet, sweep dust wet; nitrate dust burns.',
    'Not over rib lacing, tape edges, screw heads or sharp edges; not the last aluminium coat.',
  ],
  mask: ['Pencil, no marker: it bleeds. Tape only on film that has stood its time; off within a day.'],
  dry: ['Fan on while solvent leaves. No lamp or fuel heater in the room; nobody sleeps or eats there.'],
  release: [
    'A moving surface is checked for balance after refinishing, by the maker’s manual.',
    'Release to service is for the licensed person: this sheet records and certifies nothing.',
  ],
};

/** Acts of a step, in their order. */
export function actsOf(kind: StepSpec['kind']): readonly Act[] {
  switch (kind) {
    case 'spray':
      return ['mix', 'spray'];
    case 'brush':
      return ['mix', 'brush'];
    case 'fix':
      return ['brush'];
    case 'sand':
      return ['sand'];
    case 'mask':
    case 'unmask':
      return ['mask'];
  }
}
