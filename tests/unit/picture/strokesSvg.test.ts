import { describe, expect, it } from 'vitest';
import type { Panel } from '../../../sim/panel/panel.ts';
import { strokeLines } from '../../../sim/picture/strokeLines.ts';
import { escapeXml, strokesSvg, type StrokesDrawing } from '../../../sim/picture/strokesSvg.ts';
import { pathFrom } from '../../../sim/stroke/path.ts';

const PANEL: Panel = {
  id: 'p',
  name: 'p',
  outline: Float64Array.of(0, 0, 0.4, 0, 0.4, 0.3, 0, 0.3),
  holes: [Float64Array.of(0.1, 0.1, 0.1, 0.2, 0.2, 0.2, 0.2, 0.1)],
  attitude: { tilt_rad: Math.PI / 2, down_rad: -Math.PI / 2 },
  width_m: 0.4,
  height_m: 0.3,
  area_m2: 0.11,
};
const DRAWING: StrokesDrawing = {
  title: 'A "title" <b> & more',
  panel: PANEL,
  grid: { columns: 200, rows: 150, cellSize_m: 0.002 },
  lines: [{ index: 0, line: Float64Array.of(-0.05, 0.1, 0.45, 0.1) }],
  measures: [],
  zones: [{ kind: 'heavy-spot', cells: Uint32Array.of(0, 1), at_m: [0.001, 0.001], label: '<1>' }],
  unit: 'mm',
};

/** Tags must close in the order they open; throws otherwise. */
function checkWellFormed(svg: string): void {
  const open: string[] = [];
  for (const [, close, name, rest = ''] of svg.matchAll(/<(\/?)([a-zA-Z]+)([^>]*)>/g)) {
    if (close === '/') expect(open.pop()).toBe(name);
    else if (!rest.endsWith('/')) open.push(name as string);
  }
  expect(open).toEqual([]);
}

describe('strokesSvg', () => {
  const svg = strokesSvg(DRAWING);

  it('is well formed, with every text escaped', () => {
    checkWellFormed(svg);
    expect(svg).toContain('A &quot;title&quot; &lt;b&gt; &amp; more');
    expect(svg).toContain('&lt;1&gt;');
  });

  it('is to scale, one user unit a millimetre, with y turned', () => {
    // Strokes reach 50 mm past both sides, 20 mm margin: 540 wide, 340 high.
    expect(svg).toContain('width="540mm" height="340mm" viewBox="0 0 540 340"');
    // The panel's lower left corner is 70 mm in and 320 mm down.
    expect(svg).toContain('M70,320 L470,320 L470,20 L70,20 Z');
    expect(svg).toContain('points="20,220 520,220"');
  });

  it('gives sizes in inches where asked', () => {
    expect(strokesSvg({ ...DRAWING, unit: 'in' })).toContain(`width="${Math.round((540 / 25.4) * 1000) / 1000}in"`);
  });

  it('points an arrow along the stroke from its middle', () => {
    expect(svg).toContain('<polyline class="arrow" points="20,220 270,220 520,220"/>');
  });

  it('marks where the fluid opens and closes', () => {
    expect(svg).toContain('<circle class="trigger" cx="20" cy="220"');
    expect(svg).toContain('<rect fill="#1f5a8c" x="518" y="218"');
  });

  it('thins a long record', () => {
    const line = Float64Array.from({ length: 20_000 }, (_, i) => (i % 2 === 0 ? i * 1e-5 : 0.1));
    expect(strokesSvg({ ...DRAWING, lines: [{ index: 0, line }] }).length).toBeLessThan(10_000);
  });
});

describe('escapeXml', () => {
  it('drops what XML cannot hold', () => {
    expect(escapeXml('a\u0000b\u0007\'')).toBe('ab&#39;');
  });
});

describe('strokeLines', () => {
  it('follows the aim, not the nozzle', () => {
    const pose = { x_m: 0.1, y_m: 0.2, z_m: 0.2, fan_rad: Math.PI / 2, yaw_rad: 0, trigger: 1 };
    const path = pathFrom([
      { ...pose, t_s: 0, pitch_rad: 0 },
      { ...pose, t_s: 1, pitch_rad: Math.PI / 4 },
    ]);
    const meant = { source: 'median', distance_m: 0.2, speed_m_s: 0.3, overlapFraction: NaN, start_m: [0, 0], end_m: [0, 0] } as const;
    const [stroke] = strokeLines(path, [{ index: 3, pass: 0, firstRow: 0, lastRow: 1, meant }]);
    expect(stroke?.index).toBe(3);
    const [x0, y0, x1, y1] = stroke?.line as Float64Array;
    expect([x0, y0]).toEqual([0.1, 0.2]);
    // Fan along y: S = (-1, 0, 0), and 45° of pitch reaches z in its direction.
    expect(x1).toBeCloseTo(-0.1, 12);
    expect(y1).toBeCloseTo(0.2, 12);
  });
});
