import {
  describeWindow, FAULT_WORDS, faultsOn, HATCH_WORDS, settleSide, windowJson, windowPicture, windowStrips, windowText,
  type Job, type ReportedWindow, type UnitSystem, type WindowMap,
} from '../../sim/index.ts';
import { coatAsked } from './chosenCoats.ts';
import { EXIT } from './exitCodes.ts';
import type { Io } from './io.ts';
import { wholeNumber } from './optionValues.ts';
import { writePng } from './pngFile.ts';
import { makeProgress } from './progress.ts';
import { readJob } from './readInputs.ts';
import { parseSide } from './windowAxes.ts';

/** Options of `crosscoat window` as commander gives them. */
export interface WindowOptions {
  readonly x: string;
  readonly y: string;
  readonly coat?: string;
  readonly setup?: string;
  readonly points: string;
  readonly map?: string;
  readonly units: UnitSystem;
  readonly json?: true;
}

/** A picture's longer side comes to about this many pixels. */
const LONG_SIDE = 900;

/** Maps where a coat has no fault, over two of its settings. @returns the exit code. */
export async function window(io: Io, jobPath: string, options: WindowOptions): Promise<number> {
  const { job } = await readJob(io, jobPath);
  const { map, reported } = mapped(io, job, options);
  const notes = options.map === undefined ? [] : [await writeWindow(io, options.map, map, reported)];
  if (options.json === true) await io.out(`${JSON.stringify({ ...windowJson(reported), notes }, null, 2)}\n`);
  else await io.out([windowText(reported, options.units), ...notes.map((note) => `${note}\n`)].join(''));
  return EXIT.done;
}

function mapped(io: Io, job: Job, options: WindowOptions): { readonly map: WindowMap; readonly reported: ReportedWindow } {
  const coat = coatAsked(job, options.coat);
  const setting = settleSide(job, coat.id, options.setup ?? coat.setUp, 'as-stated', job.cell_mm);
  const count = wholeNumber('--points', options.points, 10, 400, 'give the points along each side, such as 100');
  const plane = { x: parseSide('--x', options.x, setting, count), y: parseSide('--y', options.y, setting, count) };
  const progress = options.json === true ? null : makeProgress(io, 'mapping');
  const strips = windowStrips(setting, plane);
  for (;;) {
    const next = strips.next();
    if (next.done !== true) {
      progress?.show(next.value / count);
      continue;
    }
    progress?.end();
    const map = next.value;
    return { map, reported: { coatName: coat.name, setUpName: setting.setUp.name, plane, description: describeWindow(map), interpolated: map.interpolated } };
  }
}

/** @returns the picture's legend in words, since it holds no text. */
async function writeWindow(io: Io, path: string, map: WindowMap, { description }: ReportedWindow): Promise<string> {
  const pixelsPerPoint = Math.min(32, Math.max(1, Math.round(LONG_SIDE / Math.max(map.x.count, map.y.count))));
  const picture = windowPicture(map, { pixelsPerPoint, cross: description.stated, ...(description.window === null ? {} : { ring: description.window.best }) });
  await writePng(io, path, picture);
  const shownFaults = faultsOn(map).map((fault) => `${FAULT_WORDS[fault]} = ${HATCH_WORDS[fault]}`);
  return `${path}: ${map.x.axis} to the right, ${map.y.axis} upward; plain = no fault${shownFaults.length === 0 ? '' : `, ${shownFaults.join(', ')}`}; cross = the coat as stated, ring = most room all round`;
}
