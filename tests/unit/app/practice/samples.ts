import { demoJob } from '../../../../sim/job/demo.ts';
import type { Measure } from '../../../../sim/job/measures.ts';
import { USUAL_RUBRIC } from '../../../../sim/job/rubric.ts';
import type { SessionSpec } from '../../../../sim/job/session.ts';
import type { HandSample, Wander } from '../../../../sim/stroke/handStatistics.ts';
import { rubricFromSpec, scoreSession, type Score, type SessionFigures } from '../../../../sim/verdict/score.ts';
import type { KeptSession, ListedSession } from '../../../../src/storage/sessions.ts';
import type { ClassReply } from '../../../../src/worker/protocol.ts';

const COUNTS: Measure[] = ['distance', 'coverage'];

/** A session of the demo job's first coat, made up. */
export function session(over: Partial<SessionSpec> = {}): SessionSpec {
  const job = demoJob();
  return {
    sessionVersion: 1,
    id: 'session-1',
    trainee: 'Trainee A',
    name: '',
    sprayedAt: '2026-03-01T09:30:00Z',
    task: { id: 'flat-panel', title: 'Flat panel', coat: job.coats[0]!.id, counts: COUNTS, watch_s: 0, wait_s: 0 },
    job,
    strokes: 't_s,x_mm,y_mm,z_mm,fan_deg,pitch_deg,yaw_deg,trigger\n0,0,0,200,90,0,0,1\n',
    ...over,
  };
}

const NONE: SessionFigures = {
  distance: null, speed: null, angle: null, overlap: null, trigger: null, stops: null, coverage: null, evenness: null, runs: null, 'dry-laps': null, dust: null, paint: null, time: null,
};

/** Marks by the usual rubric; a figure left out was not measured. */
export function score(figures: Partial<SessionFigures>, counts: readonly Measure[] = COUNTS): Score {
  return scoreSession({ ...NONE, ...figures }, rubricFromSpec(USUAL_RUBRIC), counts);
}

export function hand(over: Partial<HandSample> = {}): HandSample {
  const wander: Wander = { mean: 0.01, deviation: 0.02, correlation_s: 0.5, count: 100 };
  return { distance_m: wander, across_m: wander, speed: wander, tilt_rad: wander, overlap: { ...wander, correlation_s: NaN }, ...over };
}

export function keptSession(over: Partial<SessionSpec> = {}, marks: Score = score({ distance: 0.01, coverage: 0.99 })): KeptSession {
  return { session: session(over), score: marks, hand: hand(), keptAt: '2026-03-01T09:45:00Z' };
}

export function listedSession(over: Partial<SessionSpec> = {}, marks?: Score): ListedSession {
  const { session: whole, ...kept } = keptSession(over, marks);
  const { job, strokes, ...head } = whole;
  return { ...kept, session: head, plannedSpeed_m_s: strokes === '' ? NaN : job.coats[0]!.plan.speed_m_s };
}

export function classReply(id: string, marks: Score): ClassReply {
  const field = {
    kind: 'target' as const, grid: { columns: 1, rows: 1, cellSize_m: 0.01 }, values: Float32Array.of(1), domain: [0, 2] as const, isClipped: false, unit: 'fraction' as const, isLog: false, title: 'film against target', marks: [], colours: new Uint8Array(1024),
  };
  return { id, score: marks, hand: hand(), map: field };
}
