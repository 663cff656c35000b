import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import { evenScale, roundEnds, shownPercent } from '../../sim/index.ts';
import { numberTicks, strokePath, traceDomain, traceFigures, type TracedStroke } from './handTrace.ts';
import { useWidth } from './useWidth.ts';

const HEIGHT = 190;
const LEFT = 52;
const RIGHT = 10;
const TOP = 30;
const BOTTOM = 30;
/** Drawn this wide for paper, half a sheet, so that its text can be read there. */
const PAPER_PX = 520;
/** Room of a stroke's number, and of a time. */
const NUMBER_PX = 26;
const TIME_PX = 90;

export interface HandTraceProps {
  readonly title: string;
  readonly strokes: readonly TracedStroke[];
  /** First and last moment of the session. */
  readonly start_s: number;
  readonly end_s: number;
  /** Unit on the axis: its name, and one of it in SI. */
  readonly unit: { readonly name: string; readonly size: number };
  /** A value with its unit, in a sentence. */
  readonly shown: (value: number) => string;
  /** Whether the axis begins at zero. */
  readonly fromZero: boolean;
  /** Stroke drawn heavy, 0-based. */
  readonly chosen: number | null;
}

/** One quantity of the hand along the session: strokes against what was meant, numbered above, seconds below. */
export function HandTrace(props: HandTraceProps): JSX.Element {
  const { title, strokes, start_s, end_s, unit, fromZero, chosen } = props;
  const { box, width_px } = useWidth(640, PAPER_PX);
  const id = useId();
  const [low, high] = traceDomain(strokes, fromZero);
  const x = evenScale([0, Math.max(1e-3, end_s - start_s)], [LEFT, Math.max(LEFT + 1, width_px - RIGHT)]);
  const y = evenScale(roundEnds([low / unit.size, high / unit.size], 4), [HEIGHT - BOTTOM, TOP]);
  const xOf = (t_s: number): number => x(t_s - start_s);
  const yOf = (value: number): number => y(value / unit.size);
  return (
    <figure class="hand-trace">
      <figcaption>
        <h3>{title}, {unit.name}</h3>
        <p id={id}>{traceSentence(props)}</p>
      </figcaption>
      <div ref={box}>
        <svg width={width_px} height={HEIGHT} viewBox={`0 0 ${width_px} ${HEIGHT}`} role="img" aria-label={`${title} along the session`} aria-describedby={id}>
          {strokes.map((each) => <Band key={each.stroke} traced={each} x={xOf} y={yOf} />)}
          {y.ticks(4).map((tick) => <text key={tick} x={LEFT - 8} y={y(tick)} class="tick-y">{tick}</text>)}
          {x.ticks(Math.max(2, Math.floor(width_px / TIME_PX))).map((tick) => <text key={tick} x={x(tick)} y={HEIGHT - 8} class="tick-x">{tick} s</text>)}
          {numberTicks(strokes, xOf, NUMBER_PX, chosen).map(({ stroke, at_px }) => (
            <text key={stroke} x={at_px} y={TOP - 12} class={stroke === chosen ? 'tick-x chosen' : 'tick-x'}>{stroke + 1}</text>
          ))}
          <path class="chart-axis" d={`M${LEFT},${TOP} V${HEIGHT - BOTTOM} H${width_px - RIGHT}`} />
          {strokes.map((each) => <path key={each.stroke} class={each.stroke === chosen ? 'chart-line chosen' : 'chart-line'} d={strokePath(each, xOf, yOf)} />)}
        </svg>
      </div>
    </figure>
  );
}

interface BandProps {
  readonly traced: TracedStroke;
  readonly x: (t_s: number) => number;
  readonly y: (value: number) => number;
}

/** What was meant of one stroke, shaded, with its middle dashed. */
function Band({ traced, x, y }: BandProps): JSX.Element | null {
  const { t_s, meant, low, high } = traced;
  if (t_s.length === 0 || Number.isNaN(meant)) return null;
  const [left, right] = [x(t_s[0] as number), x(t_s[t_s.length - 1] as number)];
  return (
    <>
      {Number.isNaN(low) ? null : <rect class="chart-band" x={left} width={Math.max(0, right - left)} y={y(high)} height={Math.max(0, y(low) - y(high))} />}
      <path class="chart-mean" d={`M${left},${y(meant)} H${right}`} />
    </>
  );
}

/** The chart in words: mean, extremes with their strokes, and how much of it was as meant. */
function traceSentence({ strokes, shown }: HandTraceProps): string {
  const figures = traceFigures(strokes);
  if (figures === null) return 'Nothing to show: no stroke has it.';
  const { mean, least, most, within } = figures;
  const share = Number.isNaN(within) ? '' : `; within the band for ${shownPercent(within)} of the time`;
  return `${shown(mean)} on average, from ${shown(least.value)} in stroke ${least.stroke + 1} to ${shown(most.value)} in stroke ${most.stroke + 1}${share}.`;
}
