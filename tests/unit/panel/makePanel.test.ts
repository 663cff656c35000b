import { describe, expect, it } from 'vitest';
import { CrosscoatError, type ErrorCode } from '../../../sim/base/errors.ts';
import { parseJob } from '../../../sim/job/parse.ts';
import { findCrossing } from '../../../sim/panel/crossings.ts';
import { makePanel } from '../../../sim/panel/makePanel.ts';
import { signedArea } from '../../../sim/panel/polygon.ts';
import { jobText, thrownBy } from '../job/fixtures.ts';
import { panelOf, panelSpec, turned } from './specs.ts';

describe('makePanel', () => {
  it('makes a rectangle with its holes: outline counter-clockwise, holes clockwise', () => {
    const panel = panelOf({ points_mm: [[0, 0], [0, 400], [600, 400], [600, 0]] }, [{ points_mm: [[100, 100], [200, 100], [200, 200]] }]);
    expect([panel.width_m, panel.height_m]).toEqual([0.6, 0.4]);
    expect(signedArea(panel.outline)).toBeCloseTo(0.24, 14);
    expect(signedArea(panel.holes[0]!)).toBeCloseTo(-0.005, 14);
    expect(panel.area_m2).toBeCloseTo(0.235, 14);
    expect(panel.attitude.tilt_rad).toBeCloseTo(Math.PI / 2, 15);
    expect(panel.attitude.down_rad).toBeCloseTo(-Math.PI / 2, 15);
  });

  it('moves outline and holes to the origin and says by how much', () => {
    const { panel, warnings } = makePanel(
      panelSpec({ points_mm: [[-50, 20], [550, 20], [550, 420], [-50, 420]] }, [{ points_mm: [[50, 120], [150, 120], [150, 220]] }]),
      '/part/panels/3',
    );
    expect(warnings).toHaveLength(1);
    expect(warnings[0]).toMatchObject({ code: 'outline-moved', place: { pointer: '/part/panels/3/outline' } });
    expect(warnings[0]!.text).toContain('(-50, 20) mm');
    expect(Math.min(...panel.outline)).toBe(0);
    const xs = [...panel.holes[0]!].filter((_, i) => i % 2 === 0);
    expect(Math.min(...xs)).toBeCloseTo(0.1, 14);
  });

  it('keeps the area of a circle to rounding, and its edge within 0.05 mm', () => {
    for (const diameter of [5, 92, 1000, 15000]) {
      const panel = panelOf({ circle_mm: [0, 0, diameter] });
      expect(panel.area_m2 / ((Math.PI / 4) * (diameter / 1000) ** 2)).toBeCloseTo(1, 12);
      const middle = [panel.width_m / 2, panel.height_m / 2] as const;
      const { outline } = panel;
      for (let i = 0; i < outline.length; i += 2) {
        const next = (i + 2) % outline.length;
        const corner = Math.hypot(outline[i]! - middle[0], outline[i + 1]! - middle[1]);
        const midEdge = Math.hypot((outline[i]! + outline[next]!) / 2 - middle[0], (outline[i + 1]! + outline[next + 1]!) / 2 - middle[1]);
        expect(corner - diameter / 2000).toBeLessThan(0.05e-3);
        expect(diameter / 2000 - midEdge).toBeLessThan(0.05e-3);
      }
    }
  });

  it('reads a path with every kind of segment, absolute and relative alike', () => {
    // A rounded board: straight sides, one quarter arc, one cubic, one quadratic and smooth ones.
    const absolute = 'M 0 0 H 300 V 100 L 300 200 C 300 250 250 300 200 300 S 120 320 100 300 Q 60 260 40 220 T 0 100 Z';
    const relative = 'm 0 0 h 300 v 100 l 0 100 c 0 50 -50 100 -100 100 s -80 20 -100 0 q -40 -40 -60 -80 t -40 -120 z';
    const a = panelOf({ path_mm: absolute });
    const b = panelOf({ path_mm: relative });
    expect(a.outline.length).toBe(b.outline.length);
    expect(a.outline.length / 2).toBeGreaterThan(20);
    // Relative steps add up with rounding of some 1e-16 of 0.3 m each.
    a.outline.forEach((value, i) => expect(b.outline[i]).toBeCloseTo(value, 12));
  });

  it('keeps the area of curves within the chord tolerance', () => {
    // A parabola's segment under a quadratic Bézier curve: two thirds of base times height.
    const quadratic = panelOf({ path_mm: 'M 0 0 L 400 0 Q 200 400 0 0 Z' });
    expect(Math.abs(quadratic.area_m2 - (2 / 3) * 0.4 * 0.2)).toBeLessThan(0.05e-3 * 0.7);
    // Half a disc from two arcs; the cubic for a quarter turn adds at most 0.03 % of the radius.
    const half = panelOf({ path_mm: 'M 0 0 L 400 0 A 200 200 0 0 1 0 0 Z' });
    expect(Math.abs(half.area_m2 - (Math.PI / 2) * 0.04)).toBeLessThan((0.05e-3 + 0.0003 * 0.2) * Math.PI * 0.2);
    // Y is up, so sweep 1 turns counter-clockwise: the arc bulges upward from right to left.
    expect(half.height_m).toBeGreaterThan(0.19);
  });

  it('takes a path of relative steps that returns to its start only to rounding', () => {
    const steps = Array.from({ length: 3600 }, (_, i) => `l ${Math.cos((i * Math.PI) / 1800)} ${Math.sin((i * Math.PI) / 1800)}`);
    expect(panelOf({ path_mm: `M 700 700 ${steps.join(' ')} Z` }).outline.length / 2).toBeGreaterThanOrEqual(3599);
  });
});

