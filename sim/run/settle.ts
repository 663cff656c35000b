import { CrosscoatError } from '../base/errors.ts';
import { makeSpray } from '../gun/makeSpray.ts';
import { makeSetUp } from '../gun/setUpFromSpec.ts';
import type { CoatSpec, Job } from '../job/schema.ts';
import { makePanel } from '../panel/makePanel.ts';
import { rasterisePanel } from '../panel/rasterisePanel.ts';
import { planFromSpec } from '../stroke/planFromSpec.ts';
import { targetFromSpec } from '../verdict/targetFromSpec.ts';
import { settingDoubts } from './doubts.ts';
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
  const setUp = makeSetUp(at(job.setUps, setUpIndex), `/setUps/${setUpIndex}`);
  const panelGrid = rasterisePanel(made.panel, (options.cell_mm ?? job.cell_mm) * M_PER_MM);
  const settled = {
    job,
    coat,
    panel: made.panel,
    panelGrid,
    setUp,
    spray: makeSpray(setUp),
    plan: planFromSpec(coat.plan),
    target: targetFromSpec(coat.target),
  };
  return { ...settled, warnings: [...made.warnings, ...settingDoubts(settled, coatPointer)] };
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
