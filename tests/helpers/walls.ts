import type { SprayPoint } from '../../sim/run/window/sprayPoint.ts';
import { statedPoint } from '../../sim/run/window/sprayPoint.ts';
import type { CoatSpec } from '../../sim/job/schema.ts';
import type { CoatSetting } from '../../sim/run/result.ts';
import { settleCoat } from '../../sim/run/settle.ts';
import { smallJob, type SmallJobParts } from '../../sim/run/smallJob.ts';

/** A coat on an upright wall of 0.9 m, cells as coarse as may be: a point asks for none of them. */
export function wall(parts: Partial<Omit<SmallJobParts, 'coat'>> & { readonly coat?: Partial<SmallJobParts['coat']> } = {}): CoatSetting {
  const job = smallJob({ name: 'Wall', note: '', part: 'Wall', panel_mm: [900, 900], ...parts, coat: { id: 'c', name: 'c', ...parts.coat } });
  return settleCoat(job, 'c', { cell_mm: 10 });
}

/** The stated point of a coat with some of it changed. */
export function pointOf(setting: CoatSetting, changed: Partial<SprayPoint> = {}): SprayPoint {
  return { ...statedPoint(setting), ...changed };
}

/** A coat that says nothing of its mix. */
export function namelessCoat(stated: CoatSpec): CoatSpec {
  const coat = { ...stated };
  delete coat.mix;
  return coat;
}
