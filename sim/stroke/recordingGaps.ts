import type { Warning } from '../base/errors.ts';
import { fluidShare } from '../base/trigger.ts';
import type { Path } from './path.ts';

/** Assumed: shorter silences are a slow sensor, not a loss. */
const SHORTEST_GAP_S = 0.25;
const GAP_STEPS = 10;
/** Steps looked at for the usual one; enough for its median to a few per cent, at a fixed cost. */
const SAMPLES = 20_001;
/** Below so few rows no usual step can be told. */
const FEWEST_ROWS = 20;
/** Gaps told of one by one. */
const MOST_TOLD = 20;
/** A recording keeps time: nine steps in ten (5th to 95th percentile) within this ratio. A plan's rows stand at corners and do not. */
const EVEN_RATIO = 3;

/**
 * Finds silences of a sampled recording: steps of more than 0.25 s and 10 usual (median) steps.
 * Where fluid was on, the trigger is taken as off until the next row, since nothing is known of the
 * gun there, and each gives a warning. A file whose rows do not keep time (a written-out plan, with
 * rows only at the corners) has no silences.
 * @returns the path, its trigger changed where there was a gap.
 */
export function closeGaps(path: Path, file: string, rowOf: (index: number) => number): { path: Path; warnings: Warning[] } {
  const usual_s = usualStep_s(path.t_s);
  const warnings: Warning[] = [];
  const trigger = path.trigger.slice();
  let gaps = 0;
  for (let i = 0; i + 1 < path.count; i++) {
    const step_s = (path.t_s[i + 1] as number) - (path.t_s[i] as number);
    if (!(step_s > SHORTEST_GAP_S && step_s > GAP_STEPS * usual_s)) continue;
    if (fluidShare(trigger[i] as number) === 0) continue;
    trigger[i] = 0;
    gaps++;
    if (gaps > MOST_TOLD) continue;
    warnings.push({
      code: 'time-gap',
      text: `${file}: nothing was recorded for ${step_s.toFixed(2)} s after row ${rowOf(i)} with fluid on; the trigger is taken as off there`,
      place: { file, row: rowOf(i) },
    });
  }
  if (gaps > MOST_TOLD) warnings.push({ code: 'time-gap', text: `${file}: ${gaps - MOST_TOLD} more gaps with fluid on`, place: { file } });
  return gaps === 0 ? { path, warnings } : { path: { ...path, trigger }, warnings };
}

/** Median step, or Infinity where the rows do not keep time. */
function usualStep_s(t_s: Float64Array): number {
  const steps = t_s.length - 1;
  if (t_s.length < FEWEST_ROWS) return Infinity;
  const stride = Math.max(1, Math.floor(steps / SAMPLES));
  const sample = new Float64Array(Math.floor(steps / stride));
  for (let i = 0; i < sample.length; i++) sample[i] = (t_s[i * stride + 1] as number) - (t_s[i * stride] as number);
  sample.sort();
  const at = (share: number) => sample[Math.floor(share * (sample.length - 1))] as number;
  return at(0.95) <= EVEN_RATIO * at(0.05) ? at(0.5) : Infinity;
}
