import type { FoundWindow, WindowAxis, WindowDescription, WindowMargin, WindowMargins, WindowPlane } from '../verdict/workingWindow.ts';
import { ESTIMATE_STATEMENT } from './cautions.ts';
import { bulleted, wrapped } from './textLines.ts';
import { shownPercent, type UnitSystem } from './units.ts';
import { AXIS_WORDS, limitWords, shownOnAxis, shownSpan } from './windowWords.ts';
import { FAULT_WORDS, listed } from './words.ts';

/** What a window is of, beside its figures. */
export interface ReportedWindow {
  readonly coatName: string;
  readonly setUpName: string;
  readonly plane: WindowPlane;
  readonly description: WindowDescription;
  readonly interpolated: boolean;
}

/** What a window leaves out. */
export const WINDOW_NOTE =
  'For the middle of a large panel, laid by a steady hand: edges, holes and the hand take some of this room. ' +
  'A run here is film that slides 3 mm, whether or not it gathers. Beyond the distances that were measured nothing counts as inside.';

/** A working window as plain text; lines joined, one newline at the end. */
export function windowText(reported: ReportedWindow, system: UnitSystem): string {
  const { coatName, setUpName, plane } = reported;
  const head = `${coatName}, ${setUpName}: ${AXIS_WORDS[plane.x.axis].title} ${spanOf(plane.x, system)} against ${AXIS_WORDS[plane.y.axis].title} ${spanOf(plane.y, system)}.`;
  const lines = [...wrapped(head), '', ...bulleted('The working window', windowSentences(reported, system)), '', ...wrapped(WINDOW_NOTE), ...wrapped(ESTIMATE_STATEMENT)];
  return `${lines.join('\n')}\n`;
}

/** What a window comes to, a sentence each. */
export function windowSentences({ plane, description, interpolated }: ReportedWindow, system: UnitSystem): string[] {
  const { window, statedFault, outOfRangeShare } = description;
  return [
    ...(window === null ? noWindow(plane, description, system) : foundSentences(plane, window, description, system)),
    statedSentence(plane, description, system),
    ...(statedFault === null ? marginSentences('The coat as stated', plane, description.statedMargins, system) : []),
    ...(outOfRangeShare > 0 ? [`${shownPercent(outOfRangeShare)} of the map lies at distances at which this fan was not measured; it is marked and not counted.`] : []),
    ...(interpolated ? ['Points between those worked out are filled in by straight lines.'] : []),
  ];
}

function foundSentences({ x, y }: WindowPlane, window: FoundWindow, { share }: WindowDescription, system: UnitSystem): string[] {
  const ends = (axis: WindowAxis, [low, high]: readonly [number, number]) => `${AXIS_WORDS[axis].title} from ${shownOnAxis(axis, low, system)} to ${shownOnAxis(axis, high, system)}`;
  const rest = share - window.share > 0.01 ? ` (${shownPercent(share)} with others apart from it)` : '';
  return [
    `Nothing is at fault on ${shownPercent(window.share)} of this map${rest}: within ${ends(x.axis, window.x)} and ${ends(y.axis, window.y)}, not at every corner of that.`,
    `Most room all round: ${shownOnAxis(x.axis, window.best.x, system)} and ${shownOnAxis(y.axis, window.best.y, system)}.`,
    ...marginSentences('There', { x, y }, window.bestMargins, system),
  ];
}

function noWindow({ x, y }: WindowPlane, { nearest, nearestFaults }: WindowDescription, system: UnitSystem): string[] {
  const faults = nearestFaults.map(({ fault, slack }) => `${FAULT_WORDS[fault]} (${shownPercent(-slack)} past its limit)`);
  return [`No place on this map is free of faults. Nearest to it: ${shownOnAxis(x.axis, nearest.x, system)} and ${shownOnAxis(y.axis, nearest.y, system)}, with ${faults.length === 0 ? 'a distance that was not measured' : listed(faults)}.`];
}

function statedSentence({ x, y }: WindowPlane, { stated, statedFault }: WindowDescription, system: UnitSystem): string {
  const where = `${shownOnAxis(x.axis, stated.x, system)} and ${shownOnAxis(y.axis, stated.y, system)}`;
  return statedFault === null ? `The coat as stated, ${where}, lies inside.` : `The coat as stated, ${where}, lies outside: ${FAULT_WORDS[statedFault]}.`;
}

function marginSentences(who: string, { x, y }: WindowPlane, margins: WindowMargins, system: UnitSystem): string[] {
  const parts = [
    [x.axis, margins.x],
    [y.axis, margins.y],
  ] as const;
  return parts.flatMap(([axis, margin]) => (margin === null ? [] : [`${who}: ${wayWords(axis, 'less', margin.less, system)}; ${wayWords(axis, 'more', margin.more, system)}.`]));
}

function wayWords(axis: WindowAxis, way: 'less' | 'more', { by, limit }: WindowMargin, system: UnitSystem): string {
  return `${shownSpan(axis, by, system)} ${AXIS_WORDS[axis][way]} until ${limitWords(limit)}`;
}

function spanOf({ axis, low, high }: WindowPlane['x'], system: UnitSystem): string {
  return `${shownOnAxis(axis, low, system)} to ${shownOnAxis(axis, high, system)}`;
}
