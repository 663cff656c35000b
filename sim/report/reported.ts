import type { Warning } from '../base/errors.ts';
import type { PaintAccount } from '../deposit/deposit.ts';
import type { Film } from '../film/film.ts';
import type { SetUp } from '../gun/setUp.ts';
import type { CoatSpec } from '../job/schema.ts';
import type { Panel } from '../panel/panel.ts';
import type { PanelGrid } from '../panel/panelGrid.ts';
import type { StrokeMeasures } from '../stroke/stroke.ts';
import type { Target } from '../verdict/target.ts';
import type { Fault, Verdict } from '../verdict/verdict.ts';
import type { ReportedLife } from './lifeReport.ts';

/** What a report reads of a coat that was laid and judged; a run's result of a coat is one. */
export interface ReportedCoat {
  readonly setting: {
    readonly coat: CoatSpec;
    readonly panel: Panel;
    readonly panelGrid: PanelGrid;
    readonly setUp: SetUp;
    readonly target: Target;
    readonly warnings: readonly Warning[];
  };
  readonly strokes: {
    readonly source: 'plan' | 'recording';
    readonly measures: readonly StrokeMeasures[];
    readonly warnings: readonly Warning[];
  };
  readonly laid: { readonly film: Film; readonly account: PaintAccount };
  readonly verdict: Verdict;
  /** Where the film was watched in time. */
  readonly life?: ReportedLife;
}

/** Every fault of a coat, of the film as laid and of its life, each list worst first. */
export function coatFaults({ verdict, life }: ReportedCoat): readonly Fault[] {
  return [...verdict.faults, ...(life?.verdict.faults ?? [])];
}

/** Every doubt about a coat, in the order in which it arose, each text once. */
export function coatWarnings(coat: ReportedCoat): Warning[] {
  const seen = new Set<string>();
  return [...coat.setting.warnings, ...coat.strokes.warnings, ...coat.verdict.warnings, ...(coat.life?.verdict.warnings ?? [])].filter(({ text }) => {
    const isNew = !seen.has(text);
    seen.add(text);
    return isNew;
  });
}

/** Liquid that left the gun and does not lie on the panel, m³. */
export function lostPaint_m3(account: PaintAccount): number {
  return account.fog_m3 + account.missed_m3 + account.flight_m3;
}
