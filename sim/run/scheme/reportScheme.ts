import type { ReportedScheme } from '../../report/reportedScheme.ts';
import { schemeLight } from '../../scheme/aluminiumLight.ts';
import { hidingRows } from '../../scheme/hidingRows.ts';
import type { PlannedScheme } from '../../scheme/planned.ts';
import { isDopedFabric } from '../../scheme/rules/coatsOf.ts';
import { CLOTH_GRADES, strengthFloor } from '../../scheme/strength.ts';
import { checkScheme } from './checkScheme.ts';

/** Everything that a report says of a scheme, from the scheme worked out. */
export function reportScheme(plan: PlannedScheme): ReportedScheme {
  return {
    plan,
    findings: checkScheme(plan),
    hiding: hidingRows(plan),
    light: schemeLight(plan),
    strength: isDopedFabric(plan) ? CLOTH_GRADES.map(({ name, new_N_m, source }) => ({ name, new_N_m, source, floor_N_m: strengthFloor(new_N_m) })) : [],
  };
}
