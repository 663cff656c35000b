import type { WindowMargin, WindowMargins, WindowPlace, WindowPlane, WindowSide } from '../verdict/workingWindow.ts';
import { ESTIMATE_STATEMENT } from './cautions.ts';
import { jsonNumber, type JsonValue } from './jsonValue.ts';
import { RESULT_VERSION } from './reportJson.ts';
import { WINDOW_NOTE, type ReportedWindow } from './windowText.ts';
import { AXIS_WORDS } from './windowWords.ts';

/** A working window as one JSON object; each axis by its key with the unit (`distance_mm`), its values in that unit. */
export function windowJson({ coatName, setUpName, plane, description, interpolated }: ReportedWindow): { readonly [key: string]: JsonValue } {
  const { window, stated, statedFault, statedMargins, nearest, nearestFaults } = description;
  return {
    schemaVersion: RESULT_VERSION,
    estimate: ESTIMATE_STATEMENT,
    note: WINDOW_NOTE,
    coatName,
    setUpName,
    x: sideJson(plane.x),
    y: sideJson(plane.y),
    share_percent: jsonNumber(description.share, 0.01),
    outOfRange_percent: jsonNumber(description.outOfRangeShare, 0.01),
    interpolated,
    stated: { ...placeJson(plane, stated), fault: statedFault, margins: marginsJson(plane, statedMargins) },
    window:
      window === null
        ? null
        : {
            share_percent: jsonNumber(window.share, 0.01),
            x: window.x.map((value) => onAxis(plane.x, value)),
            y: window.y.map((value) => onAxis(plane.y, value)),
            holdsStated: window.holdsStated,
            best: { ...placeJson(plane, window.best), clearance_steps: jsonNumber(window.bestClearance_steps), margins: marginsJson(plane, window.bestMargins) },
          },
    nearest: { ...placeJson(plane, nearest), faults: nearestFaults.map(({ fault, slack }) => ({ fault, pastLimit_percent: jsonNumber(-slack, 0.01) })) },
  };
}

function sideJson(side: WindowSide): JsonValue {
  return { axis: side.axis, key: AXIS_WORDS[side.axis].key, low: onAxis(side, side.low), high: onAxis(side, side.high), count: side.count };
}

function onAxis({ axis }: WindowSide, value: number): JsonValue {
  const { size, zero } = AXIS_WORDS[axis];
  return jsonNumber(value + zero, size);
}

function placeJson({ x, y }: WindowPlane, place: WindowPlace): { readonly [key: string]: JsonValue } {
  return { [AXIS_WORDS[x.axis].key]: onAxis(x, place.x), [AXIS_WORDS[y.axis].key]: onAxis(y, place.y) };
}

function marginsJson(plane: WindowPlane, margins: WindowMargins): JsonValue {
  const way = (side: WindowSide, { by, limit }: WindowMargin): JsonValue => ({ by: jsonNumber(by, AXIS_WORDS[side.axis].size), until: limit });
  const both = (side: WindowSide, margin: WindowMargins['x']): JsonValue => (margin === null ? null : { less: way(side, margin.less), more: way(side, margin.more) });
  return { [AXIS_WORDS[plane.x.axis].key]: both(plane.x, margins.x), [AXIS_WORDS[plane.y.axis].key]: both(plane.y, margins.y) };
}
