import { WAIT_MIN, type Change, type CoatSpec, type OwnHandSpec, type PlanSpec } from '../../sim/index.ts';
import { changeJob, coat, coatIndex } from './document.ts';
import { withValueAt, type JobPath } from './path.ts';
import { state } from './state.ts';

/** Sets one value of the coat in hand. */
export function setInCoat(label: string, path: JobPath, value: unknown): void {
  changeJob(label, withValueAt(state.job.peek(), ['coats', coatIndex.peek(), ...path], value));
}

/** A coat some of whose keys may be absent or undefined. */
type LooseCoat = Omit<CoatSpec, 'mix' | 'over'> & { readonly mix?: CoatSpec['mix'] | undefined; readonly over?: CoatSpec['over'] | undefined };

/** The coat with its keys in the order of the file, and without those that are undefined. */
export function orderedCoat({ id, name, panel, setUp, mix, over, ...rest }: LooseCoat): CoatSpec {
  return { id, name, panel, setUp, ...(mix === undefined ? {} : { mix }), ...(over === undefined ? {} : { over }), ...rest };
}

/** Lays the coat in hand over another one, or on the bare panel where `id` is empty. */
export function chooseOver(id: string): void {
  const over = id === '' ? undefined : { coat: id, wait_min: coat.peek().over?.wait_min ?? WAIT_MIN };
  setInCoat('Coat beneath', [], orderedCoat({ ...coat.peek(), over }));
}

/** Coats that the given one may lie over: on its panel, and not themselves resting on it. */
export function coatsBeneath(coats: readonly CoatSpec[], upper: CoatSpec): CoatSpec[] {
  const beneath = new Map(coats.map(({ id, over }) => [id, over?.coat]));
  const restsOnUpper = (start: string): boolean => {
    for (let id: string | undefined = start; id !== undefined; id = beneath.get(id)) {
      if (id === upper.id) return true;
    }
    return false;
  };
  return coats.filter((each) => each.panel === upper.panel && !restsOnUpper(each.id));
}

/** Lets a measured hand follow the plan of a coat, in hand or not; undoable as one step. */
export function useOwnHand(coatId: string, hand: OwnHandSpec): void {
  const job = state.job.peek();
  const index = job.coats.findIndex(({ id }) => id === coatId);
  if (index >= 0) changeJob('Own hand', withValueAt(job, ['coats', index, 'hand'], { ...hand }));
}

/** Lays the coat in hand by a recording, or by its plan where `id` is empty. */
export function chooseRecording(id: string): void {
  const next: CoatSpec = id === '' ? withoutRecording(coat.peek()) : { ...coat.peek(), recording: id };
  setInCoat(id === '' ? 'Strokes as planned' : 'Strokes as recorded', [], next);
}

/** Removes a recording; coats that used it go back to their plan. */
export function removeRecording(id: string): void {
  const job = state.job.peek();
  const coats = job.coats.map((each) => (each.recording === id ? withoutRecording(each) : each));
  changeJob('Remove a recording', { ...job, coats, recordings: job.recordings.filter((each) => each.id !== id) });
}

/** The coat as planned: the key is taken out, since the file has no empty one. */
function withoutRecording(recorded: CoatSpec): CoatSpec {
  const planned = { ...recorded };
  delete planned.recording;
  return planned;
}

/** A plan change; the other kinds are for the hand, and no setting makes them. */
export type PlanChange = Extract<Change, { kind: 'plan' }>;

/** The plan with a tried change in it, rounded to what a form shows. */
export function withPlanChange(plan: PlanSpec, change: PlanChange): PlanSpec {
  return {
    ...plan,
    ...(change.overlapFraction === undefined ? {} : { overlap_percent: rounded(change.overlapFraction * 100, 1) }),
    ...(change.speed_m_s === undefined ? {} : { speed_m_s: rounded(change.speed_m_s, 3) }),
    ...(change.distance_m === undefined ? {} : { distance_mm: rounded(change.distance_m * 1000, 1) }),
    ...(change.firstStroke_m === undefined ? {} : { firstStroke_mm: rounded(change.firstStroke_m * 1000, 1) }),
    ...(change.lead_m === undefined ? {} : { lead_mm: rounded(change.lead_m * 1000, 1), lag_mm: rounded(change.lead_m * 1000, 1) }),
  };
}

/** Makes a cure's change to the plan of the coat in hand; undoable as one step. */
export function tryCure(change: PlanChange): void {
  setInCoat('Try a cure', ['plan'], withPlanChange(coat.peek().plan, change));
}

function rounded(value: number, digits: number): number {
  return Number(value.toFixed(digits));
}
