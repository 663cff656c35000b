import type { JSX } from 'preact';
import { overlapPath, overlapTop, type OverlapPoint } from './overlapCurve.ts';
import { useWidth } from './useWidth.ts';

const USUAL = 480;
const PAPER = 480;
const HEIGHT = 220;
const LEFT = 52;
const RIGHT = 12;
const TOP = 12;
const BASE = HEIGHT - 44;
const MOST = 0.8;
const TICKS = [0, 0.2, 0.4, 0.6, 0.8];
const RISES = 4;

export interface OverlapCurveProps {
  readonly curve: readonly OverlapPoint[];
  /** Most variation, where that is the limit. */
  readonly limit: number | null;
  /** Overlaps within the limit. */
  readonly band: { readonly low: number; readonly high: number } | null;
  /** Overlaps worth a mark of their own: in words, and where. */
  readonly marks: readonly { readonly words: string; readonly at: OverlapPoint }[];
  readonly label: string;
}

/** How much the film of many strokes varies, against their overlap. */
export function OverlapCurve({ curve, limit, band, marks, label }: OverlapCurveProps): JSX.Element {
  const { box, width_px } = useWidth(USUAL, PAPER);
  const top = overlapTop(curve, limit ?? 0);
  const x = (overlap: number): number => LEFT + (overlap / MOST) * (width_px - LEFT - RIGHT);
  const y = (cv: number): number => BASE - (Math.min(cv, top) / top) * (BASE - TOP);
  const rises = Array.from({ length: RISES + 1 }, (_, i) => (top * i) / RISES);
  return (
    <div ref={box} class="overlap-curve">
      <svg width={width_px} height={HEIGHT} role="img" aria-label={label}>
        {band === null ? null : <rect class="chart-band" x={x(band.low)} width={x(band.high) - x(band.low)} y={TOP} height={BASE - TOP} />}
        <path class="chart-axis" d={`M${LEFT},${TOP} V${BASE} H${width_px - RIGHT}`} />
        {limit === null ? null : <path class="chart-mean" d={`M${LEFT},${y(limit)} H${width_px - RIGHT}`} />}
        <path class="chart-line" d={overlapPath(curve, x, y)} />
        {TICKS.map((tick) => <text key={tick} x={x(tick)} y={BASE + 18} text-anchor="middle">{Math.round(tick * 100)}</text>)}
        {rises.map((tick) => <text key={tick} x={LEFT - 6} y={y(tick) + 5} text-anchor="end">{Number((tick * 100).toFixed(1))}</text>)}
        <text x={(LEFT + width_px) / 2} y={HEIGHT - 6} text-anchor="middle">overlap, %; upward the variation, %</text>
        {marks.map(({ words, at }) => (
          <path key={words} class="overlap-mark" d={`M${x(at.overlapFraction)},${y(at.cv)} m-5,0 a5,5 0 1 0 10,0 a5,5 0 1 0 -10,0`}>
            <title>{words}</title>
          </path>
        ))}
      </svg>
    </div>
  );
}
