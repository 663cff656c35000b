import { describe, expect, it } from 'vitest';
import { fitCamera, movedCamera, placeCamera, toPanel, toScreen, zoomAbout } from '../../../src/canvas/camera.ts';

const frame = { left_px: 50, top_px: 0, right_px: 1050, bottom_px: 600 };

describe('camera', () => {
  it('turns y: the upper edge of the panel is higher on the screen', () => {
    const camera = { pxPerM: 400, originX_px: 60, originY_px: 500 };
    expect(toScreen(camera, 0.5, 1)).toEqual([260, 100]);
    expect(toPanel(camera, 260, 100)).toEqual([0.5, 1]);
  });

  it('fits a panel into the middle of the frame with paper on every side', () => {
    const camera = fitCamera(frame, [0, 0, 2.4, 1.2]);
    const [left, low] = toScreen(camera, 0, 0);
    const [right, high] = toScreen(camera, 2.4, 1.2);
    expect(left).toBeGreaterThan(frame.left_px + 25);
    expect(right).toBeLessThan(frame.right_px - 25);
    expect(high).toBeGreaterThan(frame.top_px + 25);
    expect(low).toBeLessThan(frame.bottom_px - 25);
    expect((left + right) / 2).toBeCloseTo(550, 9);
    expect((low + high) / 2).toBeCloseTo(300, 9);
  });

  it('keeps the place under the pointer when it zooms, also at the limits of zoom', () => {
    const camera = fitCamera(frame, [0, 0, 2.4, 1.2]);
    for (const factor of [1.3, 0.2, 1e9, 1e-9]) {
      const [x, y] = toPanel(zoomAbout(camera, factor, 321, 123), 321, 123);
      const [x0, y0] = toPanel(camera, 321, 123);
      expect(x).toBeCloseTo(x0, 12);
      expect(y).toBeCloseTo(y0, 12);
    }
  });

  it('goes to a place with the span across the shorter side', () => {
    const camera = placeCamera(frame, [0.7, 0.3], 0.3);
    expect(camera.pxPerM).toBeCloseTo(2000, 9);
    expect(toScreen(camera, 0.7, 0.3)).toEqual([550, 300]);
  });

  it('moves with the hand', () => {
    const camera = movedCamera({ pxPerM: 100, originX_px: 0, originY_px: 0 }, 7, -3);
    expect(toScreen(camera, 0, 0)).toEqual([7, -3]);
  });
});
