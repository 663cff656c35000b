import { MEASURE_WORDS, MEASURES, pooledHand, shownMeasure, totalText, type HandSample, type Measure, type Score, type ScoreRow, type TaskSpec, type UnitSystem } from '../../../../sim/index.ts';
import { missesOf } from '../../../app/practice/classTable.ts';
import type { TrendBand, TrendPoint } from '../../../charts/trendChart.ts';
import type { ListedSession } from '../../../storage/sessions.ts';

/** Names found in the sessions, in alphabetical order. A session without a name stands under the empty one. */
export function traineesOf(sessions: readonly ListedSession[]): readonly string[] {
  return [...new Set(sessions.map(({ session }) => session.trainee))].sort((a, b) => a.localeCompare(b));
}

export function traineeWords(name: string): string {
  return name === '' ? 'No name given' : name;
}

/** A drill, and how many sessions of it there are. */
export interface DrillSessions {
  /** Tells drills apart; those made from jobs share an id, so their title belongs to it. */
  readonly key: string;
  readonly title: string;
  readonly sessions: readonly ListedSession[];
}

/** The sessions by drill, the drill sprayed last first. `sessions` are newest first. */
export function drillsOf(sessions: readonly ListedSession[]): readonly DrillSessions[] {
  const byKey = new Map<string, ListedSession[]>();
  for (const each of sessions) {
    const { id, title } = each.session.task;
    const key = id === 'own' ? `own ${title}` : id;
    byKey.set(key, [...(byKey.get(key) ?? []), each]);
  }
  return [...byKey].map(([key, drill]) => ({ key, title: drill[0]?.session.task.title ?? key, sessions: drill }));
}

/** One measure over the sessions of a drill, oldest first. */
export interface Trend {
  readonly measure: Measure;
  readonly points: readonly TrendPoint[];
  /** Within the limit by which the newest session was marked; null where it has none. */
  readonly band: TrendBand | null;
  /** That limit in words. */
  readonly limit: string;
}

/** The measures that any of the sessions counts, each over all of them. `sessions` are newest first. */
export function trendsOf(sessions: readonly ListedSession[], system: UnitSystem): readonly Trend[] {
  const oldestFirst = [...sessions].reverse();
  const counted = MEASURES.filter((measure) => sessions.some(({ session }) => session.task.counts.includes(measure)));
  return counted.map((measure) => {
    const limitRow = rowOf(sessions[0], measure);
    return {
      measure,
      points: oldestFirst.map((each) => ({ label: dateWords(each.session.sprayedAt), value: rowOf(each, measure)?.value ?? null })),
      band: limitRow === null ? null : bandOf(limitRow),
      limit: limitRow === null ? '' : limitWords(limitRow, system),
    };
  });
}

function rowOf(listed: ListedSession | undefined, measure: Measure): ScoreRow | null {
  return listed?.score.rows.find((row) => row.measure === measure) ?? null;
}

function bandOf({ limit, none }: Pick<ScoreRow, 'limit' | 'none'>): TrendBand {
  return none > limit ? { from: -Infinity, to: limit } : { from: limit, to: Infinity };
}

/** A limit as words: `limit 12 mm`, `at least 98 %`. */
export function limitWords({ measure, limit, none }: Pick<ScoreRow, 'measure' | 'limit' | 'none'>, system: UnitSystem): string {
  return `${none > limit ? 'limit' : 'at least'} ${shownMeasure(measure, limit, system)}`;
}

/** Whether a session has passed. Where it has not and misses no criterion, strokes are missing. */
export function passWords(task: TaskSpec, score: Score): string {
  if (score.isPassed) return 'passed';
  return missesOf(task, score).length === 0 ? 'not passed: fewer strokes than the task asks for' : 'not passed';
}

/** Total and whether it is passed, or the first criterion missed: `72 %, missed: Gun distance 18 mm, and 2 more`. */
export function resultWords({ session, score }: ListedSession, system: UnitSystem): string {
  const total = totalText(score);
  const [first, ...others] = missesOf(session.task, score);
  if (first === undefined) return `${total}, ${passWords(session.task, score)}`;
  const { title } = MEASURE_WORDS[first.measure];
  const figure = first.cell.kind === 'missed' ? shownMeasure(first.measure, first.cell.value, system) : 'has no limit in the rubric';
  return `${total}, missed: ${title} ${figure}${others.length === 0 ? '' : `, and ${others.length} more`}`;
}

/** The hand over several sessions, and its mean speed, which makes a length of how long an error lasts. */
export interface PersonalHand {
  readonly sample: HandSample;
  readonly sessions: number;
  /** NaN where no speed is known. */
  readonly speed_m_s: number;
}

/** Null without sessions. */
export function personalHand(sessions: readonly ListedSession[]): PersonalHand | null {
  if (sessions.length === 0) return null;
  const known = sessions.filter(({ hand, plannedSpeed_m_s }) => hand.speed.count > 0 && Number.isFinite(plannedSpeed_m_s));
  const weight = known.reduce((sum, { hand }) => sum + hand.speed.count, 0);
  const speed_m_s = known.reduce((sum, { hand, plannedSpeed_m_s }) => sum + plannedSpeed_m_s * (1 + hand.speed.mean) * hand.speed.count, 0) / weight;
  return { sample: pooledHand(sessions.map(({ hand }) => hand)), sessions: sessions.length, speed_m_s };
}

/** Date and time by the reader's own custom. */
export function dateWords(iso: string): string {
  return new Date(iso).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' });
}
