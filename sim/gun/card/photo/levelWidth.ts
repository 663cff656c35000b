/** Shares of the peak at which a profile's width is taken. */
const LEVELS = [0.5, 0.1] as const;
/** Exponents e = β1 - ½ between which the shape is sought: β1 from 1 to 8, as a set-up may have. */
const LEAST_EXPONENT = 0.5;
const MOST_EXPONENT = 7.5;
const HALVINGS = 40;

/** The profile (1-u²)^e that stands for a measured one. */
export interface LevelWidth {
  readonly width_m: number;
  readonly exponent: number;
}

/**
 * The full width of the profile `(1-u²)^e` that is as wide as a measured one at a half and at a tenth of its peak: from
 * `w(level) = width √(1 - level^(1/e))`, whose ratio rises with e. Levels, unlike moments, hardly see what is left of
 * the light's fall-off beside the fan. It is for show and for the depth; `fitFan` fits all of the profile.
 *
 * @param film at even places; a side that does not fall to a level counts to its last place.
 */
export function levelWidth(film: Float64Array, step_m: number): LevelWidth {
  const [half_m, tenth_m] = LEVELS.map((level) => widthAt(film, level) * step_m) as [number, number];
  const ratio = (exponent: number) => relativeWidth(LEVELS[1], exponent) / relativeWidth(LEVELS[0], exponent);
  let [low, high] = [LEAST_EXPONENT, MOST_EXPONENT];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (ratio(middle) < tenth_m / half_m) low = middle;
    else high = middle;
  }
  const exponent = (low + high) / 2;
  return { width_m: half_m / relativeWidth(LEVELS[0], exponent), exponent };
}

function relativeWidth(level: number, exponent: number): number {
  return Math.sqrt(1 - level ** (1 / exponent));
}

/** Between the outermost places where the film crosses a share of its peak, in steps. */
function widthAt(film: Float64Array, level: number): number {
  const least = level * film.reduce((most, value) => Math.max(most, value), 0);
  const last = film.length - 1;
  let [low, high] = [0, last];
  while (low < last && (film[low] as number) < least) low++;
  while (high > 0 && (film[high] as number) < least) high--;
  const crossed = (inside: number, outside: number) => {
    if (outside < 0 || outside > last) return 0;
    const [a, b] = [film[inside] as number, film[outside] as number];
    return (a - least) / (a - b);
  };
  return high - low + crossed(low, low - 1) + crossed(high, high + 1);
}
