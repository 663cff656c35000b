import type { CoatSetting } from '../result.ts';
import { planOf } from '../strokes.ts';
import type { Planned } from '../../stroke/plan.ts';

/** When the lines of one pass are laid, for any speed and pitch. */
export interface PassClock {
  /** Travel along a line, there and (where all strokes go one way) back, mean over the panel, m. */
  readonly travel_m: number;
  /** Time of a line that does not shrink with speed: run-in, run-out and the trigger's lag. */
  readonly rest_s: number;
  /** From the first line to the last. */
  readonly across_m: number;
}

/** Lines nearer than this are one line, split by a gap of the panel, m. */
const SAME_LINE_M = 1e-6;

/** The passes of a coat's plan, from the strokes that it lays on its panel as stated. */
export function passClocks(setting: CoatSetting): PassClock[] {
  const { plan } = setting;
  const planned = planOf(setting, plan);
  return Array.from({ length: plan.cross ? 2 : 1 }, (_, pass) => passClock(setting, planned, pass));
}

function passClock({ plan }: CoatSetting, { strokes, path }: Planned, pass: number): PassClock {
  const own = strokes.filter((stroke) => stroke.pass === pass);
  const direction_rad = plan.direction_rad + (pass * Math.PI) / 2;
  const places = own.map(({ meant }) => meant.start_m[1] * Math.cos(direction_rad) - meant.start_m[0] * Math.sin(direction_rad));
  const begins = own.filter((_, i) => i === 0 || Math.abs((places[i] as number) - (places[i - 1] as number)) > SAME_LINE_M).map(({ firstRow }) => path.t_s[firstRow] as number);
  const lines = Math.max(1, begins.length);
  const sprayed_m = own.reduce((sum, { meant }) => sum + Math.hypot(meant.end_m[0] - meant.start_m[0], meant.end_m[1] - meant.start_m[1]), 0);
  const travel_m = ((plan.order === 'one-way' ? 2 : 1) * sprayed_m) / lines;
  const across_m = Math.abs((places.at(-1) ?? 0) - (places[0] ?? 0));
  if (lines === 1) return { travel_m, across_m, rest_s: 0 };
  const period_s = ((begins.at(-1) as number) - (begins[0] as number)) / (lines - 1);
  return { travel_m, across_m, rest_s: Math.max(0, period_s - (travel_m + across_m / (lines - 1)) / plan.speed_m_s) };
}

/** From one line to the next, s. @param pitch_m between the lines. */
export function lineTime_s({ travel_m, rest_s }: PassClock, speed_m_s: number, pitch_m: number): number {
  return (travel_m + pitch_m) / speed_m_s + rest_s;
}

/** The whole pass, s. */
export function passTime_s(clock: PassClock, speed_m_s: number, pitch_m: number): number {
  return (clock.across_m / pitch_m + 1) * lineTime_s(clock, speed_m_s, pitch_m);
}
