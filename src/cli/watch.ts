import { CrosscoatError } from '../../sim/index.ts';
import { quantityOf } from './optionValues.ts';

/** How long a film is watched, and when it is looked at, s on the film's clock. */
export interface Watch {
  readonly until_s: number;
  readonly at_s: readonly number[];
}

/** Longest watch, s: a week. */
const LONGEST_S = 7 * 24 * 3600;
const MOST_TIMES = 100;

/**
 * `--until 10min` and `--at 30s,2min,10min`; null where neither is given. With times alone the film is
 * watched to the last of them.
 * @throws CrosscoatError `unit` or `range` for a time that is none, is negative, or lies past the end.
 */
export function parseWatch({ until, at }: { readonly until?: string; readonly at?: string }): Watch | null {
  if (until === undefined && at === undefined) return null;
  const texts = at === undefined ? [] : at.split(',');
  if (texts.length > MOST_TIMES) throw new CrosscoatError('limit', `--at has ${texts.length} times, more than ${MOST_TIMES}; give fewer`);
  const at_s = texts.map((text) => timeOf('--at', text)).sort((a, b) => a - b);
  const last_s = at_s[at_s.length - 1] ?? 0;
  const until_s = until === undefined ? last_s : timeOf('--until', until);
  if (last_s > until_s) throw new CrosscoatError('range', `--at = ${last_s} s lies after --until = ${until_s} s (the film is not watched so long); give a longer --until or an earlier time`);
  return { until_s, at_s };
}

function timeOf(option: string, text: string): number {
  const time_s = quantityOf(option, text, ['time', 's', '30s, 10min or 1h']);
  if (time_s >= 0 && time_s <= LONGEST_S) return time_s;
  throw new CrosscoatError('range', `${option} = "${text.trim()}" is not from 0 s to 7 days (168 h), counted from the first row of the path; give a time between`);
}
