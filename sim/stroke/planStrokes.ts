import { checkRange } from '../base/check.ts';
import { CrosscoatError, type Warning } from '../base/errors.ts';
import type { Panel } from '../panel/panel.ts';
import { PathBuilder } from './pathBuilder.ts';
import type { Planned, StrokePlan } from './plan.ts';
import { type Span, stripSpans, turnPanel } from './strip.ts';
import type { Stroke } from './stroke.ts';

/** Assumed: the gun is already moving for this long before the trigger is pulled, and for as long after fluid stops. */
const RUN_IN_S = 0.1;
/** Assumed: a finger needs this long between letting go and pulling again. */
const RETRIGGER_S = 0.25;
/** Lines beyond this are a slip in the numbers, not a plan. */
const MOST_LINES = 20_000;

/** One straight travel with fluid on; `s` along the first stroke's direction of its pass. */
interface Piece {
  readonly centre_m: number;
  /** Where the fluid opens and closes, in the order of travel. */
  readonly open_m: number;
  readonly close_m: number;
  /** Whether a line lies beside it, laid before it in the same pass. */
  readonly hasNeighbour: boolean;
}

/**
 * Fills a panel with parallel straight strokes, the gun square and at one height.
 *
 * *Lines.* They run along `direction_rad`; the first stands `firstStroke_m` inward from the panel's
 * extreme edge on the right hand of its travel (the bottom edge for direction 0), and each next one
 * a pitch of (1 - overlap) · fan width to the left. The pitch is never changed to fit: lines are
 * added until one stands at or beyond the same inset from the far edge, so that the far edge is
 * covered at least as well as the first.
 *
 * *Ends.* The fluid opens `lead_m` outside the first point of the panel within half a pitch of the
 * line (this stroke's own share of the panel), or where the fan's full width first meets the panel
 * if that is earlier, so that a slanted or curved edge gets every stroke that reaches it; the same
 * with `lag_m` at the end. (Where no panel lies within half a pitch, both count from the fan's reach.) The trigger is pulled and let go `triggerLag_s` earlier in the travel,
 * and the gun moves before and after.
 *
 * *Gaps.* Where the whole fan is off the panel (notch or hole) over more than
 * 2 (lead + lag) + fan width + 0.25 s of travel, the trigger is let go and the stroke is split;
 * smaller gaps are sprayed over, as a hand would. Assumed: common practice gives no figure.
 *
 * *Turns.* Straight from stroke to stroke at the plan's speed, trigger off. A cross coat adds a
 * second pass at `direction_rad` + π/2 with the fan turned to stay square to its travel.
 *
 * `meant.start_m` and `meant.end_m` are the places where fluid opens and closes.
 * @param fanWidth_m full width at the plan's distance. @param triggerLag_s from trigger to fluid.
 * @throws `range` for a value outside its limits, `limit` for more than 20 000 lines in a pass.
 */
export function planStrokes(panel: Panel, plan: StrokePlan, fanWidth_m: number, triggerLag_s: number): Planned {
  checkPlan(plan, fanWidth_m, triggerLag_s);
  const builder = new PathBuilder();
  const strokes: Stroke[] = [];
  const warnings: Warning[] = [];
  const passes = plan.cross ? 2 : 1;
  for (let pass = 0; pass < passes; pass++) {
    const direction_rad = plan.direction_rad + (pass * Math.PI) / 2;
    const pieces = passPieces(panel, plan, direction_rad, fanWidth_m, warnings);
    for (const piece of pieces) {
      strokes.push(layPiece(builder, piece, plan, direction_rad, triggerLag_s, strokes.length, pass));
    }
  }
  return { path: builder.build(), strokes, warnings };
}

function checkPlan(plan: StrokePlan, fanWidth_m: number, triggerLag_s: number): void {
  const check = (name: string, value: number, low: number, high: number, unit: string, why: string, advice: string) =>
    checkRange({ name: `planStrokes: ${name}`, value, low, high, unit, why, advice });
  checkRange({ name: 'planStrokes: overlap', value: plan.overlapFraction, low: 0, high: 0.95, why: 'strokes would not advance, or leave bare lanes', advice: 'give a fraction from 0 to 0.95' });
  check('speed', plan.speed_m_s, 0.01, 5, 'm/s', 'a still gun lays no stroke', 'give a travel speed such as 0.3 m/s');
  check('distance', plan.distance_m, 0.02, 1, 'm', 'the fan is not known nearer or farther', 'give a gun distance such as 0.2 m');
  check('direction', plan.direction_rad, -2 * Math.PI, 2 * Math.PI, 'rad', 'one turn says all', 'give the direction of the first stroke from +x');
  check('lead', plan.lead_m, 0, 1, 'm', 'before the edge', 'give a lead such as 0.05 m');
  check('lag', plan.lag_m, 0, 1, 'm', 'past the edge', 'give a lag such as 0.05 m');
  check('fan width', fanWidth_m, 0.001, 5, 'm', 'full width at the distance', 'check the set-up');
  check('trigger lag', triggerLag_s, 0, 1, 's', 'from trigger to fluid', 'check the set-up');
}

