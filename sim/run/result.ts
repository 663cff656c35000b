import type { Warning } from '../base/errors.ts';
import type { PaintAccount } from '../deposit/deposit.ts';
import type { Film } from '../film/film.ts';
import type { BackingWord, CoatSpec, Job } from '../job/schema.ts';
import type { MoistAir } from '../air/moistAir.ts';
import type { Mix } from '../mix/mix.ts';
import type { Panel } from '../panel/panel.ts';
import type { PanelGrid } from '../panel/panelGrid.ts';
import type { Spray } from '../gun/spray.ts';
import type { SetUp } from '../gun/setUp.ts';
import type { Path } from '../stroke/path.ts';
import type { StrokePlan } from '../stroke/plan.ts';
import type { Stroke, StrokeMeasures } from '../stroke/stroke.ts';
import type { Target } from '../verdict/target.ts';
import type { Verdict } from '../verdict/verdict.ts';

/** What the later stages of one coat work from: the job's words turned into records, SI. */
export interface CoatSetting {
  readonly job: Job;
  readonly coat: CoatSpec;
  readonly panel: Panel;
  readonly panelGrid: PanelGrid;
  /** What is in the cup: the coat's mix, or a generic one with the set-up's solids. */
  readonly mix: Mix;
  readonly air: MoistAir;
  readonly backing: BackingWord;
  /** As set today: with a mix, its solids, its solvents and the drops that its viscosity makes. */
  readonly setUp: SetUp;
  readonly spray: Spray;
  readonly plan: StrokePlan;
  readonly target: Target;
  readonly warnings: readonly Warning[];
}

/** The gun's travel for one coat. */
export interface CoatStrokes {
  readonly source: 'plan' | 'recording';
  readonly path: Path;
  readonly strokes: readonly Stroke[];
  readonly measures: readonly StrokeMeasures[];
  readonly warnings: readonly Warning[];
}

/** A coat laid: its film and where the liquid went. */
export interface LaidCoat {
  readonly film: Film;
  readonly account: PaintAccount;
}

/** A coat laid and judged. */
export interface CoatResult {
  readonly setting: CoatSetting;
  readonly strokes: CoatStrokes;
  readonly laid: LaidCoat;
  readonly verdict: Verdict;
}