describe('makePanel on a bad outline', () => {
  it.each<[name: string, code: ErrorCode, pointer: string, words: string]>([
    ['outline-open', 'geometry', '/outline', 'is an open outline (it does not end with Z); end the path with Z'],
    ['outline-crosses', 'geometry', '/outline', 'crosses or touches itself at (150, 100) mm: edge 1 from (0, 0) mm to (300, 200) mm meets edge 3 from (300, 0) mm to (0, 200) mm'],
    ['outline-two-paths', 'geometry', '/outline', 'has 2 subpaths; give one closed subpath'],
    ['outline-no-path', 'geometry', '/outline', 'path_mm cannot be read'],
    ['outline-flat', 'geometry', '/outline', 'encloses no area (its corners lie on a line)'],
    ['outline-two-corners', 'geometry', '/outline', '2 distinct corners cannot enclose anything; give at least 3'],
    ['outline-huge', 'limit', '/outline', 'is 30000 mm long, more than 20000 mm'],
    ['hole-outside', 'geometry', '/holes/0', 'lies outside the outline'],
    ['hole-over-edge', 'geometry', '/holes/0', 'meets /part/panels/0/outline at (600, '],
    ['hole-in-hole', 'geometry', '/holes/1', 'lies inside /part/panels/0/holes/0'],
    ['holes-meet', 'geometry', '/holes/1', 'meets /part/panels/0/holes/0 at (225, '],
  ])('%s', (name, code, pointer, words) => {
    const { job } = parseJob(jobText(name));
    const error = thrownBy(() => makePanel(job.part.panels[0]!, '/part/panels/0')) as CrosscoatError;
    expect(error).toBeInstanceOf(CrosscoatError);
    expect(error.code).toBe(code);
    expect(error.place.pointer).toBe(`/part/panels/0${pointer}`);
    expect(error.message).toContain(`/part/panels/0${pointer}`);
    expect(error.message).toContain(words);
  });

  it('places a crossing in panel coordinates, as the screen has them', () => {
    const bowTie = [[1000, 1000], [1300, 1200], [1300, 1000], [1000, 1200]] as [number, number][];
    const error = thrownBy(() => panelOf({ points_mm: bowTie })) as CrosscoatError;
    expect(error.message).toContain('at (1150, 1100) mm');
    expect(error.place.at_m![0]).toBeCloseTo(0.15, 12);
    expect(error.place.at_m![1]).toBeCloseTo(0.1, 12);
  });

  it.each([
    ['a spike that folds back', [[0, 0], [300, 0], [150, 0], [150, 200]]],
    ['a corner on another edge', [[0, 0], [300, 0], [300, 200], [150, 0], [0, 200]]],
    ['two corners in one place', [[0, 0], [100, 100], [0, 200], [200, 200], [100, 100], [200, 0]]],
    ['an edge along another', [[0, 0], [300, 0], [300, 200], [200, 200], [200, 0], [100, 0], [100, 200], [0, 200]]],
  ] as [string, [number, number][]][])('refuses %s', (_, points) => {
    expect(() => panelOf({ points_mm: points })).toThrow('crosses or touches itself');
  });

  it('refuses an outline too small to be meant', () => {
    expect(() => panelOf({ points_mm: [[0, 0], [0.1, 0], [0.1, 0.1]] })).toThrow('encloses less than 0.01 mm²');
  });

  it('refuses an empty path, a number too large, and too many corners', () => {
    expect(() => panelOf({ path_mm: '' })).toThrow('path_mm is empty');
    expect(() => panelOf({ path_mm: 'M 0 0 L 1e9 0 L 0 9 Z' })).toThrow('holds 1000000000, beyond 100000 mm');
    const wiggles = Array.from({ length: 3000 }, (_, i) => `Q ${i} 90000 ${i + 1} 0`).join(' ');
    expect(() => panelOf({ path_mm: `M 0 0 ${wiggles} Z` })).toThrow('corners is more than 20000');
  });
});

