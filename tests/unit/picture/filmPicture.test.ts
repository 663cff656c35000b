import { describe, expect, it } from 'vitest';
import { colourIndex, makeField } from '../../../sim/picture/field.ts';
import { filmPicture, type Picture } from '../../../sim/picture/filmPicture.ts';
import { isHatched } from '../../../sim/picture/hatch.ts';
import type { FaultKind } from '../../../sim/verdict/verdict.ts';
import { MICROMETRE, TARGET, filmOf, gridOf } from './fields.ts';

const PAPER = [250, 250, 240, 255] as const;
const OPTIONS = { pixelsPerCell: 4, background: PAPER, thickness: MICROMETRE };

function pixel(picture: Picture, x: number, y: number): number[] {
  return [...picture.rgba.subarray((y * picture.width + x) * 4, (y * picture.width + x) * 4 + 4)];
}

/** A pixel of a cell; row 0 is the lowest. */
function cellPixel(picture: Picture, rows: number, column: number, row: number): number[] {
  return pixel(picture, picture.panel.left + column * 4 + 1, picture.panel.top + (rows - 1 - row) * 4 + 1);
}

describe('filmPicture', () => {
  const film = filmOf(3, 2, [10, 20, 30, 40, 50, 60]);
  const field = makeField('wet', film, TARGET);
  const picture = filmPicture(field, gridOf(film, [1, 1, 0.4, 1, 1, 1]), OPTIONS);

  it('paints each cell with the colour of its value, y up', () => {
    for (const [column, row] of [[0, 0], [1, 0], [0, 1], [2, 1]] as const) {
      const at = colourIndex(field, film.wet_m[row * 3 + column] as number) * 4;
      expect(cellPixel(picture, 2, column, row)).toEqual([...field.colours.subarray(at, at + 4)]);
    }
  });

  it('leaves cells mostly outside the panel, and the margin, to the ground', () => {
    expect(cellPixel(picture, 2, 2, 0)).toEqual([...PAPER]);
    expect(pixel(picture, 0, 0)).toEqual([...PAPER]);
  });

  it('leaves cells without film bare where the field is a share of it', () => {
    const bare = filmOf(2, 1, [0, 50]);
    const solids = filmPicture(makeField('solids', bare, TARGET), gridOf(bare), OPTIONS);
    expect(cellPixel(solids, 1, 0, 0)).toEqual([...PAPER]);
    expect(cellPixel(solids, 1, 1, 0)).not.toEqual([...PAPER]);
  });

  it('draws the colour bar, first colour at the bottom, with ticks beside it', () => {
    const { bar } = picture;
    expect(pixel(picture, bar.left + 2, bar.top + bar.height - 1)).toEqual([...field.colours.subarray(0, 4)]);
    // 64 pixels for 256 colours: the top one shows the first colour of the last four.
    expect(bar.height).toBe(64);
    expect(pixel(picture, bar.left + 2, bar.top)).toEqual([...field.colours.subarray(252 * 4, 253 * 4)]);
    expect(pixel(picture, bar.left + bar.width + 2, bar.top + bar.height - 1)).toEqual([24, 24, 24, 255]);
  });

  it('inks hatching dark on light colours and light on dark ones', () => {
    const target = makeField('target', filmOf(2, 1, [0, 100]), TARGET);
    const hatched = filmPicture(target, gridOf(filmOf(2, 1, [0, 100])), {
      ...OPTIONS,
      pixelsPerCell: 16,
      zones: [{ kind: 'thin-lap', cells: Uint32Array.of(0, 1) }],
    });
    const inks = (column: number) => {
      const found = new Set<string>();
      for (let y = 0; y < 16; y++) {
        for (let x = 0; x < 16; x++) found.add(pixel(hatched, hatched.panel.left + column * 16 + x, hatched.panel.top + y).join());
      }
      return found;
    };
    expect(inks(0).has('255,255,255,255')).toBe(true);
    expect(inks(1).has('24,24,24,255')).toBe(true);
    expect(inks(0).size).toBe(2);
  });

  it('refuses a picture that is too large, and a cell size that is none', () => {
    const wide = { ...field, grid: { columns: 20_000, rows: 4000, cellSize_m: 0.002 } };
    expect(() => filmPicture(wide, gridOf(film), { ...OPTIONS, pixelsPerCell: 32 })).toThrow(/pixels is more than/);
    expect(() => filmPicture(field, gridOf(film), { ...OPTIONS, pixelsPerCell: NaN })).toThrow(/pixelsPerCell = NaN/);
  });
});

describe('isHatched', () => {
  it('has a figure of its own for each fault, neither empty nor full', () => {
    const kinds: FaultKind[] = ['holiday', 'thin-lap', 'heavy-spot', 'dry-spray', 'run', 'orange-peel', 'dry-lap', 'blush', 'blister', 'pinhole', 'over-thick'];
    const figures = kinds.map((kind) => {
      let figure = '';
      for (let y = 0; y < 16; y++) for (let x = 0; x < 16; x++) figure += isHatched(kind, x, y) ? '#' : '.';
      expect(figure).toContain('#');
      expect(figure).toContain('.');
      return figure;
    });
    expect(new Set(figures).size).toBe(kinds.length);
  });
});
