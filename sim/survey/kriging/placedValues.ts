/** Values at places, no two places the same; arrays of one length, at least 1. */
export interface PlacedValues {
  readonly x_m: Float64Array;
  readonly y_m: Float64Array;
  readonly value_m: Float64Array;
  /** Standard deviation of the gauge's own noise in each value, m; 0 for an exact one. */
  readonly noise_m: Float64Array;
}

/** One value before those at the same place are put together. */
export interface PlacedValue {
  readonly at_m: readonly [number, number];
  readonly value_m: number;
  readonly noise_m: number;
}

/** Places nearer than this are one, m. */
const SAME_PLACE_M = 1e-6;

/**
 * Puts values at the same place together: their mean, weighted by 1/noise², says all that they say of that place (exact
 * ones: their plain mean).
 */
export function placedValues(values: readonly PlacedValue[]): PlacedValues {
  const groups = new Map<string, PlacedValue[]>();
  for (const value of values) {
    const key = value.at_m.map((coordinate) => Math.round(coordinate / SAME_PLACE_M)).join();
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [value]);
    else group.push(value);
  }
  const together = [...groups.values()].map(pooled);
  return {
    x_m: Float64Array.from(together, ({ at_m }) => at_m[0]),
    y_m: Float64Array.from(together, ({ at_m }) => at_m[1]),
    value_m: Float64Array.from(together, ({ value_m }) => value_m),
    noise_m: Float64Array.from(together, ({ noise_m }) => noise_m),
  };
}

function pooled(group: readonly PlacedValue[]): PlacedValue {
  const first = group[0] as PlacedValue;
  if (group.length === 1) return first;
  const exact = group.filter(({ noise_m }) => noise_m === 0);
  const weighed = exact.length > 0 ? exact.map((value) => ({ value, weight: 1 })) : group.map((value) => ({ value, weight: 1 / value.noise_m ** 2 }));
  const whole = weighed.reduce((sum, { weight }) => sum + weight, 0);
  return {
    at_m: first.at_m,
    value_m: weighed.reduce((sum, { value, weight }) => sum + weight * value.value_m, 0) / whole,
    noise_m: exact.length > 0 ? 0 : Math.sqrt(1 / whole),
  };
}

/** At most so many of the values, every so-manieth in their order. */
export function thinned(values: PlacedValues, most: number): PlacedValues {
  const count = values.value_m.length;
  if (count <= most) return values;
  return picked(values, Array.from({ length: most }, (_, i) => Math.floor(((i + 0.5) * count) / most)));
}

/** The values at some indices. */
export function picked({ x_m, y_m, value_m, noise_m }: PlacedValues, indices: readonly number[]): PlacedValues {
  const of = (array: Float64Array) => Float64Array.from(indices, (i) => array[i] as number);
  return { x_m: of(x_m), y_m: of(y_m), value_m: of(value_m), noise_m: of(noise_m) };
}
