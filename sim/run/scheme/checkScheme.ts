import { ruleDryingRatio } from '../../air/dryingFactor.ts';
import type { SchemeFinding } from '../../scheme/finding.ts';
import type { PlannedScheme } from '../../scheme/planned.ts';
import { schemeFindings } from '../../scheme/schemeRules.ts';

/** What the trade's rules say against a scheme in the air it is planned in, gravest first. */
export function checkScheme(plan: PlannedScheme): SchemeFinding[] {
  return schemeFindings(plan, ruleDryingRatio(plan.air.temperature_K));
}
