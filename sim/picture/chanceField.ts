import type { HandsVerdict } from '../verdict/handsVerdict.ts';
import { colourTable } from './colours.ts';
import type { Field } from './field.ts';

/** How often each place was at fault, as a map from never to always. */
export function chanceField({ grid, chance }: HandsVerdict): Field {
  return { kind: 'dry-share', grid, values: chance, domain: [0, 1], isClipped: false, unit: 'fraction', isLog: false, title: 'hands with a fault here', marks: [], colours: colourTable('solids') };
}
