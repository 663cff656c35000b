import { describe, expect, it } from 'vitest';
import { crossAfter, fitPanel, pictureOf, placeOfPicture } from '../../../../src/app/survey/panelFit.ts';
import { markLabels } from '../../../../src/app/survey/readingMarks.ts';

const PANEL = { width_m: 0.62, height_m: 1.25 };

describe('fitPanel', () => {
  it('keeps a panel within its box, both ways at one scale, and finds places again', () => {
    const fit = fitPanel(PANEL, 520, 560);
    expect(fit.width_px).toBeLessThanOrEqual(520);
    expect(fit.height_px).toBeLessThanOrEqual(560 + 1e-9);
    const [x, y] = placeOfPicture(fit, pictureOf(fit, [0.2, 0.9]));
    expect(x).toBeCloseTo(0.2, 12);
    expect(y).toBeCloseTo(0.9, 12);
  });

  it('has y upward on the panel and downward on the picture', () => {
    const fit = fitPanel(PANEL, 520, 560);
    expect(pictureOf(fit, [0, 1])[1]).toBeLessThan(pictureOf(fit, [0, 0])[1]);
  });
});

describe('markLabels', () => {
  it('writes the numbers of near neighbours together', () => {
    const mark = (label: string, x: number, standsOut = false) => ({ at_m: [x, 0] as const, label, standsOut });
    const labels = markLabels([mark('1', 0), mark('2', 0.01, true), mark('3', 0.02), mark('4', 0.3)], ({ at_m: [x, y] }) => [x * 1000, y * 1000]);
    expect(labels.map(({ text, standsOut }) => [text, standsOut])).toEqual([['1–3', true], ['4', false]]);
  });
});

describe('crossAfter', () => {
  it('moves by 10 mm, with Shift by 50 mm, and stays on the box', () => {
    expect(crossAfter('ArrowRight', false, [0.1, 0.1], PANEL)).toEqual([0.11, 0.1]);
    expect(crossAfter('ArrowUp', true, [0.1, 0.1], PANEL)).toEqual([0.1, 0.15]);
    expect(crossAfter('ArrowLeft', true, [0.02, 0.1], PANEL)).toEqual([0, 0.1]);
    expect(crossAfter('ArrowDown', true, [0.02, 0.01], PANEL)).toEqual([0.02, 0]);
    expect(crossAfter('ArrowUp', true, [0.02, 1.24], PANEL)).toEqual([0.02, 1.25]);
    expect(crossAfter('Tab', false, [0.1, 0.1], PANEL)).toBeNull();
  });
});
