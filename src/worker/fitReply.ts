import { CrosscoatError, fitFan, fitIntervals, fittedFilm, parseReadings, type FitFamily } from '../../sim/index.ts';
import type { FitReply } from './cardMessages.ts';

/** Points of the curve that is drawn. */
const CURVE_POINTS = 201;

/** Readings fitted, and one family drawn: the one asked for, or the best. @throws CrosscoatError for readings that show no fan. */
export function fitReply(text: string, family: FitFamily | null, seed: number): FitReply {
  const readings = parseReadings(text);
  const fits = fitFan(readings);
  const chosen = fits.fits.find((fit) => fit.family === family) ?? fits.fits[0];
  if (chosen === undefined) throw new CrosscoatError('range', `readings: ${readings.film.length} are too few for any family of fans; read more places across the fan`);
  const film = fittedFilm(chosen);
  const { place_m } = readings;
  const [first, last] = [place_m[0] as number, place_m[place_m.length - 1] as number];
  const curvePlace_m = Float64Array.from({ length: CURVE_POINTS }, (_, i) => first + ((last - first) * i) / (CURVE_POINTS - 1));
  return {
    fits,
    chosen,
    intervals: fitIntervals(readings, chosen.family, seed),
    fitted: place_m.map(film),
    curvePlace_m,
    curveFilm: curvePlace_m.map(film),
  };
}
