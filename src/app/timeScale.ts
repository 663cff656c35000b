/** Where each time of a film's life stands on a slider, 0 at trigger on to 1 at the end of the watch. */
export interface TimeScale {
  readonly placeOf: (time_s: number) => number;
  readonly timeAt: (place: number) => number;
  readonly ticks: readonly { readonly place: number; readonly text: string }[];
}

/** Share of the slider that the spraying takes: it is short, and most happens in it. */
const SPRAY_SHARE = 0.35;
/** After the spraying a place stands for ever longer: even in the logarithm of this and the time since. */
const LATER_s = 60;
/** Ticks nearer than this to one another, as a share of the slider, would print into each other. */
const TICK_GAP = 0.155;

/** Seconds while spraying, then minutes, closer and closer. A film without spraying or without an end has one point. */
export function makeTimeScale(sprayed_s: number, end_s: number): TimeScale {
  const share = sprayed_s >= end_s ? 1 : SPRAY_SHARE;
  const span = Math.log1p((end_s - sprayed_s) / LATER_s);
  const placeOf = (time_s: number): number => {
    if (time_s <= sprayed_s) return sprayed_s > 0 ? (share * Math.max(0, time_s)) / sprayed_s : 0;
    return Math.min(1, share + ((1 - share) * Math.log1p((time_s - sprayed_s) / LATER_s)) / span);
  };
  return {
    placeOf,
    timeAt: (place) => (place <= share ? (place / share) * sprayed_s : sprayed_s + LATER_s * Math.expm1(((place - share) / (1 - share)) * span)),
    ticks: spaced([0, 10, 20, 30, 40, 60, 90, 120, 180, 300, 600, 1200, 1800, 3600, 7200, 10800].filter((time_s) => time_s <= end_s).map((time_s) => ({ place: placeOf(time_s), text: tickText(time_s) }))),
  };
}

function spaced(ticks: readonly { place: number; text: string }[]): { place: number; text: string }[] {
  const kept: { place: number; text: string }[] = [];
  for (const tick of ticks) if (tick.place - (kept.at(-1)?.place ?? -1) >= TICK_GAP) kept.push(tick);
  return kept;
}

function tickText(time_s: number): string {
  if (time_s < 120) return `${time_s} s`;
  return time_s < 7200 ? `${time_s / 60} min` : `${time_s / 3600} h`;
}

/** One step of an arrow key: a second while spraying, then a fiftieth of the time since, in whole times of 5 s. */
export function timeStep_s(time_s: number, sprayed_s: number): number {
  return time_s < sprayed_s ? 1 : 5 * Math.max(1, Math.round((time_s - sprayed_s) / 250));
}
