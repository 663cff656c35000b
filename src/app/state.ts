import { signal } from '@preact/signals';
import { freshJobId } from '../storage/freshJobId.ts';
import { demoJob, type FieldKind, type Job, type MomentFieldKind, type UnitSystem } from '../../sim/index.ts';
import { USUAL_JOBS, type JobsPrefs } from './jobs/jobsPrefs.ts';
import { USUAL_LOG, type LogPrefs } from './log/logPrefs.ts';
import { USUAL_PREFS, type PracticePrefs } from './practicePrefs.ts';
import type { Notice, Problem } from './problem.ts';
import { USUAL_SCHEME, type SchemePrefs } from './scheme/schemePrefs.ts';
import { USUAL_SET_UPS, type SetUpsPrefs } from './setups/setUpsPrefs.ts';
import { USUAL_SURVEY, type SurveyPrefs } from './survey/surveyPrefs.ts';
import { USUAL_TODAY_PREFS, type TodayPrefs } from './today/todayPrefs.ts';
import type { FilmReply, LifeReply, LifeVerdictReply, MomentReply, ReplayReply, StrokesAt, VerdictReply } from '../worker/protocol.ts';

/** A step of the job's history: the job before (or after) it and what the step was. */
export interface HistoryStep {
  readonly job: Job;
  readonly label: string;
  /** The step put another job in place of this one, rather than change it: the id under which `job` is kept. */
  readonly replaces?: string;
}

/** The stages of the work, in the order the trade does it. */
export const STAGE_NAMES = ['part', 'mix', 'air', 'gun', 'strokes'] as const;
export type StageName = (typeof STAGE_NAMES)[number];
/** Times real time at which the film's life is played. */
export const TIME_SPEEDS = [1, 10, 30, 100] as const;
export type Theme = 'system' | 'light' | 'dark';
/** A line on the panel, x0, y0, x1, y1, m. */
export type SectionLine = readonly [number, number, number, number];

/** What the verdict shows as chosen: a fault, and one of its zones. */
export interface ChosenFault {
  readonly fault: number;
  readonly zone: number;
}

/** Text as typed, and what is wrong with it. */
export interface Draft {
  readonly text: string;
  readonly problem: string | null;
}

/** Everything the page knows. `keptIn` in stateTable.ts says where each key lives on. */
export const state = {
  job: signal<Job>(demoJob()),
  /** The id under which the browser keeps the job in hand. */
  jobId: signal(freshJobId()),
  past: signal<readonly HistoryStep[]>([]),
  future: signal<readonly HistoryStep[]>([]),
  /** What is being typed, or was typed and is no value, by the field's pointer. */
  drafts: signal<Readonly<Record<string, Draft>>>({}),
  coatId: signal(''),
  stage: signal<StageName>('strokes'),
  field: signal<FieldKind>('target'),
  /** What is drawn over the film. */
  drawnOver: signal<Readonly<Record<'strokes' | 'faults', boolean>>>({ strokes: true, faults: true }),
  units: signal<UnitSystem>('metric'),
  theme: signal<Theme>('system'),
  /** The section line of each panel, by its id and size. */
  sections: signal<Readonly<Record<string, SectionLine>>>({}),
  /** Cautions that the reader has read and folded away once. */
  foldedCautions: signal<readonly string[]>([]),
  practice: signal<PracticePrefs>(USUAL_PREFS),
  /** What is looked at of the gun set-ups. */
  setUps: signal<SetUpsPrefs>(USUAL_SET_UPS),
  /** What is looked at of the scheme. */
  scheme: signal<SchemePrefs>(USUAL_SCHEME),
  /** What is typed on the front sheet. */
  today: signal<TodayPrefs>(USUAL_TODAY_PREFS),
  /** What is looked at of the surveys. */
  survey: signal<SurveyPrefs>(USUAL_SURVEY),
  /** What is looked at of the log, and who writes. */
  log: signal<LogPrefs>(USUAL_LOG),
  /** What is looked at of the jobs, and under which digests they were handed over. */
  jobs: signal<JobsPrefs>(USUAL_JOBS),
  film: signal<FilmReply | null>(null),
  verdict: signal<VerdictReply | null>(null),
  replay: signal<ReplayReply | null>(null),
  replay_s: signal<number | null>(null),
  playing: signal(false),
  playSpeed: signal<1 | 4>(1),
  /** The panel shows the film at one time of its life, not as laid. */
  inTime: signal(false),
  /** That time, since the first row of the path. */
  filmTime_s: signal(0),
  timePlaying: signal(false),
  timeSpeed: signal<(typeof TIME_SPEEDS)[number]>(10),
  momentField: signal<MomentFieldKind>('wet-now'),
  /** What is known of the coat's life so far. */
  life: signal<LifeReply | null>(null),
  moment: signal<MomentReply | null>(null),
  lifeVerdict: signal<LifeVerdictReply | null>(null),
  chosenFault: signal<ChosenFault | null>(null),
  chosenStrokes: signal<readonly number[]>([]),
  probe_m: signal<readonly [number, number] | null>(null),
  strokesAt: signal<StrokesAt | null>(null),
  /** The newest job does not run: why, while the film stays on the last good one, if there was one. */
  jobProblem: signal<Problem | null>(null),
  /** Something the reader asked for did not work; stays until dismissed. */
  notice: signal<Notice | null>(null),
  storageProblem: signal<string | null>(null),
  working: signal(false),
};

export type StateKey = keyof typeof state;
