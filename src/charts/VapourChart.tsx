import type { JSX } from 'preact';
import { useWidth } from './useWidth.ts';
import { minuteTicks, vapourPath, vapourPowers } from './vapourChart.ts';

const USUAL = 480;
const HEIGHT = 280;
const LEFT = 64;
const RIGHT = 12;
const TOP = 14;
const BASE = HEIGHT - 48;

export interface VapourChartProps {
  /** Multiples of the limits at the end of every minute. */
  readonly explosive: ArrayLike<number>;
  readonly exposure: ArrayLike<number>;
  readonly minutes: number;
  /** When the last stroke ends, min. */
  readonly layEnd: number;
  readonly label: string;
}

/** How many times its limit the air of a room holds, by the minute, on a scale of powers of ten. */
export function VapourChart({ explosive, exposure, minutes, layEnd, label }: VapourChartProps): JSX.Element {
  const { box, width_px } = useWidth(USUAL, USUAL);
  const [low, high] = vapourPowers([explosive, exposure]);
  const x = (minute: number): number => LEFT + (minute / minutes) * (width_px - LEFT - RIGHT);
  const y = (value: number): number => BASE - ((Math.max(low, Math.log10(Math.max(value, 1e-12))) - low) / (high - low)) * (BASE - TOP);
  const powers = Array.from({ length: high - low + 1 }, (_, k) => low + k);
  return (
    <figure class="vapour-chart">
      <div ref={box}>
        <svg width={width_px} height={HEIGHT} role="img" aria-label={label}>
          <rect class="chart-band" x={LEFT} width={Math.max(0, x(Math.min(layEnd, minutes)) - LEFT)} y={TOP} height={BASE - TOP} />
          <path class="chart-axis" d={`M${LEFT},${TOP} V${BASE} H${width_px - RIGHT}`} />
          <path class="vapour-limit" d={`M${LEFT},${y(1)} H${width_px - RIGHT}`} />
          <path class="chart-mean" d={`M${LEFT},${y(0.25)} H${width_px - RIGHT}`} />
          <path class="chart-line" d={vapourPath(exposure, minutes, x, y)} />
          <path class="chart-line vapour-explosive" d={vapourPath(explosive, minutes, x, y)} />
          <text x={width_px - RIGHT} y={y(1) - 5} text-anchor="end">the limit</text>
          <text x={width_px - RIGHT} y={y(0.25) + 17} text-anchor="end">a quarter of the explosive limit</text>
          {powers.map((power) => <text key={power} x={LEFT - 6} y={y(10 ** power) + 5} text-anchor="end">{powerWords(power)}</text>)}
          {minuteTicks(minutes).map((tick) => <text key={tick} x={x(tick)} y={BASE + 18} text-anchor="middle">{tick}</text>)}
          <text x={(LEFT + width_px) / 2} y={HEIGHT - 8} text-anchor="middle">minutes from the first stroke</text>
        </svg>
      </div>
      <figcaption>
        <span><svg class="vapour-key" aria-hidden="true" viewBox="0 0 36 8"><path class="chart-line" d="M0,4 H36" /></svg> times the exposure limits</span>
        <span><svg class="vapour-key" aria-hidden="true" viewBox="0 0 36 8"><path class="chart-line vapour-explosive" d="M0,4 H36" /></svg> times the lower explosive limit</span>
        <span>Shaded: laying the coat. Each step of the scale is ten times the one below.</span>
      </figcaption>
    </figure>
  );
}

function powerWords(power: number): string {
  return power >= 0 ? `${10 ** power} ×` : `${(10 ** power).toFixed(-power)} ×`;
}