describe('findCrossing', () => {
  /** A comb of n thin teeth, its long edges in one direction. */
  function comb(teeth: number, angle_rad: number): Float64Array {
    const points: [number, number][] = [[0, -1]];
    for (let i = 0; i < teeth; i++) points.push([i, 0], [i + 0.4, 1000]);
    points.push([teeth, -1]);
    return Float64Array.from(turned(points, angle_rad).flat());
  }

  /** A drawn outline: a circle with ripples. */
  function rippled(corners: number): Float64Array {
    const ring = new Float64Array(2 * corners);
    for (let i = 0; i < corners; i++) {
      const angle = (2 * Math.PI * i) / corners;
      const radius = 1 + 0.1 * Math.sin(40 * angle);
      ring[2 * i] = radius * Math.cos(angle);
      ring[2 * i + 1] = radius * Math.sin(angle);
    }
    return ring;
  }

  // Half a second is the longest that a dropped file may hold up the page's worker unannounced.
  it.each([
    ['a rippled circle', rippled(20000)],
    ['an upright comb', comb(9999, 0)],
    ['a lying comb', comb(9999, Math.PI / 2)],
    ['a slanted comb', comb(9999, 1)],
  ])('judges %s of 20 000 corners in under 0.5 s', (_, ring) => {
    // The quickest of three: other work on the machine only adds.
    const taken_ms = Array.from({ length: 3 }, () => {
      const start = performance.now();
      expect(findCrossing([ring])).toBeNull();
      return performance.now() - start;
    });
    expect(Math.min(...taken_ms)).toBeLessThan(500);
  });

  it('finds one crossing among 20 000 corners, where it is', () => {
    const ring = rippled(20000);
    // Corner 5000 is pulled through the far side.
    ring[10000] = 0;
    ring[10001] = -2;
    const crossing = findCrossing([ring])!;
    expect([crossing.edgeA, crossing.edgeB].some((edge) => edge === 4999 || edge === 5000)).toBe(true);
  });
});
