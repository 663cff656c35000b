import type { JSX } from 'preact';
import { evenScale, roundEnds } from '../../sim/index.ts';
import { dayDomain, dayPath, drawnStretch, hourTicks, type DayLine, type DayStretch } from './airDayChart.ts';
import { useWidth } from './useWidth.ts';

const HEIGHT = 260;
const LEFT = 44;
const RIGHT = 20;
const TOP = 28;
const BOTTOM = 34;
/** Width of a clock with space around it. */
const CLOCK_px = 64;

export interface AirDayChartProps {
  readonly minutes: readonly number[];
  readonly lines: readonly DayLine[];
  /** Hours that go: shaded and named. */
  readonly goes: readonly DayStretch[];
  readonly unit: string;
  readonly clock: (minute: number) => string;
  /** What the picture shows, in words. */
  readonly label: string;
}

/** The day: air, wet film and dew point through the hours; hours that go are shaded. */
export function AirDayChart({ minutes, lines, goes, unit, clock, label }: AirDayChartProps): JSX.Element {
  const { box, width_px } = useWidth(640, 640);
  const [first, last] = [minutes[0] ?? 0, minutes.at(-1) ?? 1];
  const x = evenScale(last > first ? [first, last] : [first - 30, first + 30], [LEFT, width_px - RIGHT]);
  const y = evenScale(roundEnds(dayDomain(lines), 5), [HEIGHT - BOTTOM, TOP]);
  return (
    <figure class="air-day">
      <figcaption>
        {lines.map(({ name, kind }) => (
          <span key={kind} class="key">
            <svg width={36} height={12} aria-hidden="true"><path class={`air-line ${kind}`} d="M0,6 H36" /></svg> {name}
          </span>
        ))}
        <span class="key"><svg width={36} height={12} aria-hidden="true"><rect class="air-goes" width={36} height={12} /></svg> hours that go</span>
      </figcaption>
      <div ref={box}>
        <svg width={width_px} height={HEIGHT} role="img" aria-label={label}>
          {goes.map((stretch) => {
            const { from_min, to_min } = drawnStretch(stretch, minutes);
            return (
              <g key={from_min}>
                <rect class="air-goes" x={x(from_min)} width={Math.max(2, x(to_min) - x(from_min))} y={TOP} height={HEIGHT - TOP - BOTTOM} />
                <text class="tick-x" x={(x(from_min) + x(to_min)) / 2} y={TOP - 8}>go</text>
              </g>
            );
          })}
          {y.ticks(5).map((tick) => <g key={tick}><path class="air-grid" d={`M${LEFT},${y(tick)} H${width_px - RIGHT}`} /><text class="tick-y" x={LEFT - 8} y={y(tick) + 5}>{tick}</text></g>)}
          <text x={0} y={TOP - 8}>{unit}</text>
          {hourTicks(first, last, width_px - LEFT - RIGHT, CLOCK_px).map((minute) => <text key={minute} class="tick-x" x={x(minute)} y={HEIGHT - 8}>{clock(minute)}</text>)}
          <path class="chart-axis" d={`M${LEFT},${TOP} V${HEIGHT - BOTTOM} H${width_px - RIGHT}`} />
          {lines.map(({ kind, values }) => (
            <g key={kind}>
              <path class={`air-line ${kind}`} d={dayPath(minutes, values, x, y)} />
              {values.length === 1 ? <circle class={`air-dot ${kind}`} cx={x(first)} cy={y(values[0] as number)} r={5} /> : null}
            </g>
          ))}
        </svg>
      </div>
    </figure>
  );
}
