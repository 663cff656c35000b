import { describe, expect, it } from 'vitest';
import type { ReportedDebrief, StrokeLine } from '../../../sim/index.ts';
import { cellBox, chiefPlace, firstInside, wholeBox } from '../../../src/views/practice/debrief/mapBox.ts';

const panel = { width_m: 2, height_m: 1 };
const grid = { columns: 200, rows: 100, cellSize_m: 0.01 };
const zone = { kind: 'heavy-spot', box_m: [1, 0.4, 1.04, 0.44], at_m: [1.02, 0.42], cells: Uint32Array.of(40 * 200 + 100) };
const lines: StrokeLine[] = [{ index: 3, line: Float64Array.of(-0.05, 0.5, 2.05, 0.5) }];

function place(chief: unknown): ReturnType<typeof chiefPlace> {
  return chiefPlace({ chief, coat: { setting: { panel, panelGrid: { grid } } } } as unknown as ReportedDebrief, lines);
}

const fault = (kind: string): unknown => ({ kind: 'fault', run: null, fault: { zones: [zone], cause: { kind, strokes: [3] } } });

describe('chiefPlace', () => {
  it('looks closely at the worst zone, whole and with ground about it', () => {
    const { box, at_m, strokes, rims } = place(fault('speed'));
    expect(at_m).toEqual([1.02, 0.42]);
    expect(strokes).toEqual([3]);
    expect(rims).toHaveLength(1);
    const [left, bottom, right, top] = box;
    expect(left).toBeLessThan(0.9);
    expect(right).toBeGreaterThan(1.14);
    expect(bottom).toBeLessThan(0.3);
    expect(top).toBeGreaterThan(0.54);
    expect(right - left).toBeLessThan(0.5);
  });

  it('takes in where a run began', () => {
    const low = { ...zone, box_m: [1, 0.05, 1.02, 0.1] };
    const { box } = place({ kind: 'fault', run: low, fault: { zones: [zone], cause: { kind: 'speed', strokes: [3] } } });
    expect(box[1]).toBeLessThan(0.05);
    expect(box[3]).toBeGreaterThan(0.44);
  });

  it('names no laid stroke for one that was not sprayed', () => {
    expect(place(fault('missing-stroke')).strokes).toEqual([]);
  });

  it('follows the stroke of a measure, not slender, not beyond the picture', () => {
    const { box, strokes } = place({ kind: 'measure', stroke: 3, row: {} });
    expect(strokes).toEqual([3]);
    expect(box[0]).toBeCloseTo(-0.08, 12);
    expect(box[2]).toBeCloseTo(2.08, 12);
    expect((box[2] - box[0]) / (box[3] - box[1])).toBeLessThan(3);
  });

  it.each([{ kind: 'met' }, { kind: 'nothing' }, { kind: 'measure', stroke: null, row: {} }])('shows the whole panel for %o', (chief) => {
    expect(place(chief)).toEqual({ box: wholeBox(panel), at_m: null, strokes: [], rims: [] });
  });
});

describe('cellBox', () => {
  it('takes whole cells, beyond the grid too', () => {
    expect(cellBox([-0.08, -0.021, 0.05, 0.049], { cellSize_m: 0.02 })).toEqual({ column: -4, row: -2, columns: 7, rows: 5 });
  });
});

describe('firstInside', () => {
  it('is the first point with room about it', () => {
    const line = [0, 0.5, 0.1, 0.5, 0.5, 0.5];
    expect(firstInside(line, [0, 0, 1, 1], 0.1)).toEqual([0.1, 0.5]);
    expect(firstInside(line, [0, 0, 1, 1], 0.2)).toEqual([0.5, 0.5]);
    expect(firstInside(line, [2, 2, 3, 3], 0.1)).toBeNull();
  });
});
