import type { Job } from '../../job/schema.ts';
import { makePanel } from '../../panel/makePanel.ts';
import type { Panel } from '../../panel/panel.ts';
import { addedWeight, publishedBand } from '../../scheme/addedWeight.ts';
import { schemeAmounts, USUAL_AMOUNTS, type AmountOptions } from '../../scheme/amounts.ts';
import type { AmountsAnswer, PanelBalance } from '../../scheme/amountsAnswer.ts';
import { labourOf } from '../../scheme/labour.ts';
import type { PlannedScheme } from '../../scheme/planned.ts';
import { purchaseOf } from '../../scheme/purchase.ts';

/** What may be chosen beside the job. */
export interface AmountsOptions {
  readonly amounts?: AmountOptions;
  /** Weight of the cloth to be counted with the film, kg/m²; null without it. */
  readonly cloth_kg_m2?: number | null;
}

/**
 * What a planned scheme takes to buy, what it weighs, and what it costs in time and money.
 * @param plan of this job, by `planScheme`. @param balances by `hingeBalances`, which lays coats and so takes longer; null to do without.
 * @throws CrosscoatError `limit` for an amount that cannot be counted in tins; `geometry` for a panel that cannot be made.
 */
export function amountsOf(job: Job, plan: PlannedScheme, balances: readonly PanelBalance[] | null, options: AmountsOptions = {}): AmountsAnswer {
  const amounts = schemeAmounts(plan, job.mixes, options.amounts ?? USUAL_AMOUNTS);
  const purchase = purchaseOf(amounts, job.supplies ?? []);
  return {
    plan, amounts, purchase, balances,
    weight: addedWeight(plan, schemePanels(job, plan), options.cloth_kg_m2 ?? null),
    band: publishedBand(plan),
    labour: labourOf(plan),
    doubts: [...purchase.doubts, ...amounts.doubts],
  };
}

/** The panels of a scheme, in its order. @throws CrosscoatError `geometry`. */
export function schemePanels(job: Job, { scheme }: PlannedScheme): Panel[] {
  return scheme.panels.flatMap((id) => {
    const place = job.part.panels.findIndex((panel) => panel.id === id);
    const spec = job.part.panels[place];
    return spec === undefined ? [] : [makePanel(spec, `/part/panels/${place}`).panel];
  });
}
