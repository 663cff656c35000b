import { signal } from '@preact/signals';
import type { ComponentChildren, JSX } from 'preact';
import { evenScale, roundEnds, shown, shownNumber, shownUnit, type Target, type UnitSystem } from '../../sim/index.ts';
import { tracePath, type Trace } from './sectionTrace.ts';

const HEIGHT = 208;
const LEFT = 52;
const RIGHT = 12;
const TOP = 10;
const BOTTOM = 52;

/** Width of the drawing area, followed so that text stays its size. */
const width = signal(720);
/** The sample read out, by pointer or keys. */
const cursor = signal<number | null>(null);

export interface SectionTraceProps {
  readonly trace: Trace;
  readonly target: Target;
  readonly system: UnitSystem;
  /** Film that the scale holds at least, so that it stands still while film dries, m. */
  readonly held_m?: number;
  /** Shown below the chart: where the line may be put. */
  readonly children: ComponentChildren;
}

/** Film along the section line against the target band, wet and dry. */
export function SectionTrace({ trace: now, target, system, held_m = 0, children }: SectionTraceProps): JSX.Element {
  const [film, length] = [shownUnit('film', system), shownUnit('length', system)];
  const most_m = Math.max(target.thickness_m * target.maxFraction * 1.15, held_m, largest(now.wet_m));
  const x = evenScale([0, now.length_m / length.size], [LEFT, width.value - RIGHT]);
  const y = evenScale(roundEnds([0, most_m / film.size], 4), [HEIGHT - BOTTOM, TOP]);
  const yOf = (value_m: number): number => y(value_m / film.size);
  const xOf = (sample: number): number => x((sample * now.step_m) / length.size);
  const last = now.wet_m.length - 1;
  const at = cursor.value === null ? null : Math.min(cursor.value, last);
  return (
    <figure class="section-trace">
      <figcaption>
        <h2>Section</h2>
        <span class="key"><span class="key-line wet" /> wet</span>
        <span class="key"><span class="key-line dry" /> dry</span>
        <span class="key"><span class="key-band" /> {target.film} target band</span>
        <output class="readout" data-testid="section-readout">{at === null ? '' : readout(at)}</output>
      </figcaption>
      <div ref={followWidth}>
        <svg
          width={width.value}
          height={HEIGHT}
          tabIndex={0}
          role="slider"
          aria-label="Film along the section line"
          aria-valuemin={0}
          aria-valuemax={last}
          aria-valuenow={at ?? 0}
          aria-valuetext={readout(at ?? 0)}
          data-testid="section"
          onPointerMove={(event) => (cursor.value = sampleAt(event.offsetX))}
          onPointerLeave={() => (cursor.value = null)}
          onBlur={() => (cursor.value = null)}
          onKeyDown={(event) => {
            const next = stepped(event.key, at ?? 0, last);
            if (next === null) return;
            event.preventDefault();
            cursor.value = next;
          }}
        >
          <rect class="chart-band" x={LEFT} width={width.value - LEFT - RIGHT} y={yOf(target.thickness_m * target.maxFraction)} height={yOf(target.thickness_m * target.minFraction) - yOf(target.thickness_m * target.maxFraction)} />
          <path class="chart-mean" d={`M${LEFT},${yOf(target.thickness_m)} H${width.value - RIGHT}`} />
          {y.ticks(4).map((tick) => <text key={tick} x={LEFT - 8} y={y(tick)} class="tick-y">{tick}</text>)}
          {x.ticks(Math.max(2, Math.floor(width.value / 110))).map((tick) => <text key={tick} x={x(tick)} y={HEIGHT - BOTTOM + 22} class="tick-x">{tick}</text>)}
          <text x={LEFT + 6} y={TOP + 12}>{film.name}</text>
          <text x={width.value - RIGHT} y={HEIGHT - 8} class="tick-end">{length.name} along the line</text>
          <path class="chart-axis" d={`M${LEFT},${TOP} V${HEIGHT - BOTTOM} H${width.value - RIGHT}`} />
          <path class="chart-line dry" d={tracePath(now.dry_m, xOf, yOf)} />
          <path class="chart-line wet" d={tracePath(now.wet_m, xOf, yOf)} />
          {at === null ? null : <path class="chart-cursor" d={`M${xOf(at)},${TOP} V${HEIGHT - BOTTOM}`} />}
        </svg>
      </div>
      {children}
    </figure>
  );

  function sampleAt(offset: number): number {
    const share = (offset - LEFT) / (width.value - LEFT - RIGHT);
    return Math.round(Math.min(1, Math.max(0, share)) * last);
  }

  function readout(sample: number): string {
    const wet = now.wet_m[sample] ?? NaN;
    const dry = now.dry_m[sample] ?? NaN;
    const place = shown(sample * now.step_m, 'length', system);
    return Number.isNaN(wet) ? `${place}: off the panel` : `${place}: ${shown(wet, 'film', system)} wet, ${shownNumber(dry, 'film', system)} dry`;
  }
}

function largest(values: Float32Array): number {
  let most = 0;
  for (const value of values) if (value > most) most = value;
  return most;
}

function stepped(key: string, at: number, last: number): number | null {
  const steps: Readonly<Record<string, number>> = { ArrowLeft: -1, ArrowRight: 1, ArrowDown: -1, ArrowUp: 1, PageDown: -20, PageUp: 20, Home: -Infinity, End: Infinity };
  const step = steps[key];
  return step === undefined ? null : Math.min(last, Math.max(0, at + step));
}

const observer = new ResizeObserver(([entry]) => {
  if (entry !== undefined) width.value = Math.max(240, Math.floor(entry.contentRect.width));
});

function followWidth(box: HTMLElement | null): void {
  observer.disconnect();
  if (box !== null) observer.observe(box);
}
