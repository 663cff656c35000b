import { describe, expect, it } from 'vitest';
import { firstStrokeSvg } from '../../../sim/picture/firstStrokeSvg.ts';
import { makePanel } from '../../../sim/panel/makePanel.ts';

const { panel } = makePanel({ id: 'board', name: 'Board', outline: { rectangle_mm: [600, 400] }, holes: [{ circle_mm: [300, 200, 50] }], attitude: { tilt_deg: 90, down_deg: -90 }, backing: 'open-cloth' }, '/panel');
const STROKES = [
  { pass: 0, line_m: [-0.05, 0.1, 0.65, 0.1] },
  { pass: 0, line_m: [0.65, 0.2, -0.05, 0.2] },
  { pass: 1, line_m: [0.1, -0.05, 0.1, 0.45] },
] as const;

describe('firstStrokeSvg', () => {
  it('draws every stroke, and the first of each pass with an arrow and a letter', () => {
    const svg = firstStrokeSvg({ title: 'Board', panel, strokes: STROKES, id: 'a' });
    expect(svg.match(/<line /g)).toHaveLength(3 + 2);
    expect(svg.match(/marker-end/g)).toHaveLength(2);
    expect([...svg.matchAll(/<text[^>]*>(\w)</g)].map(([, letter]) => letter)).toEqual(['A', 'B']);
  });

  it('keeps the way that a stroke runs: a stroke turned round starts at its other end', () => {
    const ends = (line_m: readonly [number, number, number, number]) => /<line x1="([\d.]+)" y1="[\d.]+" x2="([\d.]+)"[^>]*marker-end/.exec(firstStrokeSvg({ title: 'Board', panel, strokes: [{ pass: 0, line_m }], id: 'a' }))!.slice(1);
    expect(ends([0.65, 0.1, -0.05, 0.1])).toEqual(ends([-0.05, 0.1, 0.65, 0.1]).reverse());
  });

  it('holds all of the strokes, and escapes its title', () => {
    const svg = firstStrokeSvg({ title: '<b>', panel, strokes: STROKES, id: 'a' });
    const [width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg)!.slice(1).map(Number);
    for (const [, x, y] of svg.matchAll(/[xy]1="([-\d.]+)" y1="([-\d.]+)"/g)) {
      expect(Number(x)).toBeGreaterThan(0);
      expect(Number(x)).toBeLessThan(width!);
      expect(Number(y)).toBeGreaterThan(0);
      expect(Number(y)).toBeLessThan(height!);
    }
    expect(svg).not.toContain('<b>');
  });
});
