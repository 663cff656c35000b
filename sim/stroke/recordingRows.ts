import { counted } from '../base/counted.ts';
import { CrosscoatError, type ErrorCode, type Warning } from '../base/errors.ts';
import { fluidShare } from '../base/trigger.ts';
import type { Path } from './path.ts';
import { PathBuilder } from './pathBuilder.ts';

/** More rows than this are refused: 14 hours at 100 Hz. */
const MOST_ROWS = 5_000_000;
const FARTHEST_M = 100;
const LATEST_S = 1e12;
const HIGHEST_M = 10;
const MOST_TURN_RAD = 100 * Math.PI;
/** Farther off square than this the spray does not meet the panel in any place of interest. */
const STEEPEST_RAD = (85 * Math.PI) / 180;

/** The columns' names in a file, for messages. */
export interface RowNames {
  readonly t: string;
  readonly x: string;
  readonly y: string;
  readonly z: string;
  readonly fan: string;
  readonly pitch: string;
  readonly yaw: string;
  readonly trigger: string;
}

/**
 * Takes the rows of a recorded file, checks each and keeps it.
 *
 * A row with the time and pose of the one before is dropped and counted. Fan angles are brought
 * within half a turn of the row before by whole turns, so that a step from 179° to -179° is not
 * read as a spin. A gun more than 85° off square (hanging at the side between strokes) is held at
 * 85° with the trigger off; where fluid was on there the warning says so.
 */
export class RecordingRows {
  private readonly builder = new PathBuilder(4096);
  /** Where the file's row runs ahead of the path's: from path row `from`, file row = path row + `ahead`. */
  private readonly offsets: { readonly from: number; readonly ahead: number }[] = [];
  private lastFan_rad = NaN;
  private duplicates = 0;
  private firstDuplicate = 0;
  private steep = 0;
  private firstSteep = 0;

  constructor(
    private readonly file: string,
    private readonly names: RowNames,
    private readonly mostRows = MOST_ROWS,
  ) {}

  /** Adds one row, SI. @param row its 1-based place in the file. */
  add(row: number, t_s: number, x_m: number, y_m: number, z_m: number, fan_rad: number, pitch_rad: number, yaw_rad: number, trigger: number): void {
    const { names } = this;
    if (!(Math.abs(t_s) <= LATEST_S)) this.refuse('range', row, names.t, `${t_s} s`, `is not a time within ${LATEST_S} s of zero`);
    if (!(Math.abs(x_m) <= FARTHEST_M)) this.refuse('range', row, names.x, `${x_m} m`, `is more than ${FARTHEST_M} m away; check the unit in the header`);
    if (!(Math.abs(y_m) <= FARTHEST_M)) this.refuse('range', row, names.y, `${y_m} m`, `is more than ${FARTHEST_M} m away; check the unit in the header`);
    if (!(z_m > 0 && z_m <= HIGHEST_M)) this.refuse('range', row, names.z, `${z_m} m`, `is not above 0 and up to ${HIGHEST_M} m (the nozzle's square distance in front of the panel); check the origin and the unit`);
    if (!(Math.abs(fan_rad) <= MOST_TURN_RAD)) this.refuse('range', row, names.fan, `${fan_rad} rad`, 'is more than 50 turns; check the unit in the header');
    if (!(Math.abs(pitch_rad) <= Math.PI)) this.refuse('range', row, names.pitch, `${pitch_rad} rad`, 'is more than half a turn; check the unit in the header');
    if (!(Math.abs(yaw_rad) <= Math.PI)) this.refuse('range', row, names.yaw, `${yaw_rad} rad`, 'is more than half a turn; check the unit in the header');
    if (!(trigger >= 0 && trigger <= 1)) this.refuse('range', row, names.trigger, `${trigger}`, 'is not from 0 (off) over 0.5 (air only) to 1 (spray)');
    const fan = this.nearTurn(fan_rad);
    const isSteep = Math.abs(pitch_rad) > STEEPEST_RAD || Math.abs(yaw_rad) > STEEPEST_RAD;
    if (isSteep) this.noteSteep(row, trigger);
    this.keep(row, t_s, x_m, y_m, z_m, fan, held(pitch_rad), held(yaw_rad), isSteep ? 0 : trigger);
  }

  /** Rows kept so far. */
  get count(): number {
    return this.builder.count;
  }

  /** The file's row (1-based) of a row of the path (0-based). */
  rowOf(index: number): number {
    let i = this.offsets.length - 1;
    while (i > 0 && (this.offsets[i]?.from ?? 0) > index) i--;
    return index + (this.offsets[i]?.ahead ?? 1);
  }

  build(): Path {
    return this.builder.build();
  }

  warnings(): Warning[] {
    const found: Warning[] = [];
    if (this.duplicates > 0) {
      found.push({
        code: 'row-dropped',
        text: `${this.file}: ${counted(this.duplicates, 'row')} with the time and pose of the row before; left out`,
        place: { file: this.file, row: this.firstDuplicate },
      });
    }
    if (this.steep > 0) {
      found.push({
        code: 'model-limit',
        text: `${this.file}: ${counted(this.steep, 'row')} with the gun more than 85 deg off square and the fluid on; the trigger is taken as off there`,
        place: { file: this.file, row: this.firstSteep },
      });
    }
    return found;
  }

  private keep(row: number, t_s: number, x_m: number, y_m: number, z_m: number, fan_rad: number, pitch_rad: number, yaw_rad: number, trigger: number): void {
    const before = this.builder.lastTime_s;
    if (t_s > before) {
      if (this.builder.count >= this.mostRows) this.refuse('limit', row, this.names.t, `row ${row}`, `is past the limit of ${this.mostRows} rows; cut the recording into parts`);
      if (this.offsets.at(-1)?.ahead !== row - this.builder.count) this.offsets.push({ from: this.builder.count, ahead: row - this.builder.count });
      this.builder.addRow(t_s, x_m, y_m, z_m, fan_rad, pitch_rad, yaw_rad, trigger);
      this.lastFan_rad = fan_rad;
      return;
    }
    if (t_s < before) this.refuse('time', row, this.names.t, `${t_s} s`, `is before the ${before} s of the row before it (time runs backwards); sort the rows, or cut the file where the clock was set back`);
    if (!this.builder.endsWith(x_m, y_m, z_m, fan_rad, pitch_rad, yaw_rad, trigger)) this.refuse('time', row, this.names.t, `${t_s} s`, 'is the time of the row before it with another pose; keep one of the two, or give the times more digits');
    if (this.duplicates++ === 0) this.firstDuplicate = row;
  }

  private noteSteep(row: number, trigger: number): void {
    if (fluidShare(trigger) > 0 && this.steep++ === 0) this.firstSteep = row;
  }

  private nearTurn(fan_rad: number): number {
    if (!(Math.abs(fan_rad - this.lastFan_rad) > Math.PI)) return fan_rad;
    return fan_rad - 2 * Math.PI * Math.round((fan_rad - this.lastFan_rad) / (2 * Math.PI));
  }

  private refuse(code: ErrorCode, row: number, column: string, value: string, why: string): never {
    throw new CrosscoatError(code, `${this.file}: row ${row}, column ${column}: ${value} ${why}`, { file: this.file, row, column });
  }
}

function held(angle_rad: number): number {
  return Math.max(-STEEPEST_RAD, Math.min(STEEPEST_RAD, angle_rad));
}
