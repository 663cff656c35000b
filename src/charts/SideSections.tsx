import type { JSX } from 'preact';
import { sectionPath, type SideSection } from './sideSections.ts';
import { useWidth } from './useWidth.ts';

const USUAL = 640;
const PAPER = 640;
const HEIGHT = 200;
const LEFT = 60;
const RIGHT = 8;
const TOP = 10;
const BASE = HEIGHT - 12;
/** Dashes tell the sides apart without colour; the first is drawn whole. */
export const DASHES: readonly string[] = ['', '10 4', '2 4', '12 4 2 4'];

export interface SideSectionsProps {
  readonly sides: readonly SideSection[];
  readonly domain: readonly [number, number];
  readonly ticks: readonly { readonly value: number; readonly text: string }[];
  readonly label: string;
}

/** One line through every side's map, over each other. */
export function SideSections({ sides, domain: [low, high], ticks, label }: SideSectionsProps): JSX.Element {
  const { box, width_px } = useWidth(USUAL, PAPER);
  const columns = Math.max(2, ...sides.map(({ values }) => values.length));
  const x = (column: number): number => LEFT + (column / (columns - 1)) * (width_px - LEFT - RIGHT);
  const y = (value: number): number => BASE - (Math.min(1, Math.max(0, (value - low) / (high - low)))) * (BASE - TOP);
  return (
    <div ref={box} class="side-sections">
      <svg width={width_px} height={HEIGHT} role="img" aria-label={label}>
        <path class="chart-axis" d={`M${LEFT},${TOP} V${BASE} H${width_px - RIGHT}`} />
        {ticks.map(({ value, text }) => <text key={text} x={LEFT - 6} y={y(value) + 5} text-anchor="end">{text}</text>)}
        {sides.map(({ name, values }, i) => <path key={name} class={`side-line side-${i}`} stroke-dasharray={DASHES[i % DASHES.length]} d={sectionPath(values, x, y)} />)}
      </svg>
    </div>
  );
}
