import { evenScale } from '../base/evenScale.ts';
import type { WindowFault, WindowMap, WindowPlace, WindowSide } from '../verdict/workingWindow.ts';
import { classedPaths } from './classedSvg.ts';
import { isHatched } from './hatch.ts';
import { INSIDE_COLOUR, UNMEASURED_SHARE, WINDOW_COLOURS } from './windowColours.ts';

/** One axis as the reader has it: its name with the unit, and an SI value as a number in that unit. */
export interface ShownAxis {
  readonly title: string;
  readonly toShown: (value: number) => number;
}

/** What a drawing of a window shows besides its regions. */
export interface WindowDrawing {
  readonly map: WindowMap;
  readonly x: ShownAxis;
  readonly y: ShownAxis;
  readonly best: WindowPlace | null;
  readonly stated: WindowPlace;
  /** Set before the names of the hatchings, so that several drawings may stand on one page. */
  readonly id: string;
}

/** One unit a point; the text and rulers stand in margins of so many. */
const LEFT = 14;
const BELOW = 12;
const TOP = 3;
const RIGHT = 3;
/** Side of the picture's plane, whatever the map has: hatching and words keep their size. */
const SIDE = 100;
/** The plane within the picture, for whoever lays something over it. */
export const WINDOW_SIDE = { left: LEFT, top: TOP, side: SIDE, width: LEFT + SIDE + RIGHT, height: TOP + SIDE + BELOW };
const TEXT = 3.6;
const TICKS = 5;
/** Pixels of a hatching's repeat, and one of them in units. */
const REPEAT = 8;
const PIXEL = 0.3;

/**
 * A window as an SVG picture with rulers: regions hatched as on every map of the model, a cross at the coat as
 * stated, a ring at the best-centred place.
 */
export function windowSvg({ map, x, y, best, stated, id }: WindowDrawing): string {
  const { width, height } = WINDOW_SIDE;
  const fills = [INSIDE_COLOUR, ...map.faults.map((fault) => `url(#${id}-${fault})`)];
  const scaled = `transform="translate(${LEFT},${TOP}) scale(${round(SIDE / map.x.count)},${round(SIDE / map.y.count)})"`;
  const veil = classedPaths({ columns: map.x.count, rows: map.y.count, classes: Int16Array.from(map.inRange, (is) => (is === 1 ? -1 : 0)), fills: ['#181818'] });
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" role="img">`,
    `<defs>${map.faults.map((fault) => patternOf(id, fault, map)).join('')}</defs>`,
    `<g ${scaled}>${classedPaths({ columns: map.x.count, rows: map.y.count, classes: Int16Array.from(map.codes), fills })}<g opacity="${UNMEASURED_SHARE}">${veil}</g></g>`,
    `<rect x="${LEFT}" y="${TOP}" width="${SIDE}" height="${SIDE}" fill="none" stroke="currentColor" stroke-width="0.5"/>`,
    `<g font-family="sans-serif" font-size="${TEXT}" fill="currentColor">${acrossRuler(map.x, x)}${upRuler(map.y, y)}</g>`,
    best === null ? '' : ring(placed(map, best)),
    cross(placed(map, stated)),
    '</svg>',
  ].join('');
}

/** A hatching of 8 × 8 pixels from the rule that hatches every map, undone of the points' own scale. */
function patternOf(id: string, fault: WindowFault, map: WindowMap): string {
  const sx = (PIXEL * map.x.count) / SIDE;
  const sy = (PIXEL * map.y.count) / SIDE;
  let ink = '';
  for (let py = 0; py < REPEAT; py++) for (let px = 0; px < REPEAT; px++) if (isHatched(fault, px, py)) ink += `M${px},${py}h1v1h-1z`;
  const size = `width="${REPEAT}" height="${REPEAT}"`;
  return `<pattern id="${id}-${fault}" ${size} patternUnits="userSpaceOnUse" patternTransform="scale(${round(sx)},${round(sy)})"><rect ${size} fill="${WINDOW_COLOURS[fault]}"/><path fill="#181818" d="${ink}"/></pattern>`;
}

function ticksOf(side: WindowSide, { toShown }: ShownAxis): { readonly share: number; readonly text: string }[] {
  const scale = evenScale([toShown(side.low), toShown(side.high)]);
  const format = scale.tickText(TICKS);
  return scale.ticks(TICKS).map((tick) => ({ share: scale(tick), text: format(tick) }));
}

function acrossRuler(side: WindowSide, axis: ShownAxis): string {
  const y = TOP + SIDE;
  const ticks = ticksOf(side, axis).map(({ share, text }) => {
    const x = round(LEFT + share * SIDE);
    return `<path stroke="currentColor" stroke-width="0.4" d="M${x},${y}v1.2"/><text x="${x}" y="${y + 5}" text-anchor="middle">${text}</text>`;
  });
  return `${ticks.join('')}<text x="${LEFT + SIDE / 2}" y="${y + 10.5}" text-anchor="middle">${axis.title}</text>`;
}

function upRuler(side: WindowSide, axis: ShownAxis): string {
  const ticks = ticksOf(side, axis).map(({ share, text }) => {
    const y = round(TOP + (1 - share) * SIDE);
    return `<path stroke="currentColor" stroke-width="0.4" d="M${LEFT},${y}h-1.2"/><text x="${LEFT - 2}" y="${round(y + 1.3)}" text-anchor="end">${text}</text>`;
  });
  return `${ticks.join('')}<text transform="translate(3.6,${TOP + SIDE / 2}) rotate(-90)" text-anchor="middle">${axis.title}</text>`;
}

function placed({ x, y }: WindowMap, place: WindowPlace): readonly [number, number] {
  return [round(LEFT + (SIDE * (place.x - x.low)) / (x.high - x.low)), round(TOP + SIDE * (1 - (place.y - y.low) / (y.high - y.low)))];
}

function ring([x, y]: readonly [number, number]): string {
  return `<circle cx="${x}" cy="${y}" r="1.8" fill="none" stroke="#181818" stroke-width="0.8"/>`;
}

function cross([x, y]: readonly [number, number]): string {
  return `<path stroke="#181818" stroke-width="0.8" d="M${round(x - 1.6)},${round(y - 1.6)}l3.2,3.2m0,-3.2l-3.2,3.2"/>`;
}

function round(value: number): number {
  return Math.round(value * 1000) / 1000;
}
