import { evenDistance, moveStrokes, squareGun } from '../stroke/correctPose.ts';
import { evenSpeed, withoutStops } from '../stroke/correctTiming.ts';
import { triggerPastEdge } from '../stroke/correctTrigger.ts';
import type { StrokePlan } from '../stroke/plan.ts';
import type { MeantStroke, Stroke, StrokeMeasures } from '../stroke/stroke.ts';
import type { TravelChange } from '../verdict/verdict.ts';
import { fanWidthRatio } from './fan.ts';
import type { Habit } from './habits.ts';
import type { Travel } from './lay.ts';
import { anchoredStrokes } from './meantLines.ts';
import { changedPlan } from './planTrials.ts';
import type { CoatSetting, CoatStrokes } from './result.ts';
import { byHand, planOf } from './strokes.ts';

/** Whether a coat is laid exactly as planned, so that the hand has nothing to do with its faults. */
export function isAsPlanned(setting: CoatSetting, strokes: CoatStrokes): boolean {
  return strokes.source === 'plan' && setting.coat.hand.kind === 'steady';
}

/** The lead that the plan asks for at either end. */
export function meantLead_m({ plan }: CoatSetting): number {
  return Math.max(plan.lead_m, plan.lag_m);
}

/** Off square by less than this a stroke's film changes by under 1 %; it is not worth working out again. */
const SQUARE_rad = (5 * Math.PI) / 180;

/** A travel that differs from the one it was made from in some strokes only. */
export interface Corrected {
  readonly travel: Travel;
  readonly changed: ReadonlySet<number>;
}

/** The travel with one habit corrected to what was meant, in every stroke that has it. */
export function correctedByHabit(setting: CoatSetting, strokes: CoatStrokes, habit: Habit): Corrected {
  const having = strokes.measures.filter((measures) => mayHave(habit, measures, setting)).map(({ stroke }) => stroke);
  return { travel: having.length === 0 ? strokes : corrected(setting, strokes, habit, having), changed: new Set(having) };
}

/** Whether a stroke's measures leave room for a habit at all. */
function mayHave(habit: Habit, measures: StrokeMeasures, setting: CoatSetting): boolean {
  switch (habit) {
    case 'no-stops':
      return measures.stops.length > 0;
    case 'square-gun':
      return measures.tilt.worst_rad > SQUARE_rad;
    case 'trigger-past-edge':
      return (measures.triggerOn_m ?? Infinity) < meantLead_m(setting) || (measures.triggerOff_m ?? Infinity) < meantLead_m(setting);
    case 'even-speed':
    case 'even-distance':
    case 'move-strokes':
      return true;
  }
}

function corrected(setting: CoatSetting, strokes: CoatStrokes, habit: Habit, chosen: readonly number[]): Travel {
  switch (habit) {
    case 'no-stops':
      return withoutStops(strokes, chosen);
    case 'even-speed':
      return eachAsMeant(strokes, chosen, (meant) => meant.speed_m_s, evenSpeed);
    case 'even-distance':
      return eachAsMeant(strokes, chosen, (meant) => meant.distance_m, evenDistance);
    case 'square-gun':
      return carriedParallel(strokes, chosen);
    case 'trigger-past-edge':
      return triggerPastEdge(strokes, chosen, meantLead_m(setting), triggerSetting(setting));
    case 'move-strokes':
      return placed(setting, strokes, chosen, setting.plan.overlapFraction);
  }
}

/**
 * The travel with a change made. A changed plan is laid by the coat's own hand, with the same
 * errors; in place of a recording it is laid exactly, since nobody has sprayed it yet.
 *
 * A gun made square is carried parallel to the panel, so it also keeps the meant distance. A
 * moved stroke without a neighbour before it goes to its meant line.
 */
export function changedStrokes(setting: CoatSetting, strokes: CoatStrokes, change: Exclude<TravelChange, { kind: 'add-strokes' }>): Travel {
  switch (change.kind) {
    case 'plan': {
      const planned = planOf(setting, changedPlan(setting.plan, change));
      return strokes.source === 'plan' ? byHand(setting, planned) : planned;
    }
    case 'no-stops':
      return withoutStops(strokes, change.strokes);
    case 'even-speed':
      return evenSpeed(strokes, change.strokes, change.speed_m_s);
    case 'even-distance':
      return evenDistance(strokes, change.strokes, change.distance_m);
    case 'square-gun':
      return carriedParallel(strokes, change.strokes);
    case 'trigger-past-edge':
      return triggerPastEdge(strokes, change.strokes, change.lead_m, triggerSetting(setting));
    case 'move-strokes':
      return placed(setting, strokes, change.strokes, change.overlapFraction);
  }
}

function triggerSetting({ panel, setUp, plan }: CoatSetting): Parameters<typeof triggerPastEdge>[3] {
  return { panel, fanWidthPerDistance: fanWidthRatio(setUp, plan.distance_m), triggerLag_s: setUp.triggerLag_s };
}

function carriedParallel(strokes: CoatStrokes, chosen: readonly number[]): Travel {
  return eachAsMeant(squareGun(strokes, chosen), chosen, (meant) => meant.distance_m, evenDistance);
}

/** Those of the chosen strokes that lap no stroke laid before them, and so go to their meant lines when moved. */
export function anchoredOf(strokes: CoatStrokes, chosen: readonly number[]): number[] {
  return chosen.filter((index) => strokes.measures[index]?.overlap === null);
}

/** Strokes that begin a pass go to their meant lines, the others lap their neighbours as given. */
function placed(setting: CoatSetting, strokes: CoatStrokes, chosen: readonly number[], overlapFraction: number): Travel {
  const first = anchoredOf(strokes, chosen);
  const anchored = anchoredStrokes(strokes, first, setting.setUp.triggerLag_s);
  const others = chosen.filter((index) => !first.includes(index));
  return moveStrokes(anchored, others, overlapFraction, fanWidthRatio(setting.setUp, setting.plan.distance_m));
}

/** Applies a correction once for each figure that was meant (as a rule one for the whole coat). */
function eachAsMeant(
  travel: Travel,
  chosen: readonly number[],
  figure: (meant: MeantStroke) => number,
  correct: (travel: Travel, chosen: readonly number[], value: number) => Travel,
): Travel {
  const byFigure = new Map<number, number[]>();
  for (const index of chosen) {
    const value = figure((travel.strokes[index] as Stroke).meant);
    byFigure.set(value, [...(byFigure.get(value) ?? []), index]);
  }
  let corrected = travel;
  for (const [value, indices] of byFigure) {
    if (Number.isFinite(value)) corrected = correct(corrected, indices, value);
  }
  return corrected;
}

/** A plan laid exactly, without the hand. */
export function plannedStrokes(setting: CoatSetting, plan: StrokePlan): Travel {
  return planOf(setting, plan);
}
