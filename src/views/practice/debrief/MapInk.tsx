import type { JSX } from 'preact';
import type { Panel, StrokeLine } from '../../../../sim/index.ts';
import type { GunScene } from '../../../canvas/scene.ts';
import type { Placing } from './FilmMap.tsx';
import { firstInside, type Box } from './mapBox.ts';

/** Room that a stroke's number takes, px. */
const NUMBER_PX = 22;

function points(line: ArrayLike<number>, { x, y }: Placing): string {
  const texts: string[] = [];
  for (let i = 0; i + 1 < line.length; i += 2) texts.push(`${x(line[i] as number).toFixed(1)},${y(line[i + 1] as number).toFixed(1)}`);
  return texts.join(' ');
}

/** The panel's edge and holes. */
export function PanelInk({ panel, place }: { readonly panel: Pick<Panel, 'outline' | 'holes'>; readonly place: Placing }): JSX.Element {
  return <>{[panel.outline, ...panel.holes].map((ring, i) => <polygon key={i} class="ink-edge" points={points(ring, place)} />)}</>;
}

export interface StrokesInkProps {
  readonly lines: readonly StrokeLine[];
  /** Strokes drawn heavy and numbered, 0-based. */
  readonly heavy: readonly number[];
  readonly box: Box;
  readonly place: Placing;
}

/** Aim lines of the strokes with a rim of paper, so that they stand off every colour; the heavy ones last. */
export function StrokesInk({ lines, heavy, box, place }: StrokesInkProps): JSX.Element {
  const named = lines.filter(({ index }) => heavy.includes(index));
  return (
    <>
      {lines.map(({ index, line }) => <Twice key={index} class="ink-stroke" points={points(line, place)} />)}
      {named.map(({ index, line }) => <Twice key={index} class="ink-stroke heavy" points={points(line, place)} />)}
      {named.map(({ index, line }) => {
        const at = firstInside(line, box, NUMBER_PX / place.pixels_per_m);
        return at === null ? null : <text key={index} x={place.x(at[0])} y={place.y(at[1]) - 8}>{index + 1}</text>;
      })}
    </>
  );
}

/** Rims of zones. */
export function ZonesInk({ rims, place }: { readonly rims: readonly Float64Array[]; readonly place: Placing }): JSX.Element {
  return <>{rims.map((rim, i) => <Twice key={i} class="ink-zone" points={closed(points(rim, place))} />)}</>;
}

/** The rim of the fan on the panel and the foot of the nozzle; heavier, with a dot, while fluid flows. */
export function GunInk({ gun, place }: { readonly gun: GunScene; readonly place: Placing }): JSX.Element {
  const [x, y] = [place.x(gun.x_m), place.y(gun.y_m)];
  return (
    <>
      <Twice class={gun.spraying ? 'ink-gun spraying' : 'ink-gun'} points={closed(points(gun.rim, place))} />
      <Twice class="ink-gun" points={`${x - 7},${y} ${x + 7},${y}`} />
      <Twice class="ink-gun" points={`${x},${y - 7} ${x},${y + 7}`} />
      {gun.spraying ? <circle class="ink-dot" cx={x} cy={y} r={4} /> : null}
    </>
  );
}

/** A ring's first point again at its end. */
function closed(ring: string): string {
  return ring === '' ? '' : `${ring} ${ring.slice(0, ring.indexOf(' ') < 0 ? undefined : ring.indexOf(' '))}`;
}

/** A line over a wider one of paper. */
function Twice({ class: kind, points: line }: { readonly class: string; readonly points: string }): JSX.Element {
  return (
    <>
      <polyline class={`${kind} halo`} points={line} />
      <polyline class={kind} points={line} />
    </>
  );
}
