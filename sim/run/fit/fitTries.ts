import { lineTime_s } from '../window/lineClock.ts';
import type { PredictOptions } from '../window/predictPoints.ts';
import type { PointFilm, SprayPoint } from '../window/sprayPoint.ts';
import { fanWidth_m } from '../fan.ts';
import { axisStep } from '../window/windowSteps.ts';
import { LAID_SPEEDS_M_S, onAxes, type FitPlace } from './fitAxes.ts';
import type { FitKind } from './fitKinds.ts';
import { handShare, HELD_LIMITS, nearestFault, roomsOf, type FitLimit, type HeldLimit, type Rooms } from './rooms.ts';
import { firstStroke_m } from './fitPlan.ts';
import { FIT_SPEEDS_M_S, type Wish } from './wish.ts';

/** One point of one kind, predicted and weighed. */
export interface FitTry {
  readonly kind: FitKind;
  readonly place: FitPlace;
  readonly point: SprayPoint;
  readonly film: PointFilm;
  readonly rooms: Rooms;
  /** How far past each limit of the wish, as a share of it; 0 within. */
  readonly past: Readonly<Record<HeldLimit, number>>;
  /** Estimates for one coat: its time, and what it sprays. */
  readonly time_s: number;
  readonly sprayed_m3: number;
  /** The least room, to a fault or to the end of the set-up's distances; where a limit is missed, by how much the worst is, negative. */
  readonly margin: number;
  /** What tries are ordered by; see `scoreOf`. */
  readonly score: number;
}

/** What a search holds a point against. */
export interface Weighing {
  readonly wish: Wish;
  /** Limits that do not count, to see what lies behind them. */
  readonly ignored: ReadonlySet<FitLimit>;
}

/** A place with its point, before its film is predicted. */
type FitDraft = Pick<FitTry, 'place' | 'point' | 'past' | 'time_s' | 'sprayed_m3'>;

/** Points of places of one kind, as far as they are known without their film. Those that no speed of the model lays are left out. */
function drafted(kind: FitKind, places: readonly FitPlace[], { wish }: Weighing): FitDraft[] {
  const points = places.map((place) => ({ place, point: kind.pointAt(place) })).filter(({ point }) => point.speed_m_s >= LAID_SPEEDS_M_S[0] && point.speed_m_s <= LAID_SPEEDS_M_S[1]);
  return points.map(({ place, point }) => {
    const travel = estimatedTravel(kind, point);
    return { place, point, past: pastLimits(point, travel, wish), ...travel };
  });
}

/** The most that a limit which counts is missed by, as a share of it; 0 within all. */
function worstPast(past: Partial<FitTry['past']>, ignored: Weighing['ignored']): number {
  return Math.max(...HELD_LIMITS.map((limit) => (ignored.has(limit) ? 0 : (past[limit] ?? 0))));
}

/** Points that are predicted although all of them miss a limit, the nearest to it. */
const NEAREST_TRIED = 12;

/**
 * Predicts and weighs places of one kind: those within the limits of the wish, or, where none is, the few
 * that miss them by least. @throws `cancelled`.
 */
export function tryPlaces(kind: FitKind, places: readonly FitPlace[], weighing: Weighing, options: PredictOptions): FitTry[] {
  const drafts = drafted(kind, places.map((place) => onAxes(kind.axes, place)), weighing).map((draft) => ({ draft, worst: worstPast(draft.past, weighing.ignored) }));
  const within = drafts.filter(({ worst }) => worst === 0);
  const tried = (within.length > 0 ? within : drafts.sort((a, b) => a.worst - b.worst).slice(0, NEAREST_TRIED)).map(({ draft }) => draft);
  const films = kind.predict(tried.map(({ point }) => point), options);
  return tried.map((draft, i) => weighed(kind, draft, films[i] as PointFilm, weighing));
}

