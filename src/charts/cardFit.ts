/** Readings across a fan and the curve fitted to them; places from the same zero, m, film in any one unit. */
export interface FittedCard {
  readonly place_m: ArrayLike<number>;
  readonly film: ArrayLike<number>;
  /** The curve at the readings' places. */
  readonly fitted: ArrayLike<number>;
  /** The curve drawn: places rising, and its film there. */
  readonly curvePlace_m: ArrayLike<number>;
  readonly curveFilm: ArrayLike<number>;
}

/** What the two plots hold: places, film from 0 or from the least reading below it, and residuals both ways alike. */
export interface CardDomains {
  readonly place_m: readonly [number, number];
  readonly film: readonly [number, number];
  readonly residual: number;
}

export function cardDomains({ place_m, film, curvePlace_m, curveFilm, fitted }: FittedCard): CardDomains {
  const places = extent([place_m, curvePlace_m]);
  const films = extent([film, curveFilm]);
  const residuals = extent([cardResiduals({ film, fitted })]);
  const most = Math.max(Math.abs(residuals[0]), Math.abs(residuals[1]));
  return {
    place_m: places[0] < places[1] ? places : [places[0] - 1e-3, places[0] + 1e-3],
    film: [Math.min(0, films[0]), films[1] > 0 ? films[1] : 1],
    // Of a fit without any residual the plot is a line, not a division by 0.
    residual: most > 0 ? most : 1,
  };
}

/** Reading less curve. */
export function cardResiduals({ film, fitted }: Pick<FittedCard, 'film' | 'fitted'>): Float64Array {
  return Float64Array.from(film, (value, i) => value - (fitted[i] as number));
}

/** A line through points, as SVG path data; empty without points. */
export function linePath(places: ArrayLike<number>, films: ArrayLike<number>, x: (place: number) => number, y: (film: number) => number): string {
  const points = Array.from(places, (place, i) => `${x(place).toFixed(1)},${y(films[i] as number).toFixed(1)}`);
  return points.length === 0 ? '' : `M${points.join(' L')}`;
}

function extent(lists: readonly ArrayLike<number>[]): readonly [number, number] {
  let [low, high] = [Infinity, -Infinity];
  for (const list of lists) {
    for (let i = 0; i < list.length; i++) {
      const value = list[i] as number;
      if (value < low) low = value;
      if (value > high) high = value;
    }
  }
  return low <= high ? [low, high] : [0, 1];
}
