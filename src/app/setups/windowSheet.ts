import { batch, computed, effect, signal } from '@preact/signals';
import { WINDOW_FAULTS, withAxis, type PointFilm, type SprayPoint, type WindowFault, type WindowMap, type WindowPlace } from '../../../sim/index.ts';
import { isDropped } from '../../worker/client.ts';
import type { AroundReply, SetUpRequest, WindowReply } from '../../worker/setUpMessages.ts';
import { changeJob, coat, coatIndex } from '../document.ts';
import { latestOnly } from '../latest.ts';
import { withValueAt } from '../path.ts';
import { problemOf, type Problem } from '../problem.ts';
import { state } from '../state.ts';
import { askPool } from './pool.ts';
import { shownSetUp } from './setUps.ts';

/** Points a side: a rough map at once, then the fine one. */
const ROUGH = 25;
const FINE = 100;

/** The working window in view; worked out again whenever job, set-up or axes change. */
export const windowSheet = {
  reply: signal<WindowReply | null>(null),
  around: signal<AroundReply | null>(null),
  /** The place that is probed, SI on both axes; null for the coat as stated. */
  place: signal<WindowPlace | null>(null),
  problem: signal<Problem | null>(null),
  working: signal(false),
};

/** The point that is probed: on the plane of the map, everything else as stated. */
export const probedPoint = computed<SprayPoint | null>(() => {
  const reply = windowSheet.reply.value;
  if (reply === null) return null;
  const { map, description } = reply;
  const { x, y } = windowSheet.place.value ?? description.stated;
  // Temperature before humidity: a humidity that is set is that of the warmed air.
  const sides = [{ axis: map.x.axis, value: x }, { axis: map.y.axis, value: y }].sort((a, b) => Number(b.axis === 'temperature') - Number(a.axis === 'temperature'));
  return sides.reduce((point, { axis, value }) => withAxis(point, axis, value), map.through);
});

/** Room to each limit at the probed place, from the nearest point of the map. */
export const probedSlack = computed<readonly (readonly [WindowFault, number])[]>(() => {
  const reply = windowSheet.reply.value;
  if (reply === null) return [];
  const at = nearestPoint(reply.map, windowSheet.place.value ?? reply.description.stated);
  return WINDOW_FAULTS.map((fault) => [fault, reply.map.slack[fault][at] as number] as const);
});

function nearestPoint({ x, y }: WindowMap, place: WindowPlace): number {
  const column = Math.round(((place.x - x.low) / (x.high - x.low)) * (x.count - 1));
  const row = Math.round(((place.y - y.low) / (y.high - y.low)) * (y.count - 1));
  return Math.min(y.count - 1, Math.max(0, row)) * x.count + Math.min(x.count - 1, Math.max(0, column));
}

/** Film at the probed place, once it is worked out. */
export const probedFilm = computed<PointFilm | null>(() => windowSheet.around.value?.sensitivities.before ?? null);

type Asked = SetUpRequest & { readonly axes: readonly [WindowMap['x']['axis'], WindowMap['y']['axis']] };

/** Maps the window again whenever what it depends on changes, and what lies around the probed point. @returns what stops that. */
export function followWindow(): () => void {
  const stops = [
    effect(() => {
      const { x, y } = state.setUps.value.window;
      const asked: Asked = { job: state.job.value, coat: coat.value.id, setUp: shownSetUp.value.id, axes: [x, y] };
      windowSheet.working.value = true;
      windowSheet.place.value = null;
      askMap(asked);
    }),
    effect(() => {
      const point = probedPoint.value;
      if (point === null) return;
      askAround({ job: state.job.value, coat: coat.value.id, setUp: shownSetUp.value.id, point });
    }),
  ];
  return () => stops.forEach((stop) => stop());
}

/** The rough map first; the fine one only where nothing changed meanwhile. */
const askMap = latestOnly(async (asked: Asked) => {
  const isNow = (): boolean => asked.job === state.job.peek() && asked.setUp === shownSetUp.peek().id && asked.coat === coat.peek().id;
  try {
    for (const count of [ROUGH, FINE]) {
      const reply = await askPool(0, 'windowMap', { ...asked, plane: null, count });
      if (!isNow()) return;
      batch(() => {
        windowSheet.reply.value = reply;
        windowSheet.problem.value = null;
      });
    }
  } catch (thrown) {
    if (isDropped(thrown) || !isNow()) return;
    batch(() => {
      windowSheet.reply.value = null;
      windowSheet.problem.value = problemOf('No working window could be mapped', thrown);
    });
  } finally {
    windowSheet.working.value = false;
  }
});

const askAround = latestOnly(async (asked: SetUpRequest & { readonly point: SprayPoint }) => {
  try {
    windowSheet.around.value = await askPool(1, 'windowAround', asked);
  } catch (thrown) {
    if (!isDropped(thrown)) windowSheet.around.value = null;
  }
});

/** Puts the probed place into the coat, its set-up and its room, as far as the plan can say it; one step of undo. */
export function usePoint(): void {
  const point = probedPoint.peek();
  if (point === null) return;
  const job = state.job.peek();
  const index = coatIndex.peek();
  const { plan } = job.coats[index] as (typeof job.coats)[number];
  const changed = {
    ...plan,
    distance_mm: rounded(point.distance_m * 1000, 0),
    speed_m_s: rounded(point.speed_m_s, 3),
    overlap_percent: rounded(point.overlapFraction * 100, 0),
  };
  const planned = withValueAt(job, ['coats', index, 'plan'], changed);
  const gun = job.setUps.findIndex(({ id }) => id === shownSetUp.peek().id);
  const fluid = rounded(point.fluidRate_m3_s * 60e6, 1);
  const fed = (job.setUps[gun]?.fluidRate_mL_min ?? fluid) === fluid ? planned : withValueAt(planned, ['setUps', gun, 'fluidRate_mL_min'], fluid);
  changeJob('Use this place of the window', withValueAt(fed, ['coats', index, 'setUp'], shownSetUp.peek().id));
}

function rounded(value: number, digits: number): number {
  return Number(value.toFixed(digits));
}
