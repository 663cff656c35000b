import { defaultSetUp, type SetUpSpec } from '../../../sim/index.ts';
import { valueAt, type JobPath } from '../../app/path.ts';

/** What the model takes where nobody has measured; one of each kind of gun. */
const USUAL = [defaultSetUp('low-pressure', 'a', ''), defaultSetUp('conventional', 'b', '')];

/** Says of a value that is still the default that it is one; empty for a value of the reader's own. */
export function usualHint(gun: SetUpSpec, path: JobPath): string {
  const value = valueAt(gun, path);
  const isUsual = USUAL.some((each) => valueAt(each, path) === value);
  return isUsual ? 'Default: replace by your own test card.' : '';
}
