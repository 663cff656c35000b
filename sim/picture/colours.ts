import {
  interpolateCividis,
  interpolatePlasma,
  interpolatePuOr,
  interpolateRdBu,
  interpolateViridis,
} from 'd3-scale-chromatic';
import { checkRange } from '../base/check.ts';

/**
 * What the colours say: `film` and `solids` rise evenly in lightness from dark to light, `target`
 * has a neutral middle (thin is purple, heavy is orange), and so has `margin` (below nothing is red,
 * above it blue); `passes` goes in steps.
 */
export type ColourScheme = 'film' | 'target' | 'margin' | 'passes' | 'solids';

/** Colours in a table. */
export const COLOUR_COUNT = 256;

/** Few enough steps to tell apart. */
export const MOST_STEPS = 16;

/** Share of the light end left out, so that the thickest film still stands off light paper. */
const LIGHT_END = 0.02;

const MAPS: Readonly<Record<ColourScheme, (share: number) => string>> = {
  film: (share) => interpolateViridis(share * (1 - LIGHT_END)),
  target: (share) => interpolatePuOr(share),
  margin: (share) => interpolateRdBu(share),
  passes: (share) => interpolateCividis(share * (1 - LIGHT_END)),
  solids: (share) => interpolatePlasma(share * (1 - LIGHT_END)),
};

/**
 * 256 colours, RGBA bytes, first to last; alpha is 255 throughout.
 *
 * Thin film is the dark end of `film`, so a holiday shows as a dark hole on any ground. The maps
 * keep their order for the common kinds of colour blindness: viridis and plasma (Smith and
 * van der Walt 2015), cividis (Nuñez, Anderton and Renslow 2018, PLoS ONE 13(7)), purple-orange
 * and red-blue (Harrower and Brewer 2003, The Cartographic Journal 40).
 *
 * @param steps for `passes` only: equal bands in the table, 1 to 16.
 */
export function colourTable(scheme: ColourScheme, steps = MOST_STEPS): Uint8Array {
  checkRange({
    name: 'colourTable: steps',
    value: steps,
    low: 1,
    high: MOST_STEPS,
    why: 'more cannot be told apart',
    advice: `give a whole number from 1 to ${MOST_STEPS}`,
  });
  const table = new Uint8Array(COLOUR_COUNT * 4);
  for (let i = 0; i < COLOUR_COUNT; i++) {
    const share = scheme === 'passes' ? bandShare(i, Math.floor(steps)) : i / (COLOUR_COUNT - 1);
    table.set(parseColour(MAPS[scheme](share)), i * 4);
  }
  return table;
}

/** Place on the map of the band that table entry `i` lies in. */
function bandShare(i: number, steps: number): number {
  const band = Math.min(steps - 1, Math.floor((i * steps) / COLOUR_COUNT));
  return steps === 1 ? 0 : band / (steps - 1);
}

/** `#rrggbb` or `rgb(r, g, b)` as four bytes. */
function parseColour(text: string): [number, number, number, number] {
  if (text.startsWith('#')) {
    const packed = Number.parseInt(text.slice(1), 16);
    return [(packed >> 16) & 255, (packed >> 8) & 255, packed & 255, 255];
  }
  const parts = text.slice(text.indexOf('(') + 1, -1).split(',').map(Number);
  return [parts[0] ?? 0, parts[1] ?? 0, parts[2] ?? 0, 255];
}
