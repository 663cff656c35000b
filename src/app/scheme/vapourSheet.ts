import { batch, computed, effect, signal } from '@preact/signals';
import { coatVapour, USUAL_ROOM, type Job, type PlannedScheme, type ReportedVapour, type RoomSpec, type SolventByMinute } from '../../../sim/index.ts';
import { changeJob, closeStep } from '../document.ts';
import { dropDraft, fieldText, typeNumber, type FieldText } from '../fieldText.ts';
import { latestOnly } from '../latest.ts';
import { pointerOf } from '../path.ts';
import type { Problem } from '../problem.ts';
import { state } from '../state.ts';
import { schemePlan, schemeWorker } from './schemePlan.ts';
import { whileWorking } from '../whileWorking.ts';

/** What the sheet of vapour shows and nothing keeps. */
export const vapourSheet = {
  solvents: signal<readonly SolventByMinute[]>([]),
  /** The plan that they are of. */
  madeOf: signal<PlannedScheme | null>(null),
  problem: signal<Problem | null>(null),
  working: signal(false),
};

/** Numbers of the room. */
export type RoomKey = keyof RoomSpec;

/** The room as stated, or the one that is assumed. */
export const room = computed<RoomSpec>(() => state.job.value.room ?? USUAL_ROOM);

/** Every coat of the scheme in the room; again whenever the room changes, without asking the worker. */
export const vapours = computed<readonly ReportedVapour[]>(() => {
  const plan = vapourSheet.madeOf.value;
  return plan === null ? [] : vapourSheet.solvents.value.map((solvent) => coatVapour(solvent, room.value, plan.air));
});

/** The coat shown: the chosen one, or the one that passes the exposure limits furthest. */
export const shownVapour = computed<ReportedVapour | null>(() => {
  const chosen = vapours.value.find(({ solvent }) => solvent.stepId === state.scheme.value.vapourStep);
  return chosen ?? vapours.value.reduce<ReportedVapour | null>((worst, each) => (worst === null || worstTimes(each) > worstTimes(worst) ? each : worst), null);
});

function worstTimes({ course }: ReportedVapour): number {
  return course.timesLimit[course.worstLimit] ?? 0;
}

/** Asks for the solvent of every coat as the plan changes. @returns what stops that. */
export function followVapour(): () => void {
  const ask = latestOnly(work);
  return effect(() => {
    const [plan, job] = [schemePlan.plan.value, schemePlan.madeOf.value];
    if (plan !== null && job !== null) ask({ job, plan });
  });
}

async function work(asked: { readonly job: Job; readonly plan: PlannedScheme }): Promise<void> {
  await whileWorking(vapourSheet, 'The vapour of this scheme could not be worked out', async () => {
    const { coats } = await schemeWorker.ask('schemeSolvent', asked);
    batch(() => {
      vapourSheet.solvents.value = coats;
      vapourSheet.madeOf.value = asked.plan;
      vapourSheet.problem.value = null;
    });
  });
}

/** A number of the room as it stands in its field. */
export function roomText(key: RoomKey): FieldText {
  const path = ['room', key];
  return fieldText(withRoom(state.job.value), path, state.units.value, state.drafts.value[pointerOf(path)]);
}

/** Takes a keystroke in a field of the room. A job without a room gets the assumed one with it, as one step of undo. */
export function typeRoom(key: RoomKey, label: string, text: string): void {
  const id = pointerOf(['room', key]);
  changeJob(label, withRoom(state.job.peek()), id);
  if (key === 'face_m2' && text.trim() === '') forgetFace(label, id);
  else typeNumber(['room', key], label, text);
}

/** A room need not be a booth: an empty field is a room without an open face. */
function forgetFace(label: string, id: string): void {
  const job = state.job.peek();
  const { face_m2, ...rest } = job.room ?? USUAL_ROOM;
  dropDraft(id);
  if (face_m2 !== undefined) changeJob(label, { ...job, room: rest }, id);
}

function withRoom(job: Job): Job {
  return job.room === undefined ? { ...job, room: USUAL_ROOM } : job;
}

/** The assumed room becomes the job's as it is. */
export function stateRoom(): void {
  closeStep();
  changeJob('State the room', withRoom(state.job.peek()));
}