function weighed(kind: FitKind, draft: FitDraft, film: PointFilm, { ignored }: Weighing): FitTry {
  const { target } = kind.setting;
  const rooms = roomsOf(film, target);
  const past = { ...draft.past, 'over-thick': Math.max(0, film.dryMean_m / target.life.thick_m - 1) };
  const worst = worstPast(past, ignored);
  const least = Math.min(rooms[nearestFault(rooms, ignored)], rangeRoom(kind, draft.point));
  const margin = worst > 0 ? Math.min(least, -worst) : least;
  return { kind, ...draft, past, film, rooms, margin, score: scoreOf(margin, { kind, film, ...draft }) };
}

/** Room to the ends of the distances that the set-up may be believed for, as a hand's room. */
function rangeRoom({ setting }: FitKind, point: SprayPoint): number {
  const [near_m, far_m] = setting.setUp.distanceRange_m;
  return handShare(Math.min(point.distance_m - near_m, far_m - point.distance_m) / axisStep(point, 'distance'));
}

/** More room than this counts no further: so much to every limit is enough, then time and loss decide. Assumed: half of all there can be. */
export const ENOUGH_ROOM = 0.5;
/** Time and loss at their worst weigh as much as this much of margin, so they decide between margins that nearly tie. */
export const MARGIN_TIE = 0.02;
/** A coat that takes so long is half as bad as one that takes for ever, s/m². Assumed: a minute a square metre. */
const SLOW_S_M2 = 60;

/** The margin as far as it counts, less a little for the time that a coat takes and the share of its liquid that is lost. */
export function scoreOf(margin: number, { kind, film, time_s, sprayed_m3 }: Pick<FitTry, 'kind' | 'film' | 'time_s' | 'sprayed_m3'>): number {
  const { area_m2 } = kind.setting.panel;
  const slow = time_s / (time_s + SLOW_S_M2 * area_m2);
  const lost = Math.max(0, 1 - (film.wetMean_m * area_m2) / sprayed_m3);
  return Math.min(margin, ENOUGH_ROOM) - (MARGIN_TIE * (slow + lost)) / 2;
}

/** By how much a point is past the limits of a wish, in shares of them; its film is not asked. */
export function pastLimits({ speed_m_s }: SprayPoint, { time_s, sprayed_m3 }: Pick<FitTry, 'time_s' | 'sprayed_m3'>, { coatCount = 1, limits = {} }: Wish): FitTry['past'] {
  const [slow, fast] = limits.speed_m_s ?? FIT_SPEEDS_M_S;
  const over = (value: number, most: number) => Math.max(0, value / most - 1);
  return {
    speed: Math.max(over(speed_m_s, fast), over(slow, speed_m_s)),
    time: over(time_s, limits.mostTime_s ?? Infinity),
    liquid: over(coatCount * sprayed_m3, limits.mostLiquid_m3 ?? Infinity),
    'over-thick': 0,
  };
}

/**
 * Time of a coat and what it sprays: as many lines as its plan has, each as long as the mean line of the
 * plan as stated, so a few per cent off. A full plan takes milliseconds, too many for every point.
 */
function estimatedTravel({ passes, setting }: FitKind, { distance_m, overlapFraction, speed_m_s, fluidRate_m3_s }: SprayPoint): Pick<FitTry, 'time_s' | 'sprayed_m3'> {
  const width_m = fanWidth_m(setting.setUp, distance_m);
  const pitch_m = (1 - overlapFraction) * width_m;
  const first_m = firstStroke_m(setting.plan, width_m, overlapFraction);
  const wayBack = setting.plan.order === 'one-way' ? 2 : 1;
  let [time_s, fluid_m] = [0, 0];
  for (const { clock, height_m } of passes) {
    const lines = Math.max(0, Math.ceil((height_m - 2 * first_m) / pitch_m)) + 1;
    time_s += lines * lineTime_s(clock, speed_m_s, pitch_m);
    fluid_m += (lines * clock.travel_m) / wayBack;
  }
  return { time_s, sprayed_m3: (fluid_m / speed_m_s) * fluidRate_m3_s };
}
