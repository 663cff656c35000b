import { FOG, type FitModel } from './fitModel.ts';
import { quantile } from '../../base/quantile.ts';

/** Assumed: bare card is looked for among this share of the readings, the lowest; with a fan read to its very edges it is little. */
const LOWEST_SHARE = 0.1;
/** Widths that a fit starts from, over that which the readings' spread gives: fog left in makes that too wide. */
const WIDTHS = [0.75, 1, 1.3];

/**
 * Where a fit may start: middle and width by the readings' mass about its mean (trapezoidal weights, less the lowest
 * tenth taken as fog), for every width and shape that is tried.
 * @returns full sets of numbers, within the model's limits.
 */
export function fitStarts(model: FitModel): number[][] {
  const { x, y, form, free, low, high } = model;
  const fog = free.includes(FOG) ? quantile(y.slice().sort(), LOWEST_SHARE) : 0;
  const { centre, deviation } = momentsOf(x, y, fog);
  const peak = 1 - fog;
  return (form.shape?.starts ?? [null]).flatMap((shape) =>
    WIDTHS.map((width) => {
      const logHalf = Math.log((width * deviation) / form.spread(shape ?? 0));
      const start = [peak, centre, logHalf, fog, 0, ...(shape === null ? [] : [shape])];
      return start.map((value, i) => Math.min(high[i] as number, Math.max(low[i] as number, value)));
    }),
  );
}

function momentsOf(x: Float64Array, y: Float64Array, fog: number): { readonly centre: number; readonly deviation: number } {
  const last = x.length - 1;
  let [mass, first, second] = [0, 0, 0];
  for (let i = 0; i <= last; i++) {
    const place = x[i] as number;
    const apart = (x[Math.min(last, i + 1)] as number) - (x[Math.max(0, i - 1)] as number);
    const share = Math.max(0, (y[i] as number) - fog) * apart;
    mass += share;
    first += share * place;
    second += share * place * place;
  }
  if (!(mass > 0)) return { centre: 0, deviation: 0.4 };
  const centre = first / mass;
  return { centre, deviation: Math.sqrt(Math.max(1e-4, second / mass - centre * centre)) };
}
