import type { FieldKind, Film, Job, PanelSpec, ReportedCoat, StrokeLine, UnitSystem, Verdict, Warning } from '../../sim/index.ts';
import type { GunScene } from '../canvas/scene.ts';
import type { Problem } from '../app/problem.ts';

/** The first answer to a change: the film and the strokes that laid it, not yet judged. */
export interface FilmReply extends Omit<ReportedCoat, 'verdict'> {
  readonly version: number;
  /** Aim lines with fluid on, thinned for drawing. */
  readonly lines: readonly StrokeLine[];
  readonly start_s: number;
  readonly end_s: number;
  /** Figures of the film, known before its faults are. */
  readonly figures: Pick<Verdict, 'wet' | 'dry' | 'inTargetFraction'>;
}

/** The second answer; sent without cures first, then again with them. */
export interface VerdictReply {
  readonly version: number;
  readonly verdict: Verdict;
  readonly curesTried: boolean;
}

/** The film and the gun at one time of the replay. */
export interface ReplayReply {
  readonly version: number;
  readonly time_s: number;
  readonly film: Film;
  readonly gun: GunScene | null;
}

/** What each stroke laid at one place, wet, m. Strokes that laid nothing there are left out. */
export interface StrokesAt {
  readonly version: number;
  readonly at_m: readonly [number, number];
  readonly strokes: readonly { readonly stroke: number; readonly wet_m: number }[];
}

export interface RecordingFacts {
  readonly id: string;
  readonly rows: number;
  readonly duration_s: number;
  readonly warnings: readonly Warning[];
}

export type ExportKind = 'map-png' | 'strokes-svg' | 'film-csv' | 'strokes-csv' | 'results-json';

/**
 * One coat of one version of the job. Recordings' texts are left out: the worker was given them.
 * A worker lays a version once, whatever is asked of it.
 */
export interface CoatRequest {
  readonly version: number;
  readonly job: Job;
  readonly coat: string;
}

/** Every message between page and worker: name, what is asked, what comes back. */
export interface Messages {
  /** Reads a recording whole, keeps it, and says what is in it. */
  recording: { request: { id: string; name: string; text: string }; reply: RecordingFacts };
  /** Whether a panel can be made as stated; a problem says why not, and where. */
  panel: { request: { panel: PanelSpec; pointer: string }; reply: { area_m2: number } };
  film: { request: CoatRequest; reply: FilmReply };
  verdict: { request: CoatRequest & { cures: boolean }; reply: VerdictReply };
  replay: { request: CoatRequest & { until_s: number }; reply: ReplayReply };
  strokesAt: { request: CoatRequest & { at_m: readonly [number, number] }; reply: StrokesAt };
  exportFile: { request: CoatRequest & { kind: ExportKind; field: FieldKind; units: UnitSystem }; reply: { blob: Blob } };
}

export type MessageName = keyof Messages;

/** To the worker. `id` pairs the reply with the request. */
export type Asked = {
  [Name in MessageName]: { readonly id: number; readonly name: Name; readonly request: Messages[Name]['request'] };
}[MessageName];

/** From the worker. `stale`: a newer version made the answer useless. */
export type Answered =
  | { readonly id: number; readonly kind: 'reply'; readonly reply: Messages[MessageName]['reply'] }
  | { readonly id: number; readonly kind: 'problem'; readonly problem: Problem }
  | { readonly id: number; readonly kind: 'stale' };
