import { emptyDeposit } from '../deposit/emptyDeposit.ts';
import { layPath } from '../deposit/layPath.ts';
import type { LayMethod } from '../deposit/pieces.ts';
import { filmFromDeposit } from '../film/fromDeposit.ts';
import type { CoatSetting, CoatStrokes, LaidCoat } from './result.ts';

/** How far, and by which method, a coat is laid. */
export interface LayOptions {
  /** Time of the path at which to stop, in mid-stroke if need be; the whole path where not given. */
  readonly until_s?: number;
  /** Asked often; true ends the laying with a `cancelled` error. */
  readonly shouldStop?: () => boolean;
  /** Closed form or stamps, for comparisons; `auto` where not given. */
  readonly method?: LayMethod;
}

/** What is laid: a path and which of its rows are strokes. */
export type Travel = Pick<CoatStrokes, 'path' | 'strokes'>;

/** Lays a coat on a bare panel. @throws CrosscoatError `cancelled` when `shouldStop` says so. */
export function layCoat(setting: CoatSetting, travel: Travel, options: LayOptions = {}): LaidCoat {
  const { panelGrid, spray } = setting;
  const { path, strokes } = travel;
  const deposit = emptyDeposit(panelGrid.grid);
  const account = layPath({ deposit, panelGrid, path, strokes, spray, ...chosen(options) });
  const end_s = path.count > 0 ? (path.t_s[path.count - 1] as number) - (path.t_s[0] as number) : 0;
  const until_s = options.until_s === undefined ? end_s : options.until_s - (path.t_s[0] ?? 0);
  return { film: filmFromDeposit(deposit, Math.max(0, Math.min(end_s, until_s))), account };
}

/** Only the options that are given. */
function chosen({ until_s, shouldStop, method }: LayOptions): LayOptions {
  return {
    ...(until_s === undefined ? {} : { until_s }),
    ...(shouldStop === undefined ? {} : { shouldStop }),
    ...(method === undefined ? {} : { method }),
  };
}
