import { describe, expect, it } from 'vitest';
import { movedSection, sectionPartAt } from '../../../src/canvas/sectionLine.ts';

const panel = { outline: new Float64Array(0), holes: [], width_m: 2, height_m: 1, down_rad: null };
const camera = { pxPerM: 500, originX_px: 0, originY_px: 500 };

describe('section line', () => {
  it('moves one end and holds it on the panel', () => {
    expect(movedSection([0.5, 0.5, 1.5, 0.5], 'end', 3, -0.25, panel)).toEqual([0.5, 0.5, 2, 0.25]);
    expect(movedSection([0.5, 0.5, 1.5, 0.5], 'start', -0.25, 9, panel)).toEqual([0.25, 1, 1.5, 0.5]);
  });

  it('moves as a whole only as far as both ends have room', () => {
    expect(movedSection([0.5, 0.25, 1.5, 0.5], 'middle', 3, -3, panel)).toEqual([1, 0, 2, 0.25]);
  });

  it('gives an end a target of 44 px and the line its reach', () => {
    const line = [0.2, 0.5, 1.2, 0.5] as const;
    // On the screen: from (100, 250) to (600, 250).
    expect(sectionPartAt(line, camera, 121, 250, 8)).toBe('start');
    expect(sectionPartAt(line, camera, 600, 229, 8)).toBe('end');
    expect(sectionPartAt(line, camera, 350, 257, 8)).toBe('middle');
    expect(sectionPartAt(line, camera, 350, 259, 8)).toBeNull();
    expect(sectionPartAt(line, camera, 623, 250, 8)).toBeNull();
  });
});
