import type { Warning } from '../../base/errors.ts';
import { coatWarnings } from '../../report/reported.ts';
import type { ComparedFigure } from '../../report/reportedComparison.ts';
import { runLife, type LifeOptions } from '../coatLife.ts';
import { judgeCoat } from '../judge.ts';
import { judgeLife } from '../judgeLife.ts';
import { meanPlannedFilm_m } from '../planTrials.ts';
import type { CoatSetting } from '../result.ts';
import { settleCoat } from '../settle.ts';
import type { CompareOptions, WatchedSide } from './comparison.ts';
import { isOutsideRange, type LaidSide } from './laidSide.ts';
import { LAID_NAMES, type LaidName } from './laidValues.ts';
import { lifeFigures, type LifeFigure, type LifeName } from './lifeFigures.ts';

/** A mean film further off its target than this by the limits of the hand is told. Assumed: what a change of plan is worth. */
const OFF_SHARE = 0.03;

/**
 * Side of the cells on which a film is watched, at least, mm. On the demo's planned coat ripple, cold and
 * drying time change by less than 1 % from 4 to 6 mm, and the time that it takes falls to a third.
 */
const WATCH_CELL_MM = 6;

/** How a side is watched: as the comparison, to a fixed end. */
export type WatchOptions = Omit<CompareOptions, 'at_s'> & { readonly at_s: readonly number[]; readonly until_s: number };

/** Watches a side's film, judges it without trying cures, and gathers its figures. @throws CrosscoatError `cancelled`. */
export function watchSide(side: LaidSide, options: WatchOptions): WatchedSide {
  const { setting, strokes, laid, known } = side;
  const stop = options.shouldStop === undefined ? {} : { shouldStop: options.shouldStop };
  const watched = settleCoat(setting.job, setting.coat.id, { cell_mm: Math.max(WATCH_CELL_MM, setting.panelGrid.grid.cellSize_m * 1e3) });
  const life = runLife(watched, strokes, lifeOptions(options));
  const { verdict } = judgeCoat(setting, strokes, laid, { cures: false, ...stop });
  const lifeVerdict = judgeLife(life, strokes, { cures: false, ...stop });
  const coat = { setting, strokes, laid, verdict, life: { verdict: lifeVerdict, moments: [] } };
  const lived = lifeFigures({ figures: lifeVerdict.figures, ladder: side.ladder, limits: setting.target.life, laid: side.values, within: side.within });
  return {
    setUp: { id: setting.setUp.id, name: setting.setUp.name },
    problem: null,
    figures: figuresOf(side, lived, life.sprayed_s),
    faults: [...new Set([...verdict.faults, ...lifeVerdict.faults].map(({ kind }) => kind))],
    assumed: known.known.assumed,
    isOutsideRange: isOutsideRange(setting),
    warnings: [...coatWarnings(coat), ...speedDoubts(setting, options.strokes)],
    setting,
    strokes,
    laid,
    verdict,
    life,
    lifeVerdict,
  };
}

function lifeOptions({ until_s, at_s, recordings, shouldStop }: WatchOptions): LifeOptions {
  return { until_s, at_s, ...(recordings === undefined ? {} : { recordings }), ...(shouldStop === undefined ? {} : { shouldStop }) };
}

/** Every figure, marked where it hangs on a distance that the fan was not measured at; passes alone do not. Speed, time, passes and strokes are as planned, whatever the set-up does. */
function figuresOf({ setting, strokes, values, within }: LaidSide, life: Readonly<Record<LifeName, LifeFigure>>, spraying_s: number): WatchedSide['figures'] {
  const isOutside = isOutsideRange(setting);
  const marked = (figure: LifeFigure): ComparedFigure => ({ ...figure, isOutsideRange: isOutside });
  const planned = (value: number) => marked({ value, within: 0 });
  const laid = LAID_NAMES.map((name) => [name, marked({ value: values[name], within: within[name] })] as const);
  return {
    ...(Object.fromEntries(laid) as Record<LaidName, ComparedFigure>),
    runMarginFraction: marked(life.runMarginFraction),
    holdMarginFraction: marked(life.holdMarginFraction),
    holdMargin_m: marked(life.holdMargin_m),
    peel_m: marked(life.peel_m),
    blushMargin_K: marked(life.blushMargin_K),
    speed_m_s: planned(setting.plan.speed_m_s),
    spraying_s: planned(spraying_s),
    strokes: planned(strokes.strokes.length),
    passes: { ...planned(setting.plan.cross ? 2 : 1), isOutsideRange: false },
  };
}

/** Where no speed that a hand can keep brings the mean film to the target. */
function speedDoubts(setting: CoatSetting, strokes: CompareOptions['strokes']): Warning[] {
  const { plan, target, setUp } = setting;
  const mean_m = meanPlannedFilm_m(setting, plan);
  if (strokes === 'as-stated' || Math.abs(mean_m / target.thickness_m - 1) <= OFF_SHARE) return [];
  const text =
    `${setUp.name}: the speed for the target is not one that a hand keeps; at ${plan.speed_m_s} m/s the mean ${target.film} film is ${(mean_m * 1e6).toFixed(0)} µm ` +
    `against ${(target.thickness_m * 1e6).toFixed(0)} µm. Change the fluid rate or the number of passes`;
  return [{ code: 'model-limit', text, place: {} }];
}
