import type { CoatSpec, Job } from '../../job/schema.ts';
import { speedFor } from '../planTrials.ts';
import type { CoatSetting } from '../result.ts';
import { coatOf, settleCoat } from '../settle.ts';

/** Whether every set-up is sprayed at the plan's speed, or each at the speed that brings the mean film to the target. */
export type StrokeChoice = 'as-stated' | 'to-target';

/**
 * A coat as one set-up would lay it: the same plan (overlap as a share of this fan, distance, direction,
 * leads), a steady hand and no recording.
 * @throws CrosscoatError for a coat or set-up that cannot be settled.
 */
export function settleSide(job: Job, coatId: string, setUpId: string, strokes: StrokeChoice, cell_mm: number): CoatSetting {
  const stated = settleCoat(sideJob(job, coatId, setUpId), coatId, { cell_mm });
  if (strokes === 'as-stated') return stated;
  return settleCoat(sideJob(job, coatId, setUpId, speedFor(stated, stated.plan)), coatId, { cell_mm });
}

function sideJob(job: Job, coatId: string, setUpId: string, speed_m_s?: number): Job {
  const coat = coatOf(job, coatId);
  const plan = speed_m_s === undefined ? coat.plan : { ...coat.plan, speed_m_s };
  const side: CoatSpec = { ...coat, setUp: setUpId, plan, hand: { kind: 'steady' }, recording: undefined };
  return { ...job, coats: job.coats.map((one) => (one.id === coatId ? side : one)) };
}
