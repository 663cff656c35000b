import { checkRange } from '../../base/check.ts';
import { lostPaint_m3 } from '../../report/reported.ts';
import type { ReportedDemonstration, ReportedSide } from '../../report/reportedDemonstration.ts';
import type { FilmMoment } from '../../film/life/snapshot.ts';
import type { FilmLaw } from '../../film/law.ts';
import { runLife, type LifeOptions } from '../coatLife.ts';
import { layCoat } from '../lay.ts';
import { recordingOf } from '../recordingOf.ts';
import type { CoatSetting } from '../result.ts';
import { settleCoat } from '../settle.ts';
import { strokesOf } from '../strokes.ts';
import { SHOWN_COAT, type Demonstration } from './demonstration.ts';
import { judgeMoment, type JudgedMoment } from './lessonFigures.ts';
import type { Job } from '../../job/schema.ts';

/** Which times of a demonstration are kept, and how it is stopped. */
export interface DemonstrationOptions extends Pick<LifeOptions, 'shouldStop'> {
  /** Times at which the films are kept, s, rising, 0 to the demonstration's end. */
  readonly at_s?: readonly number[];
}

/** Which sides a demonstration has: the one at the knob, the cured one, and other cures by their place in the list. */
export interface SideChoice {
  readonly id: string;
  readonly title: string;
  readonly knob: number | null;
  readonly job: () => Job;
}

/** One side, run. */
export interface DemonstrationSide extends ReportedSide {
  readonly job: Job;
  readonly setting: CoatSetting;
  readonly end: JudgedMoment;
  /** When the gun was put away, s. */
  readonly sprayed_s: number;
  /** The film at the times asked for, not yet judged: `judgedAt` does that. */
  readonly kept: readonly FilmMoment[];
  readonly law: FilmLaw;
}

/** A demonstration, run: every side on the same clock. */
export interface DemonstrationResult extends ReportedDemonstration {
  readonly demonstration: Demonstration;
  readonly sides: readonly DemonstrationSide[];
}

/**
 * Runs a demonstration: the coat with the knob at `knob`, the cured coat, and other cures at the same
 * knob, each sprayed and watched for the same time.
 * @throws CrosscoatError `range` for a knob outside its limits or a time outside the watch; `cancelled`.
 */
export function runDemonstration(demonstration: Demonstration, knob: number, options: DemonstrationOptions = {}): DemonstrationResult {
  const sides = sidesOf(demonstration, knob).map((side) => runSide(demonstration, side, options));
  const moments = (options.at_s ?? []).map((_, i) => sides.map((side) => judgedAt(side, i)));
  return { demonstration, sides, moments };
}

/** The sides of a demonstration at a knob: shown, cured, others. @throws `range` for a knob outside its limits. */
export function sidesOf(demonstration: Demonstration, knob: number): SideChoice[] {
  const { id, knob: turned, job, others = [] } = demonstration;
  const { name, low, high, unit, cured } = turned;
  checkRange({ name: `${id}: ${name}`, value: knob, low, high, unit, why: 'beyond what the demonstration was tried for', advice: `give a value from ${low} to ${high}` });
  return [
    { id: 'shown', title: 'As it is', knob, job: () => job(knob) },
    { id: 'cured', title: 'Cured', knob: cured, job: () => job(cured) },
    ...others.map((other) => ({ id: other.id, title: other.title, knob: other.knob === undefined ? knob : other.knob, job: () => other.job(knob) })),
  ];
}

/** Runs one side for the time of its demonstration. */
export function runSide(demonstration: Demonstration, side: SideChoice, options: DemonstrationOptions = {}): DemonstrationSide {
  const { until_s, id } = demonstration;
  for (const at_s of options.at_s ?? []) {
    checkRange({ name: `${id}: time`, value: at_s, low: 0, high: until_s, unit: 's', why: 'the film is watched no longer', advice: 'give a time within the demonstration' });
  }
  const job = side.job();
  const setting = settleCoat(job, SHOWN_COAT);
  const strokes = strokesOf(setting, recordingOf(job, setting.coat));
  const life = runLife(setting, strokes, { until_s, ...options });
  const lost_m3 = lostPaint_m3(layCoat(setting, strokes).account);
  const end = judgeMoment(setting, life, life.end, lost_m3);
  const { title, knob } = side;
  const { law, sprayed_s, moments: kept } = life;
  return { id: side.id, title, knob, job, setting, end, law, sprayed_s, kept, time_s: life.end.time_s, figures: end.figures, faults: end.faults };
}

/** A side as it was at one of the times that were kept. @param index in `kept`. */
export function judgedAt(side: DemonstrationSide, index: number): ReportedSide {
  const { id, title, knob, setting, end, kept } = side;
  const { moment, figures, faults } = judgeMoment(setting, side, kept[index] as FilmMoment, end.figures.lost_m3);
  return { id, title, knob, time_s: moment.time_s, figures, faults };
}
