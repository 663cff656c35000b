import type { CardReadings } from './cardReadings.ts';
import type { FanFit, FanFits } from './fanFit.ts';

/** How much lighter a fan is in its middle than beside it. */
export interface MiddleDip {
  /** Share of the lighter shoulder's film that the middle lacks; below 0 where the middle is the heavier. */
  readonly fraction: number;
  /** Whether the readings' own noise could not have made it. */
  readonly isBeyondNoise: boolean;
}

/** The middle, and the shoulder on each side, in half widths from the middle. Assumed: a split fan's ends lie about halfway out. */
const MIDDLE_END = 0.2;
const SHOULDER = { from: 0.3, to: 0.7 };
/** Standard errors that a dip must be past: one chance in a thousand. */
const SURE = 3.1;
/** Assumed: no gauge or scale in order makes a dip of this share, however few the readings. */
const GROSS = 0.2;

/**
 * Compares the film about the middle with that of the lighter shoulder, fog taken off. The noise is judged by how far each reading lies
 * off the line between its neighbours, which a coarsely read curve raises, and by what each family leaves over, which a
 * dip raises: the least of them is the nearest. Middle and width are the flat top's, the family that lies nearest to a split fan.
 */
export function middleDip({ readings, fits }: FanFits): MiddleDip {
  const { place_m, film } = readings;
  const { offset_m, width_m, fog } = fits.find(({ family }) => family === 'flat-top') as FanFit;
  const share = (low: number, high: number) => film.filter((_, i) => {
    const u = (2 * ((place_m[i] as number) - offset_m)) / width_m;
    return u >= low && u <= high;
  });
  const middle = share(-MIDDLE_END, MIDDLE_END);
  const shoulders = [share(-SHOULDER.to, -SHOULDER.from), share(SHOULDER.from, SHOULDER.to)];
  const lighter = shoulders.reduce((least, each) => (mean(each) < mean(least) ? each : least));
  if (middle.length === 0 || shoulders.some(({ length }) => length === 0)) return { fraction: 0, isBeyondNoise: false };
  const lacking = mean(lighter) - mean(middle);
  const leftOver = fits.map(({ rms, freeCount }) => rms * Math.sqrt(film.length / (film.length - freeCount)));
  const error = Math.min(noiseOf(readings), ...leftOver) * Math.sqrt(1 / middle.length + 1 / lighter.length);
  const fraction = lacking / (mean(lighter) - fog);
  return { fraction, isBeyondNoise: lacking > SURE * error || fraction > GROSS };
}

function mean(values: Float64Array): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Standard deviation of one reading about the line through its neighbours, freed of theirs. */
function noiseOf({ place_m, film }: CardReadings): number {
  let [squares, count] = [0, 0];
  for (let i = 1; i + 1 < film.length; i++) {
    const [before, at, after] = [place_m[i - 1] as number, place_m[i] as number, place_m[i + 1] as number];
    if (!(after > before)) continue;
    const share = (at - before) / (after - before);
    const off = (film[i] as number) - (1 - share) * (film[i - 1] as number) - share * (film[i + 1] as number);
    squares += off ** 2 / (1 + (1 - share) ** 2 + share ** 2);
    count++;
  }
  return Math.sqrt(squares / count);
}
