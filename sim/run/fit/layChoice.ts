import type { Warning } from '../../base/errors.ts';
import type { PaintAccount } from '../../deposit/deposit.ts';
import type { Job } from '../../job/schema.ts';
import type { FaultKind, FilmFigures } from '../../verdict/verdict.ts';
import type { LifeFigures } from '../../verdict/lifeVerdict.ts';
import { runLife } from '../coatLife.ts';
import { judgeCoat } from '../judge.ts';
import { judgeLife } from '../judgeLife.ts';
import { layCoat } from '../lay.ts';
import type { CoatStrokes } from '../result.ts';
import { settleCoat } from '../settle.ts';
import { FIT_CELL_MM } from './fitKinds.ts';

/** A choice laid on its panel and watched until it has set, edges and holes and all. */
export interface LaidChoice {
  readonly wet: FilmFigures;
  readonly dry: FilmFigures;
  /** Mean film, in the target's kind, over what was wished for. */
  readonly filmRatio: number;
  readonly inTargetFraction: number;
  /** Kinds of fault that were found, the largest area first. */
  readonly faults: readonly { readonly kind: FaultKind; readonly area_m2: number }[];
  readonly account: PaintAccount;
  readonly life: LifeFigures;
  readonly warnings: readonly Warning[];
}

/** Lays a job's coat along some strokes and watches it, on cells of `FIT_CELL_MM`. @throws `cancelled`. */
export function layChoice(job: Job, coatId: string, strokes: CoatStrokes, options: { readonly shouldStop?: () => boolean } = {}): LaidChoice {
  const setting = settleCoat(job, coatId, { cell_mm: FIT_CELL_MM });
  const laid = layCoat(setting, strokes, options);
  const { verdict } = judgeCoat(setting, strokes, laid, { ...options, cures: false });
  const life = judgeLife(runLife(setting, strokes, options), strokes, { ...options, cures: false });
  const areas = new Map<FaultKind, number>();
  for (const { kind, area_m2 } of [...verdict.faults, ...life.faults]) areas.set(kind, (areas.get(kind) ?? 0) + area_m2);
  const { film, thickness_m } = setting.target;
  return {
    wet: verdict.wet,
    dry: verdict.dry,
    filmRatio: verdict[film].mean_m / thickness_m,
    inTargetFraction: verdict.inTargetFraction,
    faults: [...areas].map(([kind, area_m2]) => ({ kind, area_m2 })).sort((a, b) => b.area_m2 - a.area_m2),
    account: laid.account,
    life: life.figures,
    warnings: [...setting.warnings, ...strokes.warnings, ...verdict.warnings, ...life.warnings],
  };
}
