import type { Path, Pose } from './path.ts';

const COLUMNS = 8;

/**
 * A path that grows row by row in typed arrays that double: memory stays below twice the rows
 * written, 60 bytes a row. Times are not checked here; who reads a file checks them with the row.
 */
export class PathBuilder {
  private rows = 0;
  private room: number;
  private columns: Float64Array[];

  /** @param room rows to make room for at once, at least 1. */
  constructor(room = 256) {
    this.room = Math.max(1, room);
    this.columns = Array.from({ length: COLUMNS }, () => new Float64Array(this.room));
  }

  /** Rows written so far. */
  get count(): number {
    return this.rows;
  }

  /** Time of the last row, -Infinity before the first. */
  get lastTime_s(): number {
    return this.rows === 0 ? -Infinity : (this.column(0)[this.rows - 1] as number);
  }

  /** Time of the first row, Infinity before there is one. */
  get firstTime_s(): number {
    return this.rows === 0 ? Infinity : (this.column(0)[0] as number);
  }

  /** Foot of the nozzle in the last row, null before the first. */
  get lastPlace_m(): readonly [number, number] | null {
    return this.rows === 0 ? null : [this.column(1)[this.rows - 1] as number, this.column(2)[this.rows - 1] as number];
  }

  add(pose: Pose): void {
    this.addRow(pose.t_s, pose.x_m, pose.y_m, pose.z_m, pose.fan_rad, pose.pitch_rad, pose.yaw_rad, pose.trigger);
  }

  /** As `add`, without an object: for millions of rows. */
  addRow(t_s: number, x_m: number, y_m: number, z_m: number, fan_rad: number, pitch_rad: number, yaw_rad: number, trigger: number): void {
    if (this.rows === this.room) this.grow();
    const row = this.rows++;
    this.column(0)[row] = t_s;
    this.column(1)[row] = x_m;
    this.column(2)[row] = y_m;
    this.column(3)[row] = z_m;
    this.column(4)[row] = fan_rad;
    this.column(5)[row] = pitch_rad;
    this.column(6)[row] = yaw_rad;
    this.column(7)[row] = trigger;
  }

  /** Rows from the last one at or before `t_s` (or the first) to the last, copied. */
  since(t_s: number): Path {
    const times = this.column(0);
    let first = this.rows - 1;
    while (first > 0 && (times[first] as number) > t_s) first--;
    return this.rowsFrom(Math.max(0, first));
  }

  /** Whether a pose is that of the last row, whatever its time. */
  endsWith(x_m: number, y_m: number, z_m: number, fan_rad: number, pitch_rad: number, yaw_rad: number, trigger: number): boolean {
    const pose = [x_m, y_m, z_m, fan_rad, pitch_rad, yaw_rad, trigger];
    return this.rows > 0 && pose.every((value, i) => this.column(i + 1)[this.rows - 1] === value);
  }

  /** The rows written so far, copied to their own length. */
  build(): Path {
    return this.rowsFrom(0);
  }

  /** Rows from the one of index `first` (0 to `count`) to the last, copied. */
  rowsFrom(first: number): Path {
    const copy = (i: number) => this.column(i).slice(first, this.rows);
    return {
      count: this.rows - first,
      t_s: copy(0),
      x_m: copy(1),
      y_m: copy(2),
      z_m: copy(3),
      fan_rad: copy(4),
      pitch_rad: copy(5),
      yaw_rad: copy(6),
      trigger: Float32Array.from(this.column(7).subarray(first, this.rows)),
    };
  }

  private column(i: number): Float64Array {
    return this.columns[i] as Float64Array;
  }

  private grow(): void {
    this.room *= 2;
    this.columns = this.columns.map((column) => {
      const wider = new Float64Array(this.room);
      wider.set(column);
      return wider;
    });
  }
}
