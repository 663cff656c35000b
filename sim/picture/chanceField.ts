import { roundEnds } from '../base/evenScale.ts';
import type { HandsVerdict } from '../verdict/handsVerdict.ts';
import { colourTable } from './colours.ts';
import { largest, type Field } from './field.ts';

/** Least top of the scale: a chance of a hundredth should not look like always. */
const LEAST_TOP = 0.05;

/** How often each place was at fault, as a map from never to a round number at or above the most. */
export function chanceField({ grid, chance }: HandsVerdict): Field {
  const [, top] = roundEnds([0, largest(chance)], 5);
  return { kind: 'dry-share', grid, values: chance, domain: [0, Math.min(1, Math.max(LEAST_TOP, top))], isClipped: false, unit: 'fraction', isLog: false, title: 'hands with a fault here', marks: [], colours: colourTable('solids') };
}
