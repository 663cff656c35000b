import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import { evenScale } from '../../sim/index.ts';
import { binned, isDrawn, plotDomain, type PlottedLimit, type PlottedReading } from './readingsPlot.ts';
import { useWidth } from './useWidth.ts';

/** Height of what is drawn above the axis: enough for the tallest column of dots, within these. */
const LEAST_PLOT = 90;
const MOST_PLOT = 180;
const LEFT = 12;
const RIGHT = 12;
const TOP = 32;
const BOTTOM = 34;
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
  const counts = binned(single, domain, Math.max(8, Math.floor((width_px - LEFT - RIGHT) / (2 * DOT_PX + 1))));
  const highest = counts.reduce((most, count) => Math.max(most, count), 0);
  const plot = Math.min(MOST_PLOT, Math.max(LEAST_PLOT, 2 * DOT_PX * highest, BAR_STEP_PX * (Math.min(MOST_BARS, combs.length) + 2)));
  const [base, height] = [TOP + plot, TOP + plot + BOTTOM];
  return (
    <figure class="readings-plot">
      <figcaption id={id}>{title}</figcaption>
      <div ref={box}>
        <svg width={width_px} height={height} viewBox={`0 0 ${width_px} ${height}`} role="img" aria-labelledby={id}>
          <path class="chart-axis" d={`M${LEFT},${base}H${width_px - RIGHT}`} />
          {x.ticks(ticks).map((tick) => <g key={tick}><path class="chart-axis" d={`M${x(tick)},${base}v5`} /><text x={x(tick)} y={base + 26} class="tick-x">{text(tick)}</text></g>)}
          <path class="readings-plot-limits" d={drawn.map(({ value }) => `M${xOf(value).toFixed(1)},${TOP - 6}V${base}`).join('')} />
          {drawn.map(({ value, letter }) => <text key={letter} x={xOf(value)} y={TOP - 12} class="tick-x readings-plot-letter">{letter}</text>)}
          <path class="readings-plot-dots" d={dotsOrColumns(counts, domain, xOf, base, plot)} />
          <path class="readings-plot-bars" d={bars(combs, xOf, base, width_px)} />
        </svg>
      </div>
      <ul class="readings-plot-key">
        {limits.map((limit) => <li key={limit.letter}><strong>{limit.letter}</strong> {limit.words}{isDrawn(limit, domain) ? '' : ' (beyond the edge of the drawing)'}</li>)}
        <li>{`Film in ${unit.name}, dry.`}{combs.length > MOST_BARS ? ` Of ${combs.length} comb readings the first ${MOST_BARS} are drawn.` : ''}</li>
      </ul>
    </figure>
  );
}

/** A dot for each value of a bin; a column where the dots of the fullest bin would not fit. */
function dotsOrColumns(counts: readonly number[], [low, high]: readonly [number, number], x: (value: number) => number, base: number, plot: number): string {
  const middle = (bin: number): number => x(low + ((bin + 0.5) / counts.length) * (high - low));
  const highest = counts.reduce((most, count) => Math.max(most, count), 0);
  const half = DOT_PX - 0.5;
  if (highest * 2 * DOT_PX <= plot) {
    return counts.map((count, bin) => Array.from({ length: count }, (_, k) => `M${(middle(bin) - half).toFixed(1)},${base - DOT_PX - 2 * DOT_PX * k}a${half},${half} 0 1 0 ${2 * half},0a${half},${half} 0 1 0 ${-2 * half},0Z`).join('')).join('');
  }
  const tall = plot / highest;
  return counts.map((count, bin) => (count === 0 ? '' : `M${(middle(bin) - half).toFixed(1)},${base}v${(-count * tall).toFixed(1)}h${2 * half}V${base}Z`)).join('');
}

/** From the lower film to the upper; an open end where every tooth was wetted. */
function bars(combs: readonly PlottedReading[], x: (value: number) => number, base: number, width_px: number): string {
  return combs.slice(0, MOST_BARS).map(([low, high], k) => {
    const y = base - 10 - k * BAR_STEP_PX;
    const from = x(low).toFixed(1);
    return Number.isFinite(high) ? `M${from},${y - 4}v8M${from},${y}H${x(high).toFixed(1)}m0,-4v8` : `M${from},${y - 4}v8M${from},${y}H${width_px - RIGHT}l-6,-4m6,4l-6,4`;
  }).join('');
}
