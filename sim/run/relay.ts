import type { Deposit } from '../deposit/deposit.ts';
import { emptyDeposit } from '../deposit/emptyDeposit.ts';
import { layPath } from '../deposit/layPath.ts';
import type { Film } from '../film/film.ts';
import type { Stroke } from '../stroke/stroke.ts';
import { stopIfAsked } from './stop.ts';
import { layCoat, type LayOptions, type Travel } from './lay.ts';
import type { CoatSetting } from './result.ts';
import { strokeAlone } from './strokeAlone.ts';

/**
 * The film of a travel that differs from the one laid in some strokes only.
 *
 * Film adds up, so the strokes as they were are taken off and as they are now put on: the cost is
 * that of the changed strokes, not of the coat. Where half of them or more changed, the coat is laid
 * whole. Agrees with a whole coat to the rounding of single precision (about 1e-6 of the film);
 * `passes` stay those of `film`.
 * @param changed stroke indices, the same in both travels.
 */
export function relayStrokes(
  setting: CoatSetting,
  film: Film,
  before: Travel,
  after: Travel,
  changed: readonly number[],
  options: Pick<LayOptions, 'shouldStop'>,
): Film {
  if (2 * changed.length >= before.strokes.length) return layCoat(setting, after, options).film;
  const off = layAlone(setting, before, changed, options);
  const on = layAlone(setting, after, changed, options);
  return {
    ...film,
    wet_m: exchanged(film.wet_m, off.wet_m, on.wet_m),
    dry_m: exchanged(film.dry_m, off.solids_m, on.solids_m),
    arrivedDry_m: exchanged(film.arrivedDry_m, off.arrivedDry_m, on.arrivedDry_m),
  };
}

/** The film with some further strokes laid on it; `passes` stay those of `film`. */
export function addStrokes(setting: CoatSetting, film: Film, further: Travel, options: Pick<LayOptions, 'shouldStop'>): Film {
  const on = emptyDeposit(setting.panelGrid.grid);
  layEach(setting, on, further, further.strokes, options);
  const none = new Float32Array(film.wet_m.length);
  return {
    ...film,
    wet_m: exchanged(film.wet_m, none, on.wet_m),
    dry_m: exchanged(film.dry_m, none, on.solids_m),
    arrivedDry_m: exchanged(film.arrivedDry_m, none, on.arrivedDry_m),
  };
}

function layAlone(setting: CoatSetting, travel: Travel, chosen: readonly number[], options: Pick<LayOptions, 'shouldStop'>): Deposit {
  const deposit = emptyDeposit(setting.panelGrid.grid);
  const strokes = chosen.map((index) => travel.strokes[index]).filter((stroke): stroke is Stroke => stroke !== undefined);
  layEach(setting, deposit, travel, strokes, options);
  return deposit;
}

function layEach({ panelGrid, spray }: CoatSetting, deposit: Deposit, { path }: Travel, strokes: readonly Stroke[], options: Pick<LayOptions, 'shouldStop'>): void {
  for (const stroke of strokes) {
    stopIfAsked(options.shouldStop);
    layPath({ deposit, panelGrid, spray, ...strokeAlone(path, stroke, spray.triggerLag_s) });
  }
}

/** `film - off + on`, never below zero. */
function exchanged(film: Float32Array, off: Float32Array, on: Float32Array): Float32Array {
  const out = new Float32Array(film.length);
  for (let cell = 0; cell < out.length; cell++) {
    out[cell] = Math.max(0, (film[cell] as number) - (off[cell] as number) + (on[cell] as number));
  }
  return out;
}
