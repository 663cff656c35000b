import { COLOUR_COUNT } from './colours.ts';
import type { Field } from './field.ts';
import { colourText } from './fieldSvg.ts';
import { legendIn, type LegendUnit } from './legend.ts';

/** A numbered place on a picture of cells, in its units, y down. */
export interface MarkedPlace {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  /** Drawn as a filled square in place of a circle. */
  readonly isMarked: boolean;
}

/** Numbers beside more places than this run into each other. */
const MOST_NUMBERED = 60;
/** Of a mark and of a letter, as shares of the picture's longer side. */
const MARK_SHARE = 0.013;
const TEXT_SHARE = 0.04;
/** Colours of a scale: an eye tells no more apart on paper. */
const STEPS = 32;

/** Places as SVG: a ring or a filled square each, its number beside it where they are few. @param size longer side of the picture. */
export function placesSvg(places: readonly MarkedPlace[], size: number): string {
  const [mark, letter] = [MARK_SHARE * size, TEXT_SHARE * size];
  const pen = fixed(mark / 2.2);
  return places.map(({ x, y, text, isMarked }) => {
    const drawn = isMarked
      ? `<rect x="${fixed(x - mark)}" y="${fixed(y - mark)}" width="${fixed(2 * mark)}" height="${fixed(2 * mark)}" fill="#111" stroke="#fff" stroke-width="${pen}"/>`
      : `<circle cx="${fixed(x)}" cy="${fixed(y)}" r="${fixed(mark)}" fill="#fff" stroke="#111" stroke-width="${pen}"/>`;
    // White behind the letters: they stand on dark film and on light.
    return places.length > MOST_NUMBERED ? drawn : `${drawn}<text x="${fixed(x + 1.5 * mark)}" y="${fixed(y + letter / 3)}" font-size="${fixed(letter)}" font-weight="700" fill="#111" stroke="#fff" stroke-width="${pen}" paint-order="stroke">${text}</text>`;
  }).join('');
}

/** A colour scale beneath a picture, with its ticks in a unit and its unit beneath; and the room that it takes. */
export function scaleSvg(field: Field, unit: LegendUnit, width: number, top: number): { readonly svg: string; readonly height: number } {
  const letter = TEXT_SHARE * Math.max(width, top);
  const y = top + letter;
  const bars = Array.from({ length: STEPS }, (_, step) => `<rect x="${fixed((step * width) / STEPS)}" y="${fixed(y)}" width="${fixed(width / STEPS + 0.1)}" height="${fixed(letter)}" fill="${colourText(field.colours, Math.round(((step + 0.5) / STEPS) * COLOUR_COUNT))}"/>`);
  const { ticks, unit: name, isClipped } = legendIn(field, unit);
  const words = (x: number, line: number, anchor: string, text: string): string => `<text x="${fixed(x)}" y="${fixed(y + letter + line)}" font-size="${fixed(letter)}" text-anchor="${anchor}" fill="#111">${text}</text>`;
  const marks = ticks.map(({ place, text }) => `<path d="M${fixed(place * width)},${fixed(y + letter)}v${fixed(letter / 3)}" stroke="#111" stroke-width="0.6"/>${words(place * width, 1.4 * letter, place < 0.04 ? 'start' : place > 0.96 ? 'end' : 'middle', text)}`);
  return { svg: [...bars, ...marks, words(0, 2.6 * letter, 'start', `${name} dry${isClipped ? ', and more' : ''}`)].join(''), height: 5 * letter };
}

function fixed(value: number): string {
  return String(Number(value.toFixed(1)));
}
