import { batch, computed, effect, signal } from '@preact/signals';
import { amountsCsv, amountsOf, COTTON_kg_m2, CrosscoatError, type AmountsAnswer, type Job, type PanelBalance, type PlannedScheme } from '../../../sim/index.ts';
import { download } from '../../storage/download.ts';
import { isDropped } from '../../worker/client.ts';
import { latestOnly } from '../latest.ts';
import { problemOf, type Problem } from '../problem.ts';
import { state } from '../state.ts';
import { schemeStage } from './scheme.ts';
import { schemePlan, schemeWorker } from './schemePlan.ts';

/** What the sheet of amounts shows and nothing keeps. Laying the coats for their balance takes the worker; the rest is counted here. */
const balances = {
  found: signal<readonly PanelBalance[]>([]),
  /** The plan that they are of. */
  madeOf: signal<PlannedScheme | null>(null),
};

/** The amounts of the plan in hand, or why there are none; null while there is no plan. */
export const amountsShown = computed<{ readonly answer: AmountsAnswer } | { readonly problem: Problem } | null>(() => {
  const [plan, made] = [schemePlan.plan.value, schemePlan.madeOf.value];
  if (plan === null || made === null) return null;
  // Prices need no new plan: they count as soon as they are typed.
  const { supplies = [] } = state.job.value;
  const { amountsLeft_mL, amountsLeft_percent, amountsCloth } = state.scheme.value;
  const found = balances.madeOf.value === plan ? balances.found.value : null;
  try {
    const options = { amounts: { left_m3: amountsLeft_mL * 1e-6, leftFraction: amountsLeft_percent / 100 }, cloth_kg_m2: amountsCloth ? COTTON_kg_m2 : null };
    return { answer: amountsOf({ ...made, supplies: [...supplies] }, plan, found, options) };
  } catch (thrown) {
    if (thrown instanceof CrosscoatError) return { problem: problemOf('The amounts could not be worked out', thrown) };
    throw thrown;
  }
});

/** Asks for the balances as the plan changes. @returns what stops that. */
export function followBalances(): () => void {
  const ask = latestOnly(work);
  return effect(() => {
    const [plan, job] = [schemePlan.plan.value, schemePlan.madeOf.value];
    if (plan !== null && job !== null && balances.madeOf.peek() !== plan) ask({ job, plan });
  });
}

async function work(asked: { readonly job: Job; readonly plan: PlannedScheme }): Promise<void> {
  try {
    const reply = await schemeWorker.ask('hingeBalances', asked);
    batch(() => {
      balances.found.value = reply.balances;
      balances.madeOf.value = asked.plan;
    });
  } catch (thrown) {
    if (!isDropped(thrown)) schemeStage.problem.value = problemOf('The balance about the hinge line could not be worked out', thrown);
  }
}

/** Saves the tables. */
export function saveAmounts(answer: AmountsAnswer): void {
  download(new Blob([amountsCsv(answer, state.units.peek())], { type: 'text/csv' }), `${answer.plan.scheme.id}-amounts.csv`);
}
