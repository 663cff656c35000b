import { CrosscoatError } from '../base/errors.ts';
import type { RecordingColumn } from './recordingColumns.ts';
import { RECORDING_DEFAULTS } from './recordingColumns.ts';
import { RecordingRows } from './recordingRows.ts';
import { type LineReader, plainNumber, triggerValue } from './recordingText.ts';

const FIELDS = ['timestamp', 'tx', 'ty', 'tz', 'qx', 'qy', 'qz', 'qw'] as const;
/** A quaternion this far from unit length is no rotation but a slip in the columns. */
const QUATERNION_SLACK = 0.05;

/**
 * The gun's angles from the rotation of its body, as a unit quaternion (w last) that turns body
 * axes into panel axes: body x is the fan's long axis, body y its short axis, body z points back
 * out of the gun, against the spray. So no rotation is a gun square to the panel with its fan
 * along x, and a quarter turn about z stands the fan upright.
 *
 * The rotation is Rz(fan) · Ry(-yaw) · Rx(pitch); back from its matrix R:
 * yaw = asin(R31), fan = atan2(R21, R11), pitch = atan2(R32, R33).
 * Where the long axis points straight at the panel (yaw ±90°) fan and pitch turn about one line
 * and only their sum has a meaning.
 * @returns fan, pitch, yaw in rad.
 */
export function anglesOfQuaternion(qx: number, qy: number, qz: number, qw: number): [fan_rad: number, pitch_rad: number, yaw_rad: number] {
  const r11 = qw * qw + qx * qx - qy * qy - qz * qz;
  const r21 = 2 * (qx * qy + qw * qz);
  const r31 = 2 * (qx * qz - qw * qy);
  const r32 = 2 * (qy * qz + qw * qx);
  const r33 = qw * qw - qx * qx - qy * qy + qz * qz;
  return [Math.atan2(r21, r11), Math.atan2(r32, r33), Math.asin(Math.max(-1, Math.min(1, r31)))];
}

/**
 * The common open trajectory text: `timestamp tx ty tz qx qy qz qw [trigger]`, parted by spaces or
 * tabs, seconds and metres in panel coordinates, `#` for remarks.
 */
export class TrajectoryLines implements LineReader {
  readonly rows: RecordingRows;
  readonly ignored: readonly string[] = [];
  private line = 0;
  private hasTrigger = true;
  private fieldCount = 0;

  constructor(private readonly file: string) {
    this.rows = new RecordingRows(file, { t: 'timestamp', x: 'tx', y: 'ty', z: 'tz', fan: 'qx', pitch: 'qx', yaw: 'qx', trigger: 'trigger' });
  }

  get columns(): readonly RecordingColumn[] {
    const field = (quantity: RecordingColumn['quantity'], name: string, index: number) => ({ quantity, name, field: index, scale: 1 });
    return [
      field('t', 'timestamp', 0),
      field('x', 'tx', 1),
      field('y', 'ty', 2),
      field('z', 'tz', 3),
      field('fan', 'qx qy qz qw', 4),
      field('pitch', 'qx qy qz qw', 4),
      field('yaw', 'qx qy qz qw', 4),
      this.hasTrigger ? field('trigger', 'trigger', 8) : { quantity: 'trigger', name: null, field: -1, scale: 1 },
    ];
  }

  read(lines: string): void {
    const all = lines.split(/\r\n|\n|\r/);
    if (all.at(-1) === '') all.pop();
    for (const line of all) {
      this.line++;
      const text = line.trim();
      if (text !== '' && !text.startsWith('#') && !text.startsWith('timestamp')) this.readLine(text);
    }
  }

  private readLine(text: string): void {
    const fields = text.split(/\s+/);
    if (this.fieldCount === 0) {
      this.fieldCount = fields.length;
      this.hasTrigger = fields.length === FIELDS.length + 1;
    }
    if (fields.length !== this.fieldCount || fields.length < FIELDS.length || fields.length > FIELDS.length + 1) {
      throw new CrosscoatError('columns', `${this.file}: row ${this.line} has ${fields.length} fields; every row needs ${FIELDS.join(' ')} and, in all rows or none, trigger`, { file: this.file, row: this.line });
    }
    const at = (i: number) => this.numberAt(fields, i);
    const [qx, qy, qz, qw] = [at(4), at(5), at(6), at(7)];
    const norm = Math.hypot(qx, qy, qz, qw);
    if (!(Math.abs(norm - 1) <= QUATERNION_SLACK)) {
      throw new CrosscoatError('range', `${this.file}: row ${this.line}, column qx: the quaternion's length is ${norm}, not 1 within ${QUATERNION_SLACK}; check the order of the columns (w last)`, { file: this.file, row: this.line, column: 'qx' });
    }
    const [fan, pitch, yaw] = anglesOfQuaternion(qx / norm, qy / norm, qz / norm, qw / norm);
    this.rows.add(this.line, at(0), at(1), at(2), at(3), fan, pitch, yaw, this.hasTrigger ? this.numberAt(fields, 8) : RECORDING_DEFAULTS.trigger);
  }

  private numberAt(fields: readonly string[], i: number): number {
    const field = fields[i] as string;
    const value = i === FIELDS.length ? triggerValue(field) : plainNumber(field);
    if (Number.isFinite(value)) return value;
    const column = FIELDS[i] ?? 'trigger';
    throw new CrosscoatError('range', `${this.file}: row ${this.line}, column ${column}: "${field.slice(0, 40)}" is not a finite number${column === 'trigger' ? ', off, air or spray' : ''}; mend the value or take the row out`, { file: this.file, row: this.line, column });
  }
}
