import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { evenScale, shownUnit, type Panel, type UnitSystem } from '../../../sim/index.ts';
import { pictureOf, ringPath, type PanelFit } from '../../app/survey/panelFit.ts';
import { markLabels, type ReadingMark } from '../../app/survey/readingMarks.ts';

export interface PanelDrawingProps {
  readonly panel: Panel;
  readonly fit: PanelFit;
  readonly system: UnitSystem;
  readonly marks: readonly ReadingMark[];
  /** The cross that marks a place; null for none. */
  readonly cross: readonly [number, number] | null;
}

/** Above so many readings only those that stand out have their numbers: more could not be told apart. */
const MOST_NUMBERED = 120;
/** Room of a figure along a ruler, px. */
const TICK_PX = 70;
const DOT_PX = 4;
const SQUARE_PX = 8;
const CROSS_PX = 14;
/** A label this near to the right edge stands left of its mark, px. */
const LABEL_PX = 76;

/** A panel to scale: outline, holes, rulers along two edges, and the places of readings with their numbers. */
export function PanelDrawing({ panel, fit, system, marks, cross }: PanelDrawingProps): JSX.Element {
  // Thousands of dots need not be written again while only the cross moves.
  const dots = useMemo(() => marks.flatMap((mark) => (mark.standsOut ? [] : [dotPath(pictureOf(fit, mark.at_m))])).join(''), [marks, fit.px_per_m, panel]);
  const chosen = marks.filter(({ standsOut }) => standsOut);
  const numbered = marks.length <= MOST_NUMBERED ? marks : chosen.slice(0, MOST_NUMBERED);
  const place = ({ at_m }: ReadingMark): readonly [number, number] => pictureOf(fit, at_m);
  return (
    <svg width={fit.width_px} height={fit.height_px} viewBox={`0 0 ${fit.width_px} ${fit.height_px}`} aria-hidden="true" class="survey-panel">
      <path class="survey-panel-face" fill-rule="evenodd" d={[panel.outline, ...panel.holes].map((ring) => ringPath(fit, ring)).join(' ')} />
      <Rulers panel={panel} fit={fit} system={system} />
      <path class="survey-panel-dots" d={dots} />
      <path class="survey-panel-squares" d={chosen.map((mark) => squarePath(place(mark))).join('')} />
      {markLabels(numbered, place).map(({ at, text, standsOut }) => <Label key={text} at={at} width_px={fit.width_px} text={text} standsOut={standsOut} />)}
      {cross === null ? null : <path class="survey-panel-cross" d={crossPath(pictureOf(fit, cross))} />}
    </svg>
  );
}

function Label({ at: [x, y], width_px, text, standsOut }: { readonly at: readonly [number, number]; readonly width_px: number; readonly text: string; readonly standsOut: boolean }): JSX.Element {
  const isLeft = x > width_px - LABEL_PX;
  const off = SQUARE_PX + 3;
  return <text x={isLeft ? x - off : x + off} y={y + 5} class={standsOut ? 'survey-panel-chosen' : ''} text-anchor={isLeft ? 'end' : 'start'}>{text}</text>;
}

function Rulers({ panel, fit, system }: { readonly panel: Panel; readonly fit: PanelFit; readonly system: UnitSystem }): JSX.Element {
  const { name, size } = shownUnit('length', system);
  const ticks = (length_m: number, least: number): number[] => evenScale([0, length_m / size]).ticks(Math.max(least, Math.floor((length_m * fit.px_per_m) / TICK_PX)));
  const [left, base] = pictureOf(fit, [0, 0]);
  const [right, top] = pictureOf(fit, [panel.width_m, panel.height_m]);
  return (
    <g class="survey-panel-rulers">
      <path class="chart-axis" d={`M${left - 6},${top}V${base + 6}H${right}`} />
      {ticks(panel.width_m, 1).map((tick) => {
        const [x] = pictureOf(fit, [tick * size, 0]);
        return <g key={tick}><path class="chart-axis" d={`M${x},${base + 6}v5`} /><text x={x} y={base + 27} text-anchor="middle">{tick}</text></g>;
      })}
      {ticks(panel.height_m, 2).map((tick) => {
        const [, y] = pictureOf(fit, [0, tick * size]);
        // The zero of both rulers is the same corner.
        return tick === 0 ? null : <g key={tick}><path class="chart-axis" d={`M${left - 11},${y}h5`} /><text x={left - 14} y={y + 5} text-anchor="end">{tick}</text></g>;
      })}
      <text x={2} y={base + 27}>{name}</text>
    </g>
  );
}

function dotPath([x, y]: readonly [number, number]): string {
  return `M${(x - DOT_PX).toFixed(1)},${y.toFixed(1)}a${DOT_PX},${DOT_PX} 0 1 0 ${2 * DOT_PX},0a${DOT_PX},${DOT_PX} 0 1 0 ${-2 * DOT_PX},0Z`;
}

function squarePath([x, y]: readonly [number, number]): string {
  return `M${(x - SQUARE_PX).toFixed(1)},${(y - SQUARE_PX).toFixed(1)}h${2 * SQUARE_PX}v${2 * SQUARE_PX}h${-2 * SQUARE_PX}Z`;
}

function crossPath([x, y]: readonly [number, number]): string {
  return `M${x - CROSS_PX},${y}h${2 * CROSS_PX}M${x},${y - CROSS_PX}v${2 * CROSS_PX}`;
}
