import type {
  ComparedMap, Field, HandSpec, HandsTally, Job, OverlapRipple, ReportedComparison, ReportedFit, Sensitivities, SprayPoint, StrokeChoice, UnitSystem, WindowDescription, WindowMap, WindowPlane, Wish,
} from '../../sim/index.ts';

/** A coat sprayed with one set-up, whichever it is stated with. */
export interface SetUpRequest {
  readonly job: Job;
  readonly coat: string;
  readonly setUp: string;
}

/** A working window, mapped. */
export interface WindowReply {
  readonly coatName: string;
  readonly setUpName: string;
  readonly map: WindowMap;
  readonly description: WindowDescription;
}

/** What one step of each setting changes, and how the strokes lie at every overlap. */
export interface AroundReply {
  readonly sensitivities: Sensitivities;
  readonly overlaps: OverlapRipple;
  /** Full width of the fan where it was read, m. */
  readonly width_m: number;
}

/** Set-ups side by side, and the times at which their films can be looked at. */
export interface CompareReply {
  readonly comparison: ReportedComparison;
  readonly times_s: readonly number[];
}

/** One map of every side at one time, null for a side without film. */
export interface ComparedAtReply {
  readonly index: number;
  readonly fields: readonly (Field | null)[];
}

/** Messages of the gun set-ups: name, what is asked, what comes back. */
export interface SetUpMessages {
  /** Ends of the plane that are left out are the usual ones. */
  windowMap: { request: SetUpRequest & { plane: WindowPlane | null; axes: readonly [WindowPlane['x']['axis'], WindowPlane['y']['axis']]; count: number }; reply: WindowReply };
  windowAround: { request: SetUpRequest & { point?: SprayPoint }; reply: AroundReply };
  /** Lays and watches every set-up's coat and keeps them for `comparedAt` and `setUpsReport`. */
  compare: { request: { job: Job; coat: string; setUps: readonly string[]; strokes: StrokeChoice }; reply: CompareReply };
  comparedAt: { request: { index: number; map: ComparedMap }; reply: ComparedAtReply };
  /** A wish worked out; with each proposal the job that it makes. */
  workOut: { request: { job: Job; coat: string; wish: Wish }; reply: { fit: ReportedFit; jobs: readonly Job[] } };
  /** A share of the hands of one set-up: `count` from `first` on. */
  hands: { request: SetUpRequest & { strokes: StrokeChoice; hand: HandSpec; seed: number; first: number; count: number }; reply: { tally: HandsTally; speed_m_s: number } };
  /** The comparison last made as one HTML file. */
  setUpsReport: { request: { job: Job; units: UnitSystem }; reply: { html: string } };
}
