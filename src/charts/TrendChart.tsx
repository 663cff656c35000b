import type { JSX } from 'preact';
import { isInBand, trendDomain, trendPath, type TrendBand, type TrendPoint } from './trendChart.ts';

const WIDTH = 280;
const HEIGHT = 104;
const SIDE = 12;
const TOP = 8;
const BASE = HEIGHT - 8;
/** Half the size of a mark. */
const MARK = 5;

export interface TrendChartProps {
  readonly title: string;
  /** Oldest first. */
  readonly points: readonly TrendPoint[];
  /** Where the criterion is met; null where there is no limit. */
  readonly band: TrendBand | null;
  /** The limit in words, e.g. `limit 12 mm`; empty without one. */
  readonly limit: string;
  readonly format: (value: number) => string;
}

/** A figure from session to session, with the limit as a band: rings lie within it, crosses outside. */
export function TrendChart({ title, points, band, limit, format }: TrendChartProps): JSX.Element {
  const [low, high] = trendDomain(points, band);
  const x = (index: number): number => (points.length < 2 ? WIDTH / 2 : SIDE + (index / (points.length - 1)) * (WIDTH - 2 * SIDE));
  const y = (value: number): number => BASE - ((value - low) / (high - low)) * (BASE - TOP);
  const words = trendWords(points, format);
  return (
    <figure class="trend-chart">
      <figcaption>
        <strong>{title}</strong>
        <span>{words}{limit === '' ? '' : `; ${limit}`}</span>
      </figcaption>
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={`${title}: ${words}${limit === '' ? '' : `; ${limit}`}`}>
        {band === null ? null : <Band band={band} low={low} high={high} y={y} />}
        <path class="chart-axis" d={`M0,${BASE} H${WIDTH}`} />
        <path class="chart-line" d={trendPath(points, x, y)} />
        {points.map(({ label, value }, index) =>
          value === null || !Number.isFinite(value) ? null : (
            <path key={index} class="trend-mark" d={band === null || isInBand(value, band) ? ring(x(index), y(value)) : cross(x(index), y(value))}>
              <title>{`${label}: ${format(value)}`}</title>
            </path>
          ),
        )}
      </svg>
    </figure>
  );
}

function Band({ band, low, high, y }: { readonly band: TrendBand; readonly low: number; readonly high: number; readonly y: (value: number) => number }): JSX.Element {
  const top = y(Math.min(high, band.to));
  const bottom = y(Math.max(low, band.from));
  const limit = Number.isFinite(band.to) ? top : bottom;
  return (
    <>
      <rect class="chart-band" x={0} width={WIDTH} y={top} height={bottom - top} />
      <path class="chart-mean" d={`M0,${limit} H${WIDTH}`} />
    </>
  );
}

/** The first and the last value, so that the picture can be left unseen. */
function trendWords(points: readonly TrendPoint[], format: (value: number) => string): string {
  const values = points.flatMap(({ value }) => (value === null || !Number.isFinite(value) ? [] : [value]));
  const [first, last] = [values[0], values.at(-1)];
  if (first === undefined || last === undefined) return 'nothing measured yet';
  return values.length === 1 ? format(last) : `first ${format(first)}, last ${format(last)}`;
}

function ring(x: number, y: number): string {
  return `M${x - MARK},${y} a${MARK},${MARK} 0 1 0 ${2 * MARK},0 a${MARK},${MARK} 0 1 0 ${-2 * MARK},0 Z`;
}

function cross(x: number, y: number): string {
  return `M${x - MARK},${y - MARK} l${2 * MARK},${2 * MARK} m0,${-2 * MARK} l${-2 * MARK},${2 * MARK}`;
}
