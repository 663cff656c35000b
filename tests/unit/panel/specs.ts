import type { PanelSpec, ShapeSpec } from '../../../sim/job/schema.ts';
import { makePanel } from '../../../sim/panel/makePanel.ts';
import type { Panel } from '../../../sim/panel/panel.ts';

/** An upright panel's words in a job. */
export function panelSpec(outline: ShapeSpec, holes: ShapeSpec[] = []): PanelSpec {
  return { id: 'p', name: 'Panel', outline, holes, attitude: { tilt_deg: 90, down_deg: -90 }, backing: 'open-cloth' };
}

export function panelOf(outline: ShapeSpec, holes: ShapeSpec[] = []): Panel {
  return makePanel(panelSpec(outline, holes), '/part/panels/0').panel;
}

/** Corners of a polygon turned by an angle about the origin, mm. */
export function turned(points: readonly (readonly [number, number])[], angle_rad: number): [number, number][] {
  const c = Math.cos(angle_rad);
  const s = Math.sin(angle_rad);
  return points.map(([x, y]) => [c * x - s * y, s * x + c * y]);
}
