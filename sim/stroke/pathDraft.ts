import { type Path, poseOfRow, type Pose } from './path.ts';
import { PathBuilder } from './pathBuilder.ts';
import type { Stroke } from './stroke.ts';

/** A path and its strokes, as every correction takes and gives them. */
export interface LaidPath {
  readonly path: Path;
  readonly strokes: readonly Stroke[];
}

/** A row to come before another, `after_s` later than what stands before it. */
export interface NewRow {
  readonly pose: Pose;
  readonly after_s: number;
  /** Whether a stroke's first (or last) row moves here. */
  readonly begins?: number;
  readonly ends?: number;
}

/** Rows nearer in time than this would be no rows. */
const LEAST_STEP_S = 1e-6;

/**
 * A path being changed: poses by row, the time from row to row, rows left out and rows put in.
 * Times after a change move along. `finish` gives the new path with the strokes on their new rows.
 */
export class PathDraft {
  readonly poses: Pose[];
  /** From the row before. */
  readonly steps_s: Float64Array;
  private readonly isDropped: Uint8Array;
  private readonly before = new Map<number, NewRow[]>();

  constructor(private readonly laid: LaidPath) {
    const { path } = laid;
    this.poses = Array.from({ length: path.count }, (_, row) => poseOfRow(path, row));
    this.steps_s = path.t_s.map((t, row) => (row === 0 ? 0 : t - (path.t_s[row - 1] as number)));
    this.isDropped = new Uint8Array(path.count);
  }

  drop(row: number): void {
    this.isDropped[row] = 1;
  }

  isKept(row: number): boolean {
    return this.isDropped[row] === 0;
  }

  /** Puts rows before `row`, which may be one past the last. */
  insert(row: number, rows: readonly NewRow[]): void {
    this.before.set(row, [...(this.before.get(row) ?? []), ...rows]);
  }

  finish(): LaidPath {
    const { path, strokes } = this.laid;
    const builder = new PathBuilder(path.count + 8);
    const newRow = new Int32Array(path.count);
    const begins = new Map<number, number>();
    const ends = new Map<number, number>();
    let t_s = path.t_s[0] as number;
    const add = (pose: Pose, after_s: number): void => {
      t_s = builder.count === 0 ? t_s : Math.max(builder.lastTime_s + LEAST_STEP_S, t_s + after_s);
      builder.add({ ...pose, t_s });
    };
    for (let row = 0; row <= path.count; row++) {
      for (const inserted of this.before.get(row) ?? []) {
        add(inserted.pose, inserted.after_s);
        if (inserted.begins !== undefined) begins.set(inserted.begins, builder.count - 1);
        if (inserted.ends !== undefined) ends.set(inserted.ends, builder.count - 1);
      }
      if (row === path.count) break;
      if (this.isKept(row)) add(this.poses[row] as Pose, this.steps_s[row] as number);
      newRow[row] = builder.count - 1;
    }
    return {
      path: builder.build(),
      strokes: strokes.map((stroke) => ({
        ...stroke,
        firstRow: begins.get(stroke.index) ?? (newRow[stroke.firstRow] as number),
        lastRow: ends.get(stroke.index) ?? (newRow[stroke.lastRow] as number),
      })),
    };
  }
}
