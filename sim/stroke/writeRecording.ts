import type { Path } from './path.ts';

/** Rows to a piece of text: about 200 KB. */
const ROWS_A_PIECE = 4096;
const DEGREES = 180 / Math.PI;

/** Header of a written recording. */
export const RECORDING_HEADER = 't_s,x_mm,y_mm,z_mm,fan_deg,pitch_deg,yaw_deg,trigger';

/** Digits behind the point in a written recording. */
export interface RecordingDigits {
  readonly time: number;
  readonly length: number;
  readonly angle: number;
}

/** 1 µs, 1 µm, a thousandth of a degree: finer than any hand-held tracker. */
const FINE: RecordingDigits = { time: 6, length: 3, angle: 3 };

/**
 * A path as a recorded-stroke CSV, in pieces of 4096 rows so that a long one needs no giant string;
 * the first piece starts with the header, lines end in LF. Reading it back gives every value to the
 * last digit printed. Rows less than one unit of the last time digit apart would repeat a time and
 * are refused on reading. All fields are numbers made here, so none can act as a spreadsheet
 * formula and none is guarded (a guard would spoil negative numbers).
 */
export function* writeRecording(path: Path, digits: RecordingDigits = FINE): Generator<string, void, undefined> {
  let piece = `${RECORDING_HEADER}\n`;
  for (let i = 0; i < path.count; i++) {
    piece += `${recordingRow(path, i, digits)}\n`;
    if ((i + 1) % ROWS_A_PIECE !== 0) continue;
    yield piece;
    piece = '';
  }
  if (piece !== '') yield piece;
}

/** Rows of a path as text that goes on with a recording written before: `writeRecording` of a whole path is that of its first rows and then this of the others. */
export function recordingRows(path: Path, digits: RecordingDigits = FINE): string {
  let text = '';
  for (let i = 0; i < path.count; i++) text += `${recordingRow(path, i, digits)}\n`;
  return text;
}

function recordingRow(path: Path, i: number, digits: RecordingDigits): string {
  const length = (column: Float64Array) => plain((column[i] as number) * 1000, digits.length);
  const angle = (column: Float64Array) => plain((column[i] as number) * DEGREES, digits.angle);
  return [
    plain(path.t_s[i] as number, digits.time),
    length(path.x_m),
    length(path.y_m),
    length(path.z_m),
    angle(path.fan_rad),
    angle(path.pitch_rad),
    angle(path.yaw_rad),
    plain(path.trigger[i] as number, 3),
  ].join(',');
}

/** Fixed digits without trailing zeros, and without a minus before zero. */
function plain(value: number, digits: number): string {
  const text = String(Number(value.toFixed(digits)));
  return text === '-0' ? '0' : text;
}
