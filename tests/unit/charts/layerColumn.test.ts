import { describe, expect, it } from 'vitest';
import { layerColumn, type ColumnFilm } from '../../../src/charts/layerColumn.ts';

const film = (letter: string, um: number, share = 1): ColumnFilm => ({ letter, name: letter, layer: 'clear', film_m: um * 1e-6, share });

describe('the column of films', () => {
  it('stands to one scale from the foot up, without gaps', () => {
    const { boxes, height } = layerColumn([film('A', 20), film('B', 10), film('C', 30, 0.5)], 1e-6, 150);
    expect(boxes[0]!.y + boxes[0]!.height).toBeCloseTo(height, 9);
    expect(boxes[1]!.y + boxes[1]!.height).toBeCloseTo(boxes[0]!.y, 9);
    expect(boxes[2]!.y).toBeCloseTo(0, 9);
    expect(boxes[0]!.height / boxes[1]!.height).toBeCloseTo(2, 9);
    expect(boxes[2]!.width).toBe(75);
  });

  it('is tall enough for the thinnest letter, within limits', () => {
    expect(layerColumn([film('A', 95), film('B', 5)], 1e-6, 150).boxes.every(({ hasLetter }) => hasLetter)).toBe(true);
    const { boxes, height } = layerColumn([film('A', 990), film('B', 1)], 1e-6, 150);
    expect([height, boxes[1]!.hasLetter]).toEqual([900, false]);
  });

  it('has a ruler of round figures in either unit', () => {
    expect(layerColumn([film('A', 190)], 1e-6, 150).ticks.map(({ text }) => text)).toEqual(['0', '20', '40', '60', '80', '100', '120', '140', '160', '180']);
    expect(layerColumn([film('A', 190)], 25.4e-6, 150).ticks.map(({ text }) => text)).toEqual(['0', '1', '2', '3', '4', '5', '6', '7']);
  });

  it('is empty without film', () => {
    expect(layerColumn([], 1e-6, 150).boxes).toEqual([]);
  });
});
