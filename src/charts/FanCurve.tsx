import type { JSX } from 'preact';

const WIDTH = 300;
const HEIGHT = 84;
const POINTS = 121;
const BASE = HEIGHT - 6;
const TOP = 8;

export interface CurveProps {
  /** Film across the fan, any unit, at u from -1 to 1 of the half support. */
  readonly across: (u: number) => number;
  readonly label: string;
}

/** The film of one stroke, from edge to edge of the fan. */
export function FanCurve({ across, label }: CurveProps): JSX.Element {
  const values = sampled((share) => across(2 * share - 1));
  return <Curve values={values} most={Math.max(...values)} label={label} />;
}

/** The film of many parallel strokes, over three pitches. */
export function RippleCurve({ across, label, pitch }: CurveProps & { readonly pitch: number }): JSX.Element {
  const reach = Math.ceil(1 / pitch) + 1;
  const values = sampled((share) => {
    let film = 0;
    for (let k = -reach; k <= reach + 3; k++) film += across(share * 3 * pitch - k * pitch);
    return film;
  });
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return <Curve values={values} most={Math.max(...values)} label={label} mean={mean} />;
}

function sampled(film: (share: number) => number): number[] {
  return Array.from({ length: POINTS }, (_, i) => film(i / (POINTS - 1)));
}

interface DrawnCurve {
  readonly values: readonly number[];
  readonly most: number;
  readonly label: string;
  readonly mean?: number;
}

function Curve({ values, most, label, mean }: DrawnCurve): JSX.Element {
  const y = (value: number): number => BASE - (value / (most || 1)) * (BASE - TOP);
  const line = values.map((value, i) => `${((i / (POINTS - 1)) * WIDTH).toFixed(1)},${y(value).toFixed(1)}`).join(' L');
  return (
    <svg class="fan-curve" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={label} preserveAspectRatio="none">
      <path class="chart-fill" d={`M0,${BASE} L${line} L${WIDTH},${BASE} Z`} />
      <path class="chart-line" d={`M${line}`} />
      {mean === undefined ? null : <path class="chart-mean" d={`M0,${y(mean)} H${WIDTH}`} />}
      <path class="chart-axis" d={`M0,${BASE} H${WIDTH}`} />
    </svg>
  );
}
