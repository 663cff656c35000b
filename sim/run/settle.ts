import { CrosscoatError } from '../base/errors.ts';
import { makeSpray } from '../gun/makeSpray.ts';
import { makeSetUp } from '../gun/setUpFromSpec.ts';
import type { CoatSpec, Job } from '../job/schema.ts';
import { makeAir } from '../air/moistAir.ts';
import type { SetUp } from '../gun/setUp.ts';
import { genericMix } from '../mix/genericMix.ts';
import { makeMix } from '../mix/makeMix.ts';
import type { Mix } from '../mix/mix.ts';
import { makePanel } from '../panel/makePanel.ts';
import { rasterisePanel } from '../panel/rasterisePanel.ts';
import { planFromSpec } from '../stroke/planFromSpec.ts';
import { targetFromSpec } from '../verdict/targetFromSpec.ts';
import { PEEL_BANDS_M } from '../film/level/peel.ts';
import { GRAVITY_M_S2, RECOAT_FRACTION } from '../film/makeLaw.ts';
import { lifeLimits } from '../verdict/lifeLimits.ts';
import type { LifeLimits } from '../verdict/target.ts';
import { settingDoubts } from './doubts.ts';
import { setUpWithMix } from './setUpWithMix.ts';
import type { CoatSetting } from './result.ts';

const M_PER_MM = 1e-3;

/** What may be chosen beside the job when a coat is settled. */
export interface SettleOptions {
  /** Side of a grid cell, mm, 1 to 10; the job's own where not given. */
  readonly cell_mm?: number;
}

/**
 * Turns one coat of a job from the words of the file into the records that the stages work from.
 * @throws CrosscoatError `not-found` for an unknown coat, panel or set-up; `range`, `geometry` or
 * `limit` for a panel, set-up or grid that cannot be made.
 */
export function settleCoat(job: Job, coatId: string, options: SettleOptions = {}): CoatSetting {
  const coat = coatOf(job, coatId);
  const coatPointer = `/coats/${job.coats.indexOf(coat)}`;
  const panelIndex = placeOf(job.part.panels, coat.panel, 'panel', `${coatPointer}/panel`);
  const setUpIndex = placeOf(job.setUps, coat.setUp, 'set-up', `${coatPointer}/setUp`);
  const made = makePanel(at(job.part.panels, panelIndex), `/part/panels/${panelIndex}`);
  const stated = makeSetUp(at(job.setUps, setUpIndex), `/setUps/${setUpIndex}`);
  const air = makeAir(job.air, '/air');
  const mix = mixOf(job, coat, stated, setUpIndex);
  const setUp = coat.mix === undefined ? stated : setUpWithMix(stated, mix, air);
  const panelGrid = rasterisePanel(made.panel, (options.cell_mm ?? job.cell_mm) * M_PER_MM);
  const settled = {
    job,
    coat,
    panel: made.panel,
    panelGrid,
    mix,
    air,
    backing: at(job.part.panels, panelIndex).backing,
    setUp,
    spray: makeSpray(setUp),
    plan: planFromSpec(coat.plan),
    target: targetFromSpec(coat.target, limitsOf(job, coat, mix)),
  };
  return { ...settled, warnings: [...made.warnings, ...mix.warnings, ...air.warnings, ...settingDoubts(settled, coatPointer)] };
}

/**
 * What is in the cup for one coat of a job, without settling the rest of it.
 * @throws CrosscoatError `not-found` for an unknown coat, set-up or mix, and what they throw where they cannot be made.
 */
export function mixOfCoat(job: Job, coatId: string): Mix {
  const coat = coatOf(job, coatId);
  const setUpIndex = placeOf(job.setUps, coat.setUp, 'set-up', `/coats/${job.coats.indexOf(coat)}/setUp`);
  return mixOf(job, coat, makeSetUp(at(job.setUps, setUpIndex), `/setUps/${setUpIndex}`), setUpIndex);
}

/** The mix that a coat names, or a generic one with the solids that its set-up states. */
function mixOf(job: Job, coat: CoatSpec, setUp: SetUp, setUpIndex: number): Mix {
  if (coat.mix === undefined) return genericMix(setUp.volumeSolidsFraction, `/setUps/${setUpIndex}/volumeSolids_percent`);
  const index = placeOf(job.mixes, coat.mix, 'mix', `/coats/${job.coats.indexOf(coat)}/mix`);
  return makeMix(at(job.mixes, index), `/mixes/${index}`);
}

/** Limits of the film's life for this finish and the coats that lie on each other. */
function limitsOf(job: Job, coat: CoatSpec, mix: Mix): LifeLimits {
  const { finish, density_kg_m3 } = mix;
  const upright_m = finish.yieldStress_Pa.value / (density_kg_m3 * GRAVITY_M_S2);
  return lifeLimits({
    peel_m: PEEL_BANDS_M[1],
    held_m: upright_m,
    readySolventFraction: 1 - RECOAT_FRACTION,
    heaviestCoat_kg_m2: finish.heaviestCoat_kg_m2.value,
    solidsDensity_kg_m3: finish.solidsDensity_kg_m3.value,
    coats: coatsBeneath(job, coat) + 1,
  });
}

/** How many coats of the job lie under one. */
function coatsBeneath(job: Job, coat: CoatSpec): number {
  const seen = new Set([coat.id]);
  let count = 0;
  for (let over = coat.over; over !== undefined && !seen.has(over.coat); ) {
    const { coat: id } = over;
    seen.add(id);
    count++;
    over = job.coats.find((one) => one.id === id)?.over;
  }
  return count;
}

/** The coat of that id. @throws `not-found`, naming the coats there are. */
export function coatOf(job: Job, coatId: string): CoatSpec {
  return at(job.coats, placeOf(job.coats, coatId, 'coat', '/coats'));
}

function placeOf(list: readonly { readonly id: string }[], id: string, what: string, pointer: string): number {
  const index = list.findIndex((one) => one.id === id);
  if (index >= 0) return index;
  const known = list.map((one) => one.id).join(', ');
  throw new CrosscoatError('not-found', `job: ${what} "${id}" is not in the job (it has ${known}); give one of these`, { pointer });
}

function at<T>(list: readonly T[], index: number): T {
  return list[index] as T;
}