/** The pieces of one pass in the order in which they are laid. */
function passPieces(panel: Panel, plan: StrokePlan, direction_rad: number, fanWidth_m: number, warnings: Warning[]): Piece[] {
  const turned = turnPanel(panel, direction_rad);
  const height_m = turned.highest_m - turned.lowest_m;
  const pitch_m = (1 - plan.overlapFraction) * fanWidth_m;
  checkRange({
    name: 'planStrokes: first stroke',
    value: plan.firstStroke_m,
    low: -fanWidth_m / 2,
    high: height_m,
    unit: 'm',
    why: 'outside, the fan would miss the panel',
    advice: 'give its centre line from the edge, positive inward',
  });
  const lines = lineCount(height_m, plan.firstStroke_m, pitch_m);
  if (fanWidth_m > height_m) {
    warnings.push({
      code: 'fan-wider-than-panel',
      text: `The fan is ${mm(fanWidth_m)} mm wide and the panel ${mm(height_m)} mm across the strokes; most of the fan's edge misses it`,
      place: {},
    });
  }
  const pieces: Piece[] = [];
  let laidLines = 0;
  for (let line = 0; line < lines; line++) {
    const centre_m = turned.lowest_m + plan.firstStroke_m + line * pitch_m;
    const reach = stripSpans(turned, centre_m - fanWidth_m / 2, centre_m + fanWidth_m / 2);
    if (reach.length === 0) continue;
    const own = stripSpans(turned, centre_m - pitch_m / 2, centre_m + pitch_m / 2);
    const backward = plan.order === 'serpentine' && laidLines % 2 === 1;
    const spans = joinedSpans(reach, sprayedOverGap_m(plan, fanWidth_m)).map((span) => fluidSpan(span, own, plan, backward));
    if (backward) spans.reverse();
    for (const [from, to] of spans) {
      pieces.push({ centre_m, open_m: backward ? to : from, close_m: backward ? from : to, hasNeighbour: laidLines > 0 });
    }
    laidLines++;
  }
  return pieces;
}

function mm(length_m: number): string {
  return (length_m * 1000).toFixed(0);
}

/** Lines at a constant pitch until one is at or past the same inset from the far edge. */
function lineCount(height_m: number, first_m: number, pitch_m: number): number {
  const steps = Math.ceil((height_m - 2 * first_m) / pitch_m - 1e-9);
  const lines = Math.max(0, steps) + 1;
  if (lines > MOST_LINES) {
    throw new CrosscoatError('limit', `planStrokes: ${lines} lines in one pass are more than ${MOST_LINES} (pitch ${pitch_m} m over ${height_m} m); give less overlap, a wider fan or a smaller panel`);
  }
  return lines;
}

/** Gaps up to this long are sprayed over. */
function sprayedOverGap_m(plan: StrokePlan, fanWidth_m: number): number {
  return 2 * (plan.lead_m + plan.lag_m) + fanWidth_m + RETRIGGER_S * plan.speed_m_s;
}

function joinedSpans(spans: readonly Span[], shortestGap_m: number): Span[] {
  const joined: [number, number][] = [];
  for (const [from, to] of spans) {
    const last = joined.at(-1);
    if (last !== undefined && from - last[1] <= shortestGap_m) last[1] = to;
    else joined.push([from, to]);
  }
  return joined;
}

/** Where the fluid runs for one span of the panel under the whole fan. */
function fluidSpan(reach: Span, own: readonly Span[], plan: StrokePlan, backward: boolean): Span {
  const before_m = backward ? plan.lag_m : plan.lead_m;
  const after_m = backward ? plan.lead_m : plan.lag_m;
  const within = own.filter(([from, to]) => to > reach[0] && from < reach[1]);
  const first = within[0] ?? reach;
  const last = within.at(-1) ?? reach;
  return [Math.min(reach[0], first[0] - before_m), Math.max(reach[1], last[1] + after_m)];
}

/** Adds run-in, opening, closing and run-out of one piece to the path. */
function layPiece(builder: PathBuilder, piece: Piece, plan: StrokePlan, direction_rad: number, triggerLag_s: number, index: number, pass: number): Stroke {
  const cos = Math.cos(direction_rad);
  const sin = Math.sin(direction_rad);
  const place = (s: number): [number, number] => [s * cos - piece.centre_m * sin, s * sin + piece.centre_m * cos];
  const onward = piece.close_m >= piece.open_m ? 1 : -1;
  const lag_m = triggerLag_s * plan.speed_m_s * onward;
  const runIn_m = RUN_IN_S * plan.speed_m_s * onward;
  const fan_rad = direction_rad + Math.PI / 2;
  const opens_m = piece.open_m - lag_m;
  moveTo(builder, place(opens_m - runIn_m), plan, fan_rad, 0);
  const firstRow = moveTo(builder, place(opens_m), plan, fan_rad, 1);
  const lastRow = moveTo(builder, place(piece.close_m - lag_m), plan, fan_rad, 0);
  moveTo(builder, place(piece.close_m + runIn_m), plan, fan_rad, 0);
  return {
    index,
    pass,
    firstRow,
    lastRow,
    meant: {
      source: 'plan',
      distance_m: plan.distance_m,
      speed_m_s: plan.speed_m_s,
      overlapFraction: piece.hasNeighbour ? plan.overlapFraction : NaN,
      start_m: place(piece.open_m),
      end_m: place(piece.close_m),
    },
  };
}

/** Adds a row at `place`, reached at the plan's speed. @returns its row. */
function moveTo(builder: PathBuilder, place: readonly [number, number], plan: StrokePlan, fan_rad: number, trigger: number): number {
  const [x, y] = place;
  const last = builder.lastPlace_m;
  const t_s = last === null ? 0 : builder.lastTime_s + Math.hypot(x - last[0], y - last[1]) / plan.speed_m_s;
  if (last !== null && !(t_s > builder.lastTime_s)) return builder.count - 1;
  builder.addRow(t_s, x, y, plan.distance_m, fan_rad, 0, 0, trigger);
  return builder.count - 1;
}
