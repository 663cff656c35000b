import type { JSX } from 'preact';
import { evenScale } from '../../sim/index.ts';
import { pairTicks, type Ends, type PairLine } from './pairChart.ts';
import { useWidth } from './useWidth.ts';

const USUAL = 520;
const HEIGHT = 300;
const LEFT = 64;
const RIGHT = 16;
const TOP = 12;
const BASE = HEIGHT - 52;
const DOT = 4;
const TICKS = 5;

export interface PairChartProps {
  readonly points: readonly (readonly [x: number, y: number])[];
  readonly lines: readonly PairLine[];
  readonly x: Ends;
  readonly y: Ends;
  readonly xTitle: string;
  readonly yTitle: string;
  /** What the picture shows, for those who do not see it. */
  readonly label: string;
}

/** Dots in two measures with straight lines through them; the lines' names stand in a key below. */
export function PairChart({ points, lines, x, y, xTitle, yTitle, label }: PairChartProps): JSX.Element {
  const { box, width_px } = useWidth(USUAL, USUAL);
  const across = evenScale(x, [LEFT, width_px - RIGHT]);
  const up = evenScale(y, [BASE, TOP]);
  return (
    <div ref={box} class="pair-chart">
      <p>{yTitle}</p>
      <svg width={width_px} height={HEIGHT} role="img" aria-label={label}>
        <path class="chart-axis" d={`M${LEFT},${TOP}V${BASE}H${width_px - RIGHT}`} />
        {pairTicks(x, TICKS).map(({ value, text }) => <text key={text} x={across(value)} y={BASE + 20} text-anchor="middle">{text}</text>)}
        {pairTicks(y, TICKS).map(({ value, text }) => <text key={text} x={LEFT - 6} y={up(value) + 5} text-anchor="end">{text}</text>)}
        <text x={(LEFT + width_px - RIGHT) / 2} y={BASE + 44} text-anchor="middle">{xTitle}</text>
        {lines.map(({ name, from, to, dash }) => <path key={name} class="pair-line" stroke-dasharray={dash} d={`M${across(from[0])},${up(from[1])}L${across(to[0])},${up(to[1])}`} />)}
        <path class="pair-dots" d={points.map(([px, py]) => `M${(across(px) - DOT).toFixed(1)},${up(py).toFixed(1)}a${DOT},${DOT} 0 1 0 ${2 * DOT},0a${DOT},${DOT} 0 1 0 ${-2 * DOT},0Z`).join('')} />
      </svg>
      <ul class="pair-key">
        {lines.map(({ name, dash }) => <li key={name}><svg width="40" height="8" aria-hidden="true"><path class="pair-line" stroke-dasharray={dash} d="M0,4H40" /></svg>{name}</li>)}
      </ul>
    </div>
  );
}
