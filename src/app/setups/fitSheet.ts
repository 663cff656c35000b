import { batch, computed, signal } from '@preact/signals';
import type { Job, ReportedFit, Wish } from '../../../sim/index.ts';
import { changeJob, closeStep, coat } from '../document.ts';
import type { Problem } from '../problem.ts';
import { state } from '../state.ts';
import { whileWorking } from '../whileWorking.ts';
import { askPool, cancelPool } from './pool.ts';
import type { FitPrefs } from './setUpsPrefs.ts';

/** The wish last worked out; kept nowhere, since the job and the wish give it again. */
export const fitSheet = {
  fit: signal<ReportedFit | null>(null),
  jobs: signal<readonly Job[]>([]),
  /** The job and the wish that it is of. */
  madeOf: signal<{ readonly job: Job; readonly prefs: FitPrefs; readonly coat: string } | null>(null),
  problem: signal<Problem | null>(null),
  working: signal(false),
};

/** Whether the answer is of another job or wish than what is shown. */
export const isFitOutOfDate = computed(() => {
  const of = fitSheet.madeOf.value;
  return of !== null && (of.job !== state.job.value || of.prefs !== state.setUps.value.fit || of.coat !== coat.value.id);
});

/** Works the wish out for the coat in hand. */
export async function startFit(): Promise<void> {
  const of = { job: state.job.peek(), prefs: state.setUps.peek().fit, coat: coat.peek().id };
  fitSheet.problem.value = null;
  await whileWorking(fitSheet, 'This wish could not be worked out', async () => {
    const { fit, jobs } = await askPool(0, 'workOut', { job: of.job, coat: of.coat, wish: wishOf(of.prefs) });
    batch(() => {
      fitSheet.fit.value = fit;
      fitSheet.jobs.value = jobs;
      fitSheet.madeOf.value = of;
    });
  });
}

/** Leaves off. */
export function stopFit(): void {
  cancelPool(0);
  fitSheet.working.value = false;
}

/** The wish in SI. */
export function wishOf(prefs: FitPrefs): Wish {
  const { by, dry_um, weight_g_m2, coats, passes, nearest_mm, farthest_mm, slowest_m_s, fastest_m_s, most_min } = prefs;
  const film = by === 'dry' ? { dry_m: dry_um * 1e-6 } : by === 'weight' ? { weight_kg_m2: weight_g_m2 * 1e-3 } : {};
  return {
    ...film,
    coatCount: by === 'target' ? 1 : coats,
    limits: {
      passes,
      distance_m: [nearest_mm / 1000, farthest_mm / 1000],
      speed_m_s: [slowest_m_s, fastest_m_s],
      ...(most_min > 0 ? { mostTime_s: most_min * 60 } : {}),
    },
  };
}

/** Puts a proposal's job in place of the one in hand: one step of undo. One that was changed meanwhile is left as it is. */
export function useProposal(place: number): void {
  const job = fitSheet.jobs.peek()[place];
  if (job === undefined || fitSheet.madeOf.peek()?.job !== state.job.peek()) return;
  closeStep();
  changeJob('Use what was worked out', job);
}
