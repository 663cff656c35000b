import { assertThat, CrosscoatError } from '../../base/errors.ts';
import type { Job, SchemeSpec } from '../../job/schema.ts';
import { makePanel } from '../../panel/makePanel.ts';
import type { Mix, SolventClass } from '../../mix/mix.ts';
import type { PlannedCoat, PlannedScheme, PlannedStep } from '../../scheme/planned.ts';
import type { MinuteSolvent, SolventByMinute } from '../../scheme/solvent.ts';
import { filmLawOf } from '../filmLaw.ts';
import { arrivingFastFraction } from '../livingCoat.ts';
import { settleCoat } from '../settle.ts';
import { dryEvenFilm, type SolventLeft } from './evenFilm.ts';
import { jobWithMix } from './sprayedCoat.ts';

/** Source terms are even within a step of so many seconds. */
export const MINUTE_S = 60;
/** The film is followed for so long after the last of it is laid, s; what it still holds then is counted as `later_m3`. */
const AFTER_S = 4 * 3600;
/** The grid itself is not used here: the coarsest one costs least. */
const CELL_MM = 10;
/** Rounding of sums of some hundred terms. */
const ROUNDING = 1e-9;

/** Solvent of one class of a coat: what comes off at once while it is laid, and what the film lets go. */
interface ClassAmounts {
  readonly parts: SolventClass['parts'];
  readonly atOnce_m3: number;
  readonly landed_m3: number;
  /** Share of the landed solvent that has left against the time that it has lain. */
  readonly gone: readonly (readonly [time_s: number, share: number])[];
}

/**
 * Solvent let into the room minute by minute by every coat of a planned scheme, each from its own beginning. @throws as `solventByMinute`.
 */
export function schemeSolvent(job: Job, plan: PlannedScheme): SolventByMinute[] {
  return plan.steps.filter(({ coat }) => coat !== null).map((step) => solventByMinute(job, plan, step));
}

/**
 * Solvent let into the room by one planned coat, minute by minute, by solvent; all of it leaves in the end, so the minutes and what
 * comes later add to what is used (asserted).
 *
 * The coat is laid at an even rate over its spraying time (a brushed one over its time at work). What misses, what stays
 * in the fog, what flies off the drops, and what is lost in brush and pot comes off as it is laid: the upper bound for the air.
 * What lands leaves as an even film of the coat's mean thickness does in the job's air (`dryEvenFilm`), fast solvents and
 * slow ones by the film's own account, each class in the shares of its solvents as mixed. Left out: that a mist of thin film dries
 * sooner, the coats beneath, and what cloth and tapes soak up.
 * @throws CrosscoatError `internal` for a step without a coat; what settling the coat throws.
 */
export function solventByMinute(job: Job, { scheme, air }: Pick<PlannedScheme, 'scheme' | 'air'>, step: PlannedStep): SolventByMinute {
  const { coat, spec } = step;
  if (coat === null) throw new CrosscoatError('internal', `internal: step ${spec.id} has no coat; please report this`);
  const lay_s = Math.max(MINUTE_S, spec.kind === 'spray' ? coat.spray_s : step.work_s);
  const minutes = Math.ceil((lay_s + AFTER_S) / MINUTE_S);
  const classes = classesOf(job, scheme, air, { step, coat });
  const parts = classes.flatMap((each) => each.parts.map((part) => minuteSolvent(part, each, lay_s, minutes)));
  const used_m3 = coat.liquid_m3.value * (1 - coat.mix.volumeSolidsFraction);
  const counted_m3 = parts.reduce((sum, part) => sum + part.used_m3, 0);
  assertThat(Math.abs(counted_m3 - used_m3) <= ROUNDING * used_m3 + Number.MIN_VALUE, `solventByMinute: ${counted_m3} m³ of solvent counted, ${used_m3} m³ used`);
  return { stepId: spec.id, name: spec.name, kind: spec.kind === 'spray' ? 'spray' : 'brush', mixName: coat.mix.name, step_s: MINUTE_S, minutes, lay_s, used_m3, parts };
}

