import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import { evenScale } from '../../sim/index.ts';
import { binned, isDrawn, plotDomain, type PlottedLimit, type PlottedReading } from './readingsPlot.ts';
import { useWidth } from './useWidth.ts';

const HEIGHT = 240;
const LEFT = 12;
const RIGHT = 12;
const TOP = 32;
const BASE = HEIGHT - 34;
const DOT_PX = 5;
const TICK_PX = 80;
/** Combs are drawn as bars over each other; more than this many could not be told apart. */
const MOST_BARS = 24;
const BAR_STEP_PX = 7;

export interface ReadingsPlotProps {
  readonly readings: readonly PlottedReading[];
  readonly limits: readonly PlottedLimit[];
  /** Unit of the film: its name, and one of it in the readings' own. */
  readonly unit: { readonly name: string; readonly size: number };
  readonly title: string;
}

/** Readings against the limits: a dot each, or columns where dots would not fit; a comb's reading is a bar between its two films. */
export function ReadingsPlot({ readings, limits, unit, title }: ReadingsPlotProps): JSX.Element {
  const { box, width_px } = useWidth(640, 620);
  const id = useId();
  const domain = plotDomain(readings, limits);
  const x = evenScale([domain[0] / unit.size, domain[1] / unit.size], [LEFT, width_px - RIGHT]);
  const xOf = (value: number): number => x(value / unit.size);
  const single = readings.filter(([low, high]) => low === high).map(([low]) => low);
  const combs = readings.filter(([low, high]) => low !== high);
  const ticks = Math.max(2, Math.floor(width_px / TICK_PX));
  const text = x.tickText(ticks);
  const drawn = limits.filter((limit) => isDrawn(limit, domain));
  return (
    <figure class="readings-plot">
      <figcaption id={id}>{title}</figcaption>
      <div ref={box}>
        <svg width={width_px} height={HEIGHT} viewBox={`0 0 ${width_px} ${HEIGHT}`} role="img" aria-labelledby={id}>
          <path class="chart-axis" d={`M${LEFT},${BASE}H${width_px - RIGHT}`} />
          {x.ticks(ticks).map((tick) => <g key={tick}><path class="chart-axis" d={`M${x(tick)},${BASE}v5`} /><text x={x(tick)} y={BASE + 26} class="tick-x">{text(tick)}</text></g>)}
          <path class="readings-plot-limits" d={drawn.map(({ value }) => `M${xOf(value).toFixed(1)},${TOP - 6}V${BASE}`).join('')} />
          {drawn.map(({ value, letter }) => <text key={letter} x={xOf(value)} y={TOP - 12} class="tick-x readings-plot-letter">{letter}</text>)}
          <path class="readings-plot-dots" d={dotsOrColumns(single, domain, xOf, width_px)} />
          <path class="readings-plot-bars" d={bars(combs, xOf, width_px)} />
        </svg>
      </div>
      <ul class="readings-plot-key">
        {limits.map((limit) => <li key={limit.letter}><strong>{limit.letter}</strong> {limit.words}{isDrawn(limit, domain) ? '' : ' (beyond the edge of the drawing)'}</li>)}
        <li>{`Film in ${unit.name}, dry.`}{combs.length > MOST_BARS ? ` Of ${combs.length} comb readings the first ${MOST_BARS} are drawn.` : ''}</li>
      </ul>
    </figure>
  );
}

function dotsOrColumns(values: readonly number[], domain: readonly [number, number], x: (value: number) => number, width_px: number): string {
  const bins = Math.max(8, Math.floor((width_px - LEFT - RIGHT) / (2 * DOT_PX + 1)));
  const counts = binned(values, domain, bins);
  const middle = (bin: number): number => x(domain[0] + ((bin + 0.5) / bins) * (domain[1] - domain[0]));
  const highest = counts.reduce((most, count) => Math.max(most, count), 0);
  const half = DOT_PX - 0.5;
  if (highest * 2 * DOT_PX <= BASE - TOP) {
    return counts.map((count, bin) => Array.from({ length: count }, (_, k) => `M${(middle(bin) - half).toFixed(1)},${BASE - DOT_PX - 2 * DOT_PX * k}a${half},${half} 0 1 0 ${2 * half},0a${half},${half} 0 1 0 ${-2 * half},0Z`).join('')).join('');
  }
  const tall = (BASE - TOP) / highest;
  return counts.map((count, bin) => (count === 0 ? '' : `M${(middle(bin) - half).toFixed(1)},${BASE}v${(-count * tall).toFixed(1)}h${2 * half}V${BASE}Z`)).join('');
}

/** From the lower film to the upper; an open end where every tooth was wetted. */
function bars(combs: readonly PlottedReading[], x: (value: number) => number, width_px: number): string {
  return combs.slice(0, MOST_BARS).map(([low, high], k) => {
    const y = BASE - 10 - k * BAR_STEP_PX;
    const from = x(low).toFixed(1);
    return Number.isFinite(high) ? `M${from},${y - 4}v8M${from},${y}H${x(high).toFixed(1)}m0,-4v8` : `M${from},${y - 4}v8M${from},${y}H${width_px - RIGHT}l-6,-4m6,4l-6,4`;
  }).join('');
}
