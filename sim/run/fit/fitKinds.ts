import { CrosscoatError } from '../../base/errors.ts';
import type { CoatSpec, Job } from '../../job/schema.ts';
import { coatOf, settleCoat } from '../settle.ts';
import type { CoatSetting } from '../result.ts';
import { axesOf, type FitAxes } from './fitAxes.ts';
import { pointMaker, type PointMaker } from './pointMaker.ts';
import type { FitPasses, Wish } from './wish.ts';
import { turnPanel } from '../../stroke/strip.ts';
import { passClocks, type PassClock } from '../window/lineClock.ts';
import { predictorFor, type Predictor } from '../window/predictPoints.ts';

/** A set-up with a mix, single or cross: within it, numbers are turned. */
export interface FitKind {
  readonly setUpId: string;
  /** Null for a coat without a mix. */
  readonly mixId: string | null;
  readonly cross: boolean;
  /** The coat with these; its target is what the wish asks of one coat. Its hand is steady; a recording and a coat beneath are left out. */
  readonly setting: CoatSetting;
  readonly axes: FitAxes;
  /** A point with the speed that lays the wished film. */
  readonly pointAt: PointMaker;
  readonly predict: Predictor;
  /** For each pass: the mean line of the plan as stated, and the panel's extent across its lines. */
  readonly passes: readonly { readonly clock: PassClock; readonly height_m: number }[];
}

/** All kinds that a wish allows, and why some set-ups are left out. */
export interface FoundKinds {
  readonly kinds: readonly FitKind[];
  readonly leftOut: readonly string[];
}

/** How kinds are made. */
export interface KindOptions {
  /** What predicts the film of points; the working window's own where not given. */
  readonly predictorOf?: (setting: CoatSetting) => Predictor;
}

/** The search needs the panel’s shape only, the check at the end its cells, mm. Assumed: eight cells and more to a usual lap of 50 mm. */
export const FIT_CELL_MM = 6;
/** Wet film of a coat beyond which a job file has no word for it, m. */
const MOST_WET_M = 2e-3;
const UM = 1e-6;

/**
 * Every allowed set-up with every allowed mix, single and cross, ready to be searched. A set-up that
 * contradicts itself, or whose distances the limits do not meet, is left out with the reason.
 * @throws CrosscoatError the first of the reasons where no kind is left; `range` for more dry film than the
 * solids can give.
 */
export function fitKinds(job: Job, coatId: string, wish: Wish, options: KindOptions = {}): FoundKinds {
  const coat = coatOf(job, coatId);
  const { setUps = job.setUps.map(({ id }) => id), passes = 'either' } = wish.limits ?? {};
  const kinds: FitKind[] = [];
  const problems: CrosscoatError[] = [];
  for (const setUpId of setUps) {
    try {
      for (const mixId of mixIds(job, coat, wish)) {
        for (const cross of crossings(passes)) kinds.push(fitKind(job, coat, wish, { setUpId, mixId, cross }, options));
      }
    } catch (problem) {
      if (!(problem instanceof CrosscoatError) || problem.code === 'cancelled') throw problem;
      problems.push(problem);
    }
  }
  if (kinds.length === 0) throw problems[0] ?? new CrosscoatError('internal', 'fit: no kind and no reason');
  return { kinds, leftOut: problems.map(({ message }) => message) };
}

function crossings(passes: FitPasses): boolean[] {
  return passes === 'either' ? [false, true] : [passes === 'cross'];
}

/** Mixes that may be used; by default those that lay the same finish. */
function mixIds({ mixes }: Job, { mix }: CoatSpec, { limits }: Wish): (string | null)[] {
  if (limits?.mixes !== undefined) return [...limits.mixes];
  if (mix === undefined) return [null];
  const finish = mixes.find(({ id }) => id === mix)?.finish;
  return mixes.filter((one) => one.finish === finish).map(({ id }) => id);
}

function fitKind(job: Job, coat: CoatSpec, wish: Wish, choice: Pick<FitKind, 'setUpId' | 'mixId' | 'cross'>, options: KindOptions): FitKind {
  const stated = settleCoat(withCoat(job, chosenCoat(coat, choice)), coat.id, { cell_mm: FIT_CELL_MM });
  const setting = { ...stated, target: { ...stated.target, ...oneCoat(wish, stated) } };
  checkSolids(setting);
  return {
    ...choice,
    setting,
    axes: axesOf(setting, wish.limits ?? {}),
    pointAt: pointMaker(setting),
    predict: (options.predictorOf ?? predictorFor)(setting),
    passes: passClocks(setting).map((clock, pass) => ({ clock, height_m: heightAcross_m(setting, pass) })),
  };
}

function heightAcross_m({ panel, plan }: CoatSetting, pass: number): number {
  const { lowest_m, highest_m } = turnPanel(panel, plan.direction_rad + (pass * Math.PI) / 2);
  return highest_m - lowest_m;
}

/** The coat alone on a bare panel, with another set-up, mix and kind of plan, sprayed by a steady hand. */
function chosenCoat({ id, name, panel, target, plan }: CoatSpec, { setUpId, mixId, cross }: Pick<FitKind, 'setUpId' | 'mixId' | 'cross'>): CoatSpec {
  return { id, name, panel, setUp: setUpId, ...(mixId === null ? {} : { mix: mixId }), target, plan: { ...plan, cross }, hand: { kind: 'steady' } };
}

/** A job with one coat replaced by another of the same id. */
export function withCoat(job: Job, coat: CoatSpec): Job {
  return { ...job, coats: job.coats.map((one) => (one.id === coat.id ? coat : one)) };
}

/** What the wish asks of one coat. */
function oneCoat({ dry_m, weight_kg_m2, coatCount = 1 }: Wish, { mix, target }: CoatSetting): Pick<CoatSetting['target'], 'film' | 'thickness_m'> {
  if (dry_m !== undefined) return { film: 'dry', thickness_m: dry_m / coatCount };
  if (weight_kg_m2 !== undefined) return { film: 'dry', thickness_m: weight_kg_m2 / mix.finish.solidsDensity_kg_m3.value / coatCount };
  return target;
}

function checkSolids({ target, mix, coat, setUp }: CoatSetting): void {
  const wet_m = target.film === 'wet' ? target.thickness_m : target.thickness_m / setUp.volumeSolidsFraction;
  if (wet_m <= MOST_WET_M) return;
  const solids = Math.round(setUp.volumeSolidsFraction * 1000) / 10;
  throw new CrosscoatError(
    'range',
    `fit: ${Math.round(target.thickness_m / UM)} µm dry in one coat needs ${Math.round(wet_m / UM)} µm wet with ${coat.mix === undefined ? 'the set-up’s' : `mix "${mix.id}"’s`} ${solids} % of solids, ` +
      `more than the ${Math.round(MOST_WET_M / UM)} µm that a coat may have; wish for less film, more coats, or a mix with more solids`,
  );
}