function classesOf(job: Job, scheme: SchemeSpec, air: PlannedScheme['air'], { step, coat }: { readonly step: PlannedStep; readonly coat: PlannedCoat }): ClassAmounts[] {
  const { mix } = coat;
  const solvent_m3 = coat.liquid_m3.value * (1 - mix.volumeSolidsFraction);
  const { law, fastFraction } = lawOf(job, scheme, air, step, mix);
  const wet_m = coat.wet_m.value;
  const solvent_m = Math.max(0, wet_m - coat.dry_m.value);
  // Means and areas are rounded apart: no more can land than was used.
  const landed_m3 = Math.min(solvent_m * step.area_m2, solvent_m3);
  const { left } = dryEvenFilm({ law, wet_m, solidsFraction: wet_m > 0 ? coat.dry_m.value / wet_m : mix.volumeSolidsFraction, fastFraction }, AFTER_S);
  return ([['fast', mix.fast, fastFraction], ['slow', mix.slow, 1 - fastFraction]] as const).map(([name, { parts, volumeFraction }, share]) => {
    const used_m3 = solvent_m3 * volumeFraction;
    const arrived_m3 = Math.min(used_m3, landed_m3 * share);
    return { parts, atOnce_m3: used_m3 - arrived_m3, landed_m3: arrived_m3, gone: goneOf(left, (row) => (name === 'fast' ? row.fast_m : row.slow_m)) };
  });
}

/** The law by which a step's film dries, and the fast share of the solvent that lands. */
function lawOf(job: Job, scheme: SchemeSpec, air: PlannedScheme['air'], { spec }: PlannedStep, mix: Mix) {
  if (spec.kind === 'spray') {
    const setting = settleCoat(spec.mix === undefined ? job : jobWithMix(job, spec.coat, spec.mix), spec.coat, { cell_mm: CELL_MM });
    return { law: filmLawOf(setting), fastFraction: arrivingFastFraction(setting) };
  }
  const place = job.part.panels.findIndex(({ id }) => id === scheme.panels[0]);
  const panelSpec = job.part.panels[place] as Job['part']['panels'][number];
  const { panel } = makePanel(panelSpec, `/part/panels/${place}`);
  return { law: filmLawOf({ mix, air, panel, backing: panelSpec.backing }), fastFraction: mix.fast.volumeFraction };
}

function goneOf(left: readonly SolventLeft[], of: (row: SolventLeft) => number): ClassAmounts['gone'] {
  const first = left[0] === undefined ? 0 : of(left[0]);
  return left.map((row) => [row.time_s, first > 0 ? 1 - of(row) / first : 1] as const);
}

function minuteSolvent({ solvent, volumeFraction }: ClassAmounts['parts'][number], amounts: ClassAmounts, lay_s: number, minutes: number): MinuteSolvent {
  const atOnce_m3 = amounts.atOnce_m3 * volumeFraction;
  const landed_m3 = amounts.landed_m3 * volumeFraction;
  const area = areaUnder(amounts.gone);
  const liquid_m3 = new Float64Array(minutes);
  let before_m3 = 0;
  for (let minute = 0; minute < minutes; minute++) {
    const end_s = (minute + 1) * MINUTE_S;
    const let_m3 = atOnce_m3 * Math.min(1, end_s / lay_s) + (landed_m3 / lay_s) * (area(end_s) - area(end_s - lay_s));
    liquid_m3[minute] = Math.max(0, let_m3 - before_m3);
    before_m3 = Math.max(before_m3, let_m3);
  }
  const used_m3 = atOnce_m3 + landed_m3;
  return { solvent, liquid_m3, atOnce_m3, landed_m3, later_m3: Math.max(0, used_m3 - before_m3), used_m3 };
}

/** ∫₀ᵗ of a curve that is straight between its points and level after the last; 0 before 0. Points rise in time from 0. */
function areaUnder(points: ClassAmounts['gone']): (time_s: number) => number {
  const sums = [0];
  for (let k = 1; k < points.length; k++) {
    const [[from_s, low], [to_s, high]] = [points[k - 1], points[k]] as [readonly [number, number], readonly [number, number]];
    sums.push((sums[k - 1] as number) + 0.5 * (to_s - from_s) * (low + high));
  }
  return (time_s) => {
    if (time_s <= 0) return 0;
    let k = points.length - 1;
    while (k > 0 && (points[k] as readonly [number, number])[0] > time_s) k--;
    const [from_s, low] = points[k] ?? [0, 1];
    const next = points[k + 1];
    const rise = next === undefined ? 0 : (next[1] - low) / (next[0] - from_s);
    const past_s = time_s - from_s;
    return (sums[k] as number) + past_s * (low + 0.5 * rise * past_s);
  };
}
