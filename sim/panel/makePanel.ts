import { CrosscoatError, type Warning } from '../base/errors.ts';
import type { PanelSpec } from '../job/schema.ts';
import { findCrossing, type Crossing } from './crossings.ts';
import type { Panel, Polygon } from './panel.ts';
import { boundingBox, contains, isFlat, moved, oriented, signedArea, type Box } from './polygon.ts';
import { shapeRing } from './shapeRing.ts';

/** Longest side of a panel, m. Assumed: longer work is done in several panels. */
const LONGEST_SIDE_M = 20;

/** Most corners of a panel's outline and holes together; keeps the crossing check short. */
const MOST_PANEL_CORNERS = 40000;

/** A smaller ring is a slip of the pen, or the wrong unit, m². */
const SMALLEST_AREA_M2 = 1e-8;

const RAD_PER_DEG = Math.PI / 180;

/**
 * A panel from its words in a job: outline counter-clockwise, holes clockwise, all moved so that
 * the outline's bounding box has its lower-left corner at the origin (an `outline-moved` warning
 * says by how much).
 * @param pointer JSON pointer of the panel in the job, for errors and warnings.
 * @throws CrosscoatError `geometry` for an outline or hole that is open, crosses or touches
 * itself, has no area, lies outside, or meets another; `limit` for one that is too large.
 */
export function makePanel(spec: PanelSpec, pointer: string): { panel: Panel; warnings: Warning[] } {
  const outlinePointer = `${pointer}/outline`;
  const outline = shapeRing(spec.outline, outlinePointer);
  const holes = spec.holes.map((hole, i) => shapeRing(hole, `${pointer}/holes/${i}`));
  const box = boundingBox(outline);
  checkSize(box, outlinePointer);
  checkCorners([outline, ...holes], pointer);
  checkNotFlat([outline, ...holes], pointer);
  const crossing = findCrossing([outline, ...holes]);
  if (crossing !== null) throw crossingError(crossing, [outline, ...holes], box, pointer);
  checkAreas([outline, ...holes], pointer);
  checkHolesInside(outline, holes, pointer);

  const [left, bottom, right, top] = box;
  const settle = (ring: Polygon, turn: 1 | -1): Polygon => oriented(moved(ring, -left, -bottom), turn);
  const settledHoles = holes.map((hole) => settle(hole, -1));
  const settledOutline = settle(outline, 1);
  const panel: Panel = {
    id: spec.id,
    name: spec.name,
    outline: settledOutline,
    holes: settledHoles,
    attitude: {
      tilt_rad: spec.attitude.tilt_deg * RAD_PER_DEG,
      down_rad: spec.attitude.down_deg * RAD_PER_DEG,
    },
    width_m: right - left,
    height_m: top - bottom,
    area_m2: settledHoles.reduce((area, hole) => area + signedArea(hole), signedArea(settledOutline)),
  };
  return { panel, warnings: movedWarnings(left, bottom, outlinePointer) };
}

/** A smaller shift is rounding, m. */
const SMALLEST_SHIFT_M = 1e-7;

function movedWarnings(left: number, bottom: number, pointer: string): Warning[] {
  if (Math.abs(left) < SMALLEST_SHIFT_M && Math.abs(bottom) < SMALLEST_SHIFT_M) return [];
  return [
    {
      code: 'outline-moved',
      text:
        `The outline's lower-left corner stood at ${millimetres(left, bottom)}; the outline and its holes were moved ` +
        'so that it is at (0, 0). Recorded strokes must use that origin.',
      place: { pointer },
    },
  ];
}

function checkSize([left, bottom, right, top]: Box, pointer: string): void {
  const longest = Math.max(right - left, top - bottom);
  if (longest <= LONGEST_SIDE_M) return;
  throw new CrosscoatError(
    'limit',
    `makePanel: ${pointer} is ${(longest * 1000).toFixed(0)} mm long, more than ${LONGEST_SIDE_M * 1000} mm; give mm, or cut the part into several panels`,
    { pointer },
  );
}

