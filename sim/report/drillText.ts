import type { CoatSpec, Job } from '../job/schema.ts';
import type { TaskSpec } from '../job/session.ts';
import { ESTIMATE_STATEMENT } from './cautions.ts';
import { wrapped } from './textLines.ts';
import { shown, shownNumber, shownPercent, shownTime, type UnitSystem } from './units.ts';

/** A drill as a report reads it. */
export interface ReportedDrill extends Readonly<TaskSpec> {
  readonly task: string;
  readonly criterion: string;
  readonly evidence: string;
  readonly source: string;
  readonly caution: string;
  readonly job: () => Job;
}

const M_PER_MM = 1e-3;
const M_PER_UM = 1e-6;
const PERCENT = 0.01;

/** The coat of its job that a drill asks for; null for a drill whose job has no such coat. */
export function drillCoat({ job, coat }: ReportedDrill): CoatSpec | null {
  return job().coats.find(({ id }) => id === coat) ?? null;
}

/** One line a drill: its number from 1, its id, its title. */
export function drillList(drills: readonly ReportedDrill[]): string {
  const idWidth = Math.max(...drills.map(({ id }) => id.length));
  const numberWidth = String(drills.length).length;
  return drills.map(({ id, title }, i) => `${String(i + 1).padStart(numberWidth)}  ${id.padEnd(idWidth)}  ${title}\n`).join('');
}

/**
 * A drill as plain text: what to do, what must be so and how it shows, where that is from, the
 * caution, and what the plan means. @param number its place in the list, from 1.
 */
export function drillText(drill: ReportedDrill, number: number, system: UnitSystem): string {
  const { title, task, criterion, evidence, source, caution, watch_s, wait_s } = drill;
  const coat = drillCoat(drill);
  const lines: [string, string][] = [
    ['Task', task],
    ['Criterion', criterion],
    ['Evidence', evidence],
    ['Source', source],
    ['Caution', caution],
    ...(coat === null ? [] : meantLines(coat, system)),
    ...(wait_s > 0 ? [['Wait', `${shownTime(wait_s)}, which the task itself asks for.`] as [string, string]] : []),
    ...(watch_s > 0 ? [['Watched', `the film for ${shownTime(watch_s)} after the gun is put away.`] as [string, string]] : []),
  ];
  const width = Math.max(...lines.map(([label]) => label.length)) + 2;
  return [
    `${number}. ${title}`,
    '',
    ...lines.flatMap(([label, words]) => wrapped(words, `${label}:`.padEnd(width), ' '.repeat(width))),
    '',
    ...wrapped(ESTIMATE_STATEMENT),
    '',
  ].join('\n');
}

function meantLines({ plan, target }: CoatSpec, system: UnitSystem): [string, string][] {
  const film = (percent: number): string => shownNumber(target.thickness_um * M_PER_UM * percent * PERCENT, 'film', system);
  const passes = plan.cross ? 'two passes at right angles' : 'one pass';
  return [
    ['Meant', `${shown(plan.distance_mm * M_PER_MM, 'length', system)} from the board, ${shown(plan.speed_m_s, 'speed', system)}, overlap ${shownPercent(plan.overlap_percent * PERCENT)}, ${passes}.`],
    ['Target', `${shown(target.thickness_um * M_PER_UM, 'film', system)} ${target.film}, from ${film(target.min_percent)} to ${film(target.max_percent)}.`],
  ];
}
