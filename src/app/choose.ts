import { signal } from '@preact/signals';
import { coatFaults, type Fault } from '../../sim/index.ts';
import { reported } from './reported.ts';
import { state, type ChosenFault } from './state.ts';

/** A place that the canvas is asked to show, and how much around it. A new object asks again. */
export const wantedPlace = signal<{ readonly at_m: readonly [number, number]; readonly span_m: number } | null>(null);

/** Asks for the canvas to be in sight, wherever the reader has scrolled. A new object asks again. */
export const wantedSight = signal<object | null>(null);

/** Around a zone at least this much is shown, so that its place on the panel can be told. */
const LEAST_SPAN_m = 0.25;
const SPANS_PER_ZONE = 2.5;

/** Chooses a fault (or none): the canvas goes to its zone, and the strokes that cause it stand out. */
export function chooseFault(chosen: ChosenFault | null): void {
  state.chosenFault.value = chosen;
  const fault = chosen === null ? undefined : faultOf(chosen);
  // The strokes of a missing stroke are the plan's: none of those on the panel is meant.
  state.chosenStrokes.value = fault === undefined || fault.cause.kind === 'missing-stroke' ? [] : fault.cause.strokes;
  const zone = chosen === null ? undefined : fault?.zones[chosen.zone];
  if (zone === undefined) return;
  const [left, bottom, right, top] = zone.box_m;
  const span_m = Math.max(LEAST_SPAN_m, SPANS_PER_ZONE * Math.max(right - left, top - bottom));
  wantedPlace.value = { at_m: zone.at_m, span_m };
  wantedSight.value = {};
}

/** The fault of the list that is chosen. */
function faultOf({ fault }: ChosenFault): Fault | undefined {
  const coat = reported.peek();
  return coat === null ? undefined : coatFaults(coat)[fault];
}

/** Chooses one stroke, or lets go of it when it was the one. */
export function chooseStroke(stroke: number): void {
  const now = state.chosenStrokes.peek();
  state.chosenStrokes.value = now.length === 1 && now[0] === stroke ? [] : [stroke];
}

/** Chooses a stroke by its row, away from the canvas, which is brought into sight to show it. */
export function chooseStrokeOfTable(stroke: number): void {
  chooseStroke(stroke);
  if (state.chosenStrokes.peek().length > 0) wantedSight.value = {};
}