function checkCorners(rings: readonly Polygon[], pointer: string): void {
  const corners = rings.reduce((sum, ring) => sum + ring.length / 2, 0);
  if (corners <= MOST_PANEL_CORNERS) return;
  throw new CrosscoatError(
    'limit',
    `makePanel: ${pointer}: outline and holes have ${corners} corners, more than ${MOST_PANEL_CORNERS}; give fewer points`,
    { pointer },
  );
}

/** Before the crossing check, which would call a flat ring's fault a crossing. */
function checkNotFlat(rings: readonly Polygon[], pointer: string): void {
  const flat = rings.findIndex(isFlat);
  if (flat < 0) return;
  const at = ringPointer(flat, pointer);
  throw new CrosscoatError('geometry', `makePanel: ${at} encloses no area (its corners lie on a line); give corners that go round an area`, { pointer: at });
}

/** After the crossing check, since a figure of eight may have no area in sum. */
function checkAreas(rings: readonly Polygon[], pointer: string): void {
  const small = rings.findIndex((ring) => !(Math.abs(signedArea(ring)) >= SMALLEST_AREA_M2));
  if (small < 0) return;
  const at = ringPointer(small, pointer);
  throw new CrosscoatError('geometry', `makePanel: ${at} encloses less than ${SMALLEST_AREA_M2 * 1e6} mm²; give mm, or leave it out`, { pointer: at });
}

/** Called once nothing crosses: a hole then is inside or outside as a whole. */
function checkHolesInside(outline: Polygon, holes: readonly Polygon[], pointer: string): void {
  holes.forEach((hole, i) => {
    const at = `${pointer}/holes/${i}`;
    const x = hole[0] as number;
    const y = hole[1] as number;
    if (!contains(outline, x, y)) {
      throw new CrosscoatError('geometry', `makePanel: ${at} lies outside the outline (its corner ${millimetres(x, y)}); move it inside or leave it out`, { pointer: at });
    }
    const around = holes.findIndex((other, k) => k !== i && contains(other, x, y));
    if (around >= 0) {
      throw new CrosscoatError('geometry', `makePanel: ${at} lies inside ${pointer}/holes/${around}; leave it out`, { pointer: at });
    }
  });
}

function crossingError(crossing: Crossing, rings: readonly Polygon[], box: Box, pointer: string): CrosscoatError {
  const { ringA, edgeA, ringB, edgeB, at } = crossing;
  const a = edgeWords(rings[ringA] as Polygon, edgeA);
  const b = edgeWords(rings[ringB] as Polygon, edgeB);
  const first = ringPointer(ringA, pointer);
  const second = ringPointer(ringB, pointer);
  const place = millimetres(at[0], at[1]);
  const message =
    ringA === ringB
      ? `makePanel: ${first} crosses or touches itself at ${place}: ${a} meets ${b}; move one of these corners so that the line goes round once`
      : `makePanel: ${second} meets ${first} at ${place}: ${b} meets ${a}; keep every hole inside the outline and apart from the others`;
  return new CrosscoatError('geometry', message, {
    pointer: ringA === ringB ? first : second,
    at_m: [at[0] - box[0], at[1] - box[1]],
  });
}

function ringPointer(ring: number, pointer: string): string {
  return ring === 0 ? `${pointer}/outline` : `${pointer}/holes/${ring - 1}`;
}

function edgeWords(ring: Polygon, edge: number): string {
  const next = (edge + 1) % (ring.length / 2);
  const from = millimetres(ring[2 * edge] as number, ring[2 * edge + 1] as number);
  return `edge ${edge + 1} from ${from} to ${millimetres(ring[2 * next] as number, ring[2 * next + 1] as number)}`;
}

/** A place in the file's own mm, to 0.01 mm. */
function millimetres(x_m: number, y_m: number): string {
  const words = (value_m: number): string => String(Number((value_m * 1000).toFixed(2)) + 0);
  return `(${words(x_m)}, ${words(y_m)}) mm`;
}
