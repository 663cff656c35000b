import type { Job, SurveySpec } from '../../job/schema.ts';
import type { Estimate, RatioCause, WetComparison } from '../../survey/comparison.ts';
import { predictedAt, type PredictedCoat, type PredictedFilm } from './predictedFilm.ts';

/** What the film of a comb's reading is called in both the survey and the log. */
type Comb = { readonly low_um: number; readonly high_um?: number | undefined; readonly x_mm?: number | undefined; readonly y_mm?: number | undefined };

/**
 * Wet film by comb over the wet film of the plan: combs of the survey against its last coat, combs of the log against the coat of
 * their entry, at their place or else against the mean. Combs whose every tooth was wetted are left out.
 * @returns null without such a comb.
 */
export function wetComparison(job: Job, survey: SurveySpec, predicted: PredictedFilm, dry: Estimate | null): WetComparison | null {
  const bounds = predicted.coats.flatMap((coat, i) => {
    const isLast = i === predicted.coats.length - 1;
    return boundsOf([...logged(job, coat.setting.coat.id), ...(isLast ? survey.readings.filter((reading) => reading.kind === 'comb') : [])], coat, predicted);
  });
  if (bounds.length === 0) return null;
  const [low, high] = [0, 1].map((side) => bounds.reduce((sum, pair) => sum + (pair[side] as number), 0) / bounds.length) as [number, number];
  const ratio = { value: (low + high) / 2, low, high };
  const solids = dry === null || Number.isNaN(dry.low) ? null : { value: dry.value / ratio.value, low: dry.low / high, high: low > 0 ? dry.high / low : Infinity };
  return { count: bounds.length, ratio, solids };
}

function logged(job: Job, coat: string): readonly Comb[] {
  return (job.log ?? []).filter((entry) => entry.coat === coat).flatMap(({ combs }) => combs);
}

function boundsOf(combs: readonly Comb[], coat: PredictedCoat, predicted: PredictedFilm): [number, number][] {
  return combs.flatMap(({ low_um, high_um, x_mm, y_mm }) => {
    if (high_um === undefined) return [];
    const isPlaced = x_mm !== undefined && y_mm !== undefined;
    const wet_m = isPlaced ? predictedAt({ ...predicted, coats: [coat] }, [[x_mm / 1e3, y_mm / 1e3]])[0]?.lastWet_m ?? 0 : coat.wetMean_m;
    return wet_m > 0 ? [[(low_um * 1e-6) / wet_m, (high_um * 1e-6) / wet_m] as [number, number]] : [];
  });
}

/** What explains the ratio: dry film alone cannot tell transfer, flow and solids apart; with combs the wet film tells the first two from the last. */
export function ratioCause(dry: Estimate | null, wet: WetComparison | null): RatioCause {
  const isOff = dry !== null && leavesOut(dry, 1);
  const solids = wet?.solids ?? null;
  if (wet === null || solids === null) return isOff ? 'either' : 'none';
  const [wetOff, solidsOff] = [leavesOut(wet.ratio, 1), leavesOut(solids, 1)];
  if (wetOff && solidsOff) return 'both';
  if (solidsOff) return 'solids';
  if (wetOff) return 'transfer-or-flow';
  return isOff ? 'either' : 'none';
}

function leavesOut({ low, high }: Estimate, value: number): boolean {
  return low > value || high < value;
}
