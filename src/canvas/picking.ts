import { type Camera, toPanel, toScreen } from './camera.ts';
import type { Tag } from './labelsLayer.ts';
import type { CanvasScene, StrokeScene, ZoneScene } from './scene.ts';
import { distanceToSegment } from './sectionLine.ts';

/** Around a tag 22 px high: a target of 44 px. */
const TAG_REACH_PX = 11;

/** What a click at a pixel means: a zone's tag, else a stroke's line, else the zone whose cells lie there. */
export function pickAt(
  scene: CanvasScene, tags: readonly Tag[], camera: Camera, x_px: number, y_px: number, reach_px: number,
): { readonly zone: string } | { readonly stroke: number } | null {
  const tagged = tags.find(({ box: [left, top, width, height] }) => {
    const beside = Math.max(left - x_px, x_px - left - width, 0);
    const above = Math.max(top - y_px, y_px - top - height, 0);
    return Math.max(beside, above) <= TAG_REACH_PX;
  });
  if (tagged !== undefined) return { zone: tagged.zone };
  const stroke = strokeAt(scene.strokes, camera, x_px, y_px, reach_px);
  if (stroke !== null) return { stroke };
  const zone = zoneAt(scene, toPanel(camera, x_px, y_px));
  return zone === null ? null : { zone: zone.key };
}

function strokeAt(
  strokes: readonly StrokeScene[], camera: Camera, x_px: number, y_px: number, reach_px: number,
): number | null {
  let nearest = reach_px;
  let found: number | null = null;
  for (const { index, line } of strokes) {
    for (let i = 0; i + 3 < line.length; i += 2) {
      const from = toScreen(camera, line[i] as number, line[i + 1] as number);
      const to = toScreen(camera, line[i + 2] as number, line[i + 3] as number);
      const away = distanceToSegment(x_px, y_px, from, to);
      if (away > nearest) continue;
      nearest = away;
      found = index;
    }
  }
  return found;
}

function zoneAt(scene: CanvasScene, [x_m, y_m]: readonly [number, number]): ZoneScene | null {
  const { field, zones } = scene;
  if (field === null) return null;
  const column = Math.floor(x_m / field.cellSize_m);
  const row = Math.floor(y_m / field.cellSize_m);
  if (column < 0 || row < 0 || column >= field.columns || row >= field.rows) return null;
  const cell = row * field.columns + column;
  return zones.find(({ cells }) => cells.includes(cell)) ?? null;
}
