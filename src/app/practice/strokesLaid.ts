import { AIR_ONLY, courseOf, type PathBuilder, type Pose } from '../../../sim/index.ts';

type Lateral = ReturnType<typeof courseOf>['lateral'];

/** Strokes that a gauge looks back at, and those whose edges are drawn. */
const KEPT = 24;
const DRAWN = 3;
/** Shorter openings of the trigger are no strokes. */
const SHORTEST_S = 0.1;

/** The strokes of a session under way, for the overlap being laid and the edges to aim by. */
export class StrokesLaid {
  /** Newest last. */
  laterals: readonly Lateral[] = [];
  /** The last strokes' edges at full fan width, a line each. */
  edges: readonly Float64Array[] = [];
  private opened_s = NaN;

  constructor(
    private readonly rows: PathBuilder,
    private readonly fanWidthPerDistance: number,
  ) {}

  /** To be told every row once it stands in `rows`. */
  note(pose: Pose): void {
    const isOn = pose.trigger > AIR_ONLY;
    if (isOn && Number.isNaN(this.opened_s)) this.opened_s = pose.t_s;
    if (isOn || Number.isNaN(this.opened_s)) return;
    const opened_s = this.opened_s;
    this.opened_s = NaN;
    if (pose.t_s - opened_s < SHORTEST_S) return;
    const path = this.rows.since(opened_s);
    const { lateral } = courseOf(path, { firstRow: 0, lastRow: path.count - 1 }, 0);
    this.laterals = [...this.laterals, lateral].slice(-KEPT);
    this.edges = this.laterals.slice(-DRAWN).flatMap((each) => edgesOf(each, this.fanWidthPerDistance));
  }
}

/** The lines along which a stroke's fan ends, on either side. */
function edgesOf({ line, binSize_m, across_m, slant_m }: Lateral, fanWidthPerDistance: number): Float64Array[] {
  return [-1, 1].map((side) => {
    const edge = new Float64Array(2 * across_m.length);
    across_m.forEach((across, bin) => {
      const along = line.from_m + (bin + 0.5) * binSize_m;
      const out = across + (side * fanWidthPerDistance * (slant_m[bin] as number)) / 2;
      edge[2 * bin] = line.x_m + along * line.dx - out * line.dy;
      edge[2 * bin + 1] = line.y_m + along * line.dy + out * line.dx;
    });
    return edge;
  });
}
