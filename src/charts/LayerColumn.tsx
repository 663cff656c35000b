import type { JSX } from 'preact';
import { layerColumn, type ColumnFilm } from './layerColumn.ts';

export interface LayerColumnProps {
  readonly films: readonly ColumnFilm[];
  /** One unit of the ruler, m, and its name. */
  readonly unit_m: number;
  readonly unitName: string;
  readonly label: string;
}

const LEFT = 52;
const WIDTH = 150;
const TOP = 28;
const GROUND = 26;

/** A cut through the films, each to scale, hatched by its kind and lettered; what lies beneath at the foot. */
export function LayerColumn({ films, unit_m, unitName, label }: LayerColumnProps): JSX.Element | null {
  const { boxes, height, ticks } = layerColumn(films, unit_m, WIDTH);
  if (boxes.length === 0) return null;
  const foot = TOP + height;
  return (
    <svg class="layer-column" role="img" aria-label={label} width={LEFT + WIDTH + 40} height={foot + GROUND + 4} viewBox={`0 0 ${LEFT + WIDTH + 40} ${foot + GROUND + 4}`}>
      <Hatches />
      <text x={LEFT - 8} y={16} class="tick-end">{unitName}</text>
      {ticks.map(({ y, text }) => (
        <g key={text}>
          <line x1={LEFT - 6} x2={LEFT} y1={TOP + y} y2={TOP + y} class="chart-axis" />
          <text x={LEFT - 9} y={TOP + y} class="tick-y">{text}</text>
        </g>
      ))}
      {boxes.map((box) => (
        <g key={box.letter}>
          <title>{`${box.letter}: ${box.name}`}</title>
          <rect x={LEFT} y={TOP + box.y} width={box.width} height={box.height} class={`layer-box layer-${box.layer}`} />
          {box.hasLetter ? <text x={LEFT + WIDTH + 10} y={TOP + box.y + box.height / 2} class="layer-letter">{box.letter}</text> : null}
        </g>
      ))}
      <line x1={LEFT} x2={LEFT} y1={TOP} y2={foot} class="chart-axis" />
      <rect x={LEFT} y={foot} width={WIDTH} height={GROUND} class="layer-ground" />
      <line x1={LEFT - 6} x2={LEFT + WIDTH + 6} y1={foot} y2={foot} class="layer-foot" />
    </svg>
  );
}

/** Ink only, so that it prints and tells the kinds apart without colour. */
function Hatches(): JSX.Element {
  return (
    <defs>
      <pattern id="layer-hatch-primer" width="8" height="6" patternUnits="userSpaceOnUse"><path d="M0 3H8" /></pattern>
      <pattern id="layer-hatch-clear" width="12" height="12" patternUnits="userSpaceOnUse"><path d="M2 3h1.5M8 9h1.5" /></pattern>
      <pattern id="layer-hatch-aluminium" width="8" height="8" patternUnits="userSpaceOnUse"><path d="M-2 10L10 -2M-2 2L2 -2M6 10L10 6" /></pattern>
      <pattern id="layer-hatch-colour" width="8" height="8" patternUnits="userSpaceOnUse"><path d="M-2 10L10 -2M-2 -2L10 10" /></pattern>
      <pattern id="layer-hatch-ground" width="10" height="10" patternUnits="userSpaceOnUse"><path d="M0 2.5H5M5 7.5H10M2.5 0V5M7.5 5V10" /></pattern>
    </defs>
  );
}

/** A patch of a hatch, for a key. */
export function HatchPatch({ layer }: { readonly layer: string }): JSX.Element {
  return <svg width="36" height="20" aria-hidden="true"><rect x="0.5" y="0.5" width="35" height="19" class={`layer-box layer-${layer}`} /></svg>;
}
