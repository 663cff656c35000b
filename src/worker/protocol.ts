import type { Field, FieldKind, Film, HandSample, Job, LifeVerdict, MomentFieldKind, MomentFigures, PanelSpec, ReportedCoat, ReportedDebrief, ReportedSide, ReportedWhatIf, RubricSpec, Score, SessionSpec, StrokeLine, UnitSystem, Verdict, Warning, WhatIfHabit } from '../../sim/index.ts';
import type { GunScene } from '../canvas/scene.ts';
import type { Problem } from '../app/problem.ts';
import type { CardMessages } from './cardMessages.ts';
import type { RecordMessages } from './recordMessages.ts';
import type { SchemeMessages } from './schemeMessages.ts';
import type { SetUpMessages } from './setUpMessages.ts';
import type { SurveyMessages } from './surveyMessages.ts';

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

/** The film's life, judged. */
export interface LifeVerdictReply {
  readonly version: number;
  readonly verdict: LifeVerdict;
  readonly curesTried: boolean;
}

/** The film and the gun at one time of the replay. */
export interface ReplayReply {
  readonly version: number;
  readonly time_s: number;
  readonly film: Film;
  readonly gun: GunScene | null;
}

/** How far a coat's life has been watched, and what was seen; times since the first row of the path, s. */
export interface LifeReply {
  readonly version: number;
  /** When the gun is put away. */
  readonly sprayed_s: number;
  readonly watched_s: number;
  /** False while there is more to watch: ask again. */
  readonly isWhole: boolean;
  /** When nearly all of the film is dry to touch, and ready for another coat; null where that was not seen. */
  readonly touchDry_s: number | null;
  readonly recoat_s: number | null;
}

/** The film at one time of its life. */
export interface MomentReply {
  readonly version: number;
  /** As asked; the film's own time is up to a quarter of a second later while the gun is at work. */
  readonly time_s: number;
  readonly field: Field;
  readonly wet_m: Float32Array;
  readonly dry_m: Float32Array;
  readonly figures: MomentFigures;
  /** Cells whose film has run, to be outlined. */
  readonly ran: Uint32Array;
  readonly gun: GunScene | null;
}

/** What each stroke laid at one place, wet, m. Strokes that laid nothing there are left out. */
export interface StrokesAt {
  readonly version: number;
  readonly at_m: readonly [number, number];
  readonly strokes: readonly { readonly stroke: number; readonly wet_m: number }[];
}

/** A demonstration, run: its sides at the end of the watch, and their maps at each of the times. */
export interface LessonReply {
  /** The side at the knob, the cured one, other cures. */
  readonly sides: readonly ReportedSide[];
  readonly times_s: readonly number[];
  /** Legend and colours of every map; without values, which the maps hold. */
  readonly field: Field;
  /** One map a time, by side. */
  readonly maps: readonly (readonly Float32Array[])[];
}

/** A practice session looked through, with what its pictures need. */
export interface DebriefReply {
  /** Id of the session. */
  readonly id: string;
  readonly reported: ReportedDebrief;
  /** Aim lines with fluid on, thinned for drawing. */
  readonly lines: readonly StrokeLine[];
  /** First and last row of the path. */
  readonly start_s: number;
  readonly end_s: number;
  /** Film against the target: as sprayed and as planned, one legend for both. */
  readonly sprayed: Field;
  readonly planned: Field;
  /** This hand, as far as one session shows it. */
  readonly hand: HandSample;
}

/** The session last debriefed, sprayed again without one habit. */
export interface WhatIfReply {
  readonly id: string;
  readonly reported: ReportedWhatIf;
  readonly field: Field;
}

/** What a class table needs of one session: its marks and a small map. */
export interface ClassReply {
  readonly id: string;
  readonly score: Score;
  readonly hand: HandSample;
  readonly map: Field;
}

/** The film and the gun at one time of a session's replay. */
export interface SessionAtReply {
  readonly id: string;
  readonly time_s: number;
  readonly field: Field;
  readonly gun: GunScene | null;
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
export interface Messages extends SetUpMessages, CardMessages, SchemeMessages, SurveyMessages, RecordMessages {
  /** Reads a recording whole, keeps it, and says what is in it. */
  recording: { request: { id: string; name: string; text: string }; reply: RecordingFacts };
  /** Whether a panel can be made as stated; a problem says why not, and where. */
  panel: { request: { panel: PanelSpec; pointer: string }; reply: { area_m2: number } };
  film: { request: CoatRequest; reply: FilmReply };
  verdict: { request: CoatRequest & { cures: boolean }; reply: VerdictReply };
  /** The faults of the film's life; without cures first, then with them. */
  lifeVerdict: { request: CoatRequest & { cures: boolean }; reply: LifeVerdictReply };
  replay: { request: CoatRequest & { until_s: number }; reply: ReplayReply };
  /** Watches the coat's life for a while longer and says how far; ask until it is whole. */
  liveOpen: { request: CoatRequest; reply: LifeReply };
  /** The film at one time. Of several that wait, only the newest is answered. */
  liveAt: { request: CoatRequest & { time_s: number; field: MomentFieldKind }; reply: MomentReply };
  /** Lets go of the life's memory. */
  liveClose: { request: Record<string, never>; reply: Record<string, never> };
  /** Runs a demonstration and keeps it. Of several that wait, the page sends only the newest. */
  lesson: { request: { id: string; knob: number; times: number }; reply: LessonReply };
  /** The figures of the demonstration that was last run, at one of its times. */
  lessonAt: { request: { index: number }; reply: { sides: readonly ReportedSide[] } };
  /** Looks a practice session through and keeps it for `whatIf` and `sessionAt`. */
  debrief: { request: { session: SessionSpec; rubric: RubricSpec }; reply: DebriefReply };
  whatIf: { request: { id: string; habit: WhatIfHabit }; reply: WhatIfReply };
  sessionAt: { request: { id: string; time_s: number }; reply: SessionAtReply };
  /** Marks one session of a class; nothing is kept. Coarser cells: a small map. */
  classRow: { request: { session: SessionSpec; rubric: RubricSpec }; reply: ClassReply };
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
