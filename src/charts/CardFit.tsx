import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import { evenScale, roundEnds } from '../../sim/index.ts';
import { cardDomains, cardResiduals, linePath, type FittedCard } from './cardFit.ts';
import { useWidth } from './useWidth.ts';

const FIT_HEIGHT = 220;
const REST_HEIGHT = 110;
const LEFT = 56;
const RIGHT = 12;
const TOP = 28;
const BOTTOM = 30;
const PAPER_PX = 620;
/** Room of a place below the plot. */
const TICK_PX = 80;
/** Readings above this many are drawn small. */
const MANY = 120;

export interface CardFitProps {
  readonly card: FittedCard;
  /** Unit of the places: its name, and one of it in m. */
  readonly unit: { readonly name: string; readonly size: number };
  /** What the film is read in, as the axis says it. */
  readonly filmName: string;
  /** The fit in words: the family, and how far readings lie from it. */
  readonly sentence: string;
}

/** Readings across the fan with the curve fitted to them, and below, on the same places, what the curve leaves over. */
export function CardFit({ card, unit, filmName, sentence }: CardFitProps): JSX.Element {
  const { box, width_px } = useWidth(640, PAPER_PX);
  const id = useId();
  const { place_m, film, residual } = cardDomains(card);
  const x = evenScale([place_m[0] / unit.size, place_m[1] / unit.size], [LEFT, Math.max(LEFT + 1, width_px - RIGHT)]);
  const xOf = (place: number): number => x(place / unit.size);
  // Round at the top only: the little that noise or a zero error puts below 0 is not worth a whole step of the scale.
  const top = roundEnds([0, film[1]], 4)[1];
  const y = evenScale([film[0], top], [FIT_HEIGHT - BOTTOM, TOP]);
  const rest = evenScale(roundEnds([-residual, residual], 2), [REST_HEIGHT - BOTTOM, TOP]);
  const ticks = x.ticks(Math.max(2, Math.floor(width_px / TICK_PX)));
  const size = card.film.length > MANY ? 2 : 4;
  return (
    <figure class="card-fit">
      <figcaption id={id}>{sentence}</figcaption>
      <div ref={box}>
        <svg width={width_px} height={FIT_HEIGHT} viewBox={`0 0 ${width_px} ${FIT_HEIGHT}`} role="img" aria-label="Readings across the fan and the curve fitted to them" aria-describedby={id}>
          {y.ticks(4).map((tick) => <text key={tick} x={LEFT - 8} y={y(tick)} class="tick-y">{tick}</text>)}
          {ticks.map((tick) => <text key={tick} x={x(tick)} y={FIT_HEIGHT - 8} class="tick-x">{tick}</text>)}
          <text x={LEFT} y={TOP - 12}>{filmName}</text>
          <text x={width_px - RIGHT} y={TOP - 12} class="tick-end">{unit.name} across</text>
          <path class="chart-axis" d={`M${LEFT},${TOP} V${FIT_HEIGHT - BOTTOM} H${width_px - RIGHT}`} />
          <path class="chart-line" d={linePath(card.curvePlace_m, card.curveFilm, xOf, y)} />
          <path class="card-marks" d={marks(card.place_m, card.film, xOf, y, size)} />
        </svg>
        <svg width={width_px} height={REST_HEIGHT} viewBox={`0 0 ${width_px} ${REST_HEIGHT}`} role="img" aria-label="What the curve leaves over at each reading">
          {rest.ticks(2).map((tick) => <text key={tick} x={LEFT - 8} y={rest(tick)} class="tick-y">{tick}</text>)}
          {ticks.map((tick) => <text key={tick} x={x(tick)} y={REST_HEIGHT - 8} class="tick-x">{tick}</text>)}
          <text x={LEFT} y={TOP - 12}>reading less curve</text>
          <path class="chart-axis" d={`M${LEFT},${TOP} V${REST_HEIGHT - BOTTOM}`} />
          <path class="chart-mean" d={`M${LEFT},${rest(0)} H${width_px - RIGHT}`} />
          <path class="chart-line" d={stems(card, xOf, rest)} />
          <path class="card-marks" d={marks(card.place_m, cardResiduals(card), xOf, rest, size)} />
        </svg>
      </div>
    </figure>
  );
}

/** A cross at each reading. */
function marks(places: ArrayLike<number>, values: ArrayLike<number>, x: (place: number) => number, y: (value: number) => number, size: number): string {
  return Array.from(places, (place, i) => {
    const [px, py] = [x(place), y(values[i] as number)];
    return `M${(px - size).toFixed(1)},${(py - size).toFixed(1)} l${2 * size},${2 * size} m0,${-2 * size} l${-2 * size},${2 * size}`;
  }).join(' ');
}

/** A line from 0 to each residual. */
function stems(card: FittedCard, x: (place: number) => number, y: (value: number) => number): string {
  const left = cardResiduals(card);
  return Array.from(card.place_m, (place, i) => `M${x(place).toFixed(1)},${y(0).toFixed(1)} V${y(left[i] as number).toFixed(1)}`).join(' ');
}
