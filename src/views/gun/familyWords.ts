import type { Family } from '../../app/setUpCommands.ts';

/** Film across the fan, by family, as forms offer them. */
export const FAMILY_WORDS: Readonly<Record<Family, string>> = {
  'double-beta': 'Rounded (elliptical double beta)',
  gaussian: 'Bell (Gaussian)',
  parabola: 'Parabola',
  triangle: 'Triangle',
  'cosine-squared': 'Cosine squared',
  'flat-top': 'Flat top, tapered edges',
  table: 'Measured from a test card',
};
