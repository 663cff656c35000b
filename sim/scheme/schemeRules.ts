import type { SchemeFinding } from './finding.ts';
import type { PlannedScheme } from './planned.ts';
import { amountFindings } from './rules/amounts.ts';
import { coatOrderFindings } from './rules/coatOrder.ts';
import { colourFindings } from './rules/colours.ts';
import { sandingFindings } from './rules/sanding.ts';
import { waitFindings } from './rules/waits.ts';

/**
 * What the trade's rules say against a scheme, gravest first, then in the order of its steps. The
 * circular's rules for doped fabric are asked where the scheme wants clear coats (`clearCoats` above 0);
 * what cannot be asked at all is said by `NOT_CHECKED` of `sim/report/schemeWords.ts`.
 * @param waitRatio how much longer waits are in the job's air than at 70 °F.
 */
export function schemeFindings(plan: PlannedScheme, waitRatio: number): SchemeFinding[] {
  const found = [...coatOrderFindings(plan), ...waitFindings(plan, waitRatio), ...sandingFindings(plan), ...amountFindings(plan), ...colourFindings(plan)];
  const grave = ({ severity }: SchemeFinding): number => (severity === 'stop' ? 0 : 1);
  return found.sort((a, b) => grave(a) - grave(b) || a.stepIndex - b.stepIndex);
}
