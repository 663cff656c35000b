import type { Warning } from '../base/errors.ts';
import type { PaintAccount } from '../deposit/deposit.ts';
import type { HandSpec } from '../job/schema.ts';
import type { Target } from '../verdict/target.ts';
import type { Fault, FilmFigures } from '../verdict/verdict.ts';
import { ESTIMATE_STATEMENT, SPRAY_CAUTIONS } from './cautions.ts';
import { LIFE_LIMITS, lifeLines } from './lifeReport.ts';
import { coatWarnings, lostPaint_m3, type ReportedCoat } from './reported.ts';
import { faultSentences, verdictSentence } from './sentences.ts';
import { bulleted, wrapped } from './textLines.ts';
import { textTable } from './textTable.ts';
import { shown, shownNumber, shownPercent, shownUnit, type UnitSystem } from './units.ts';

/** Beyond this many the report only counts them; the JSON has them all. */
const MOST_FAULTS = 12;

/** What the report says of the job itself. */
export interface ReportedJob {
  readonly name: string;
  readonly seed: number;
  /** Doubts that arose in reading the job; none where not given. */
  readonly warnings?: readonly Warning[];
  /** Whether cures were tried at all, true where not given; where not, none are spoken of. */
  readonly curesTried?: boolean;
}

/**
 * The plain-text report of a job's coats: for each one sentence, the figures, the faults with
 * cause and cure, the warnings; then the cautions, the seed and what the figures are worth.
 * @returns lines joined by newlines, one at the end.
 */
export function reportText(coats: readonly ReportedCoat[], job: ReportedJob, system: UnitSystem): string {
  const { warnings = [], curesTried = true } = job;
  const lines = [
    ...coats.flatMap((coat) => [...coatLines(coat, curesTried, system), '']),
    ...(warnings.length === 0 ? [] : [...bulleted('The job file', warnings.map(({ text }) => text)), '']),
    ...bulleted('Before spraying', SPRAY_CAUTIONS),
    '',
    ...wrapped(`Strokes are numbered from 1 in the order sprayed; places are from the lower left of the panel, x right, y up. Seed ${job.seed}.`),
    ...(coats.some(({ life }) => life !== undefined) ? wrapped(LIFE_LIMITS) : []),
    ...wrapped(ESTIMATE_STATEMENT),
  ];
  return `${lines.join('\n')}\n`;
}

function coatLines(coat: ReportedCoat, curesTried: boolean, system: UnitSystem): string[] {
  const { setting, strokes, verdict, laid } = coat;
  const laidBy = strokes.source === 'recording' ? 'as recorded' : handWords(setting.coat.hand);
  return [
    `${setting.panel.name}: ${setting.coat.name}, ${setting.setUp.name}, ${countedStrokes(strokes.measures.length)} ${laidBy}`,
    ...wrapped(verdictSentence(coat, system)),
    '',
    ...figureTable(verdict.wet, verdict.dry, system),
    ...wrapped(targetLine(setting.target, verdict.inTargetFraction, system)),
    ...wrapped(paintLine(laid.account, system)),
    ...(coat.life === undefined ? [] : lifeLines(coat.life, system)),
    ...faultLines(coat, curesTried, system),
    ...warningLines(coat),
  ];
}

/** The hand that laid a plan. */
function handWords(hand: HandSpec): string {
  switch (hand.kind) {
    case 'steady':
      return 'as planned';
    case 'own':
      return `by the hand of ${hand.name}`;
    case 'practised':
    case 'beginner':
      return `by a ${hand.kind} hand`;
  }
}

function countedStrokes(count: number): string {
  return count === 1 ? '1 stroke' : `${count} strokes`;
}

function figureTable(wet: FilmFigures, dry: FilmFigures, system: UnitSystem): string[] {
  const row = (name: string, film: FilmFigures) => [
    name,
    ...[film.mean_m, film.min_m, film.max_m].map((value) => shownNumber(value, 'film', system)),
    shownPercent(film.cv),
  ];
  return textTable([[`film, ${shownUnit('film', system).name}`, 'mean', 'least', 'most', 'variation (CV)'], row('wet', wet), row('dry', dry)]);
}

function targetLine(target: Target, inTargetFraction: number, system: UnitSystem): string {
  const [least, most] = [target.minFraction, target.maxFraction].map((share) => shownNumber(share * target.thickness_m, 'film', system)) as [string, string];
  return `Inside the limits: ${shownPercent(inTargetFraction)} of the panel (target ${shown(target.thickness_m, 'film', system)} ${target.film}, from ${least} to ${most}).`;
}

function paintLine(account: PaintAccount, system: UnitSystem): string {
  const volume = (value_m3: number) => shownNumber(value_m3, 'volume', system);
  return (
    `Paint: ${shown(account.sprayed_m3, 'volume', system)} sprayed, ${volume(account.landed_m3)} landed, ${volume(lostPaint_m3(account))} lost ` +
    `(${volume(account.fog_m3)} in the fog, ${volume(account.missed_m3)} beside the panel, ${volume(account.flight_m3)} dried off in flight).`
  );
}

function faultLines(coat: ReportedCoat, curesTried: boolean, system: UnitSystem): string[] {
  const { verdict, life } = coat;
  const inTime = life?.verdict.faults ?? [];
  return [
    ...listedFaults('Faults, worst first', verdict.faults, 1, coat, curesTried, system),
    ...listedFaults('Faults of the film in time, worst first', inTime, verdict.faults.length + 1, coat, curesTried, system),
  ];
}

function listedFaults(head: string, faults: readonly Fault[], first: number, { setting }: ReportedCoat, curesTried: boolean, system: UnitSystem): string[] {
  if (faults.length === 0) return [];
  const shownFaults = faults.slice(0, MOST_FAULTS);
  const lines = shownFaults.flatMap((fault, index) => {
    const { what, cause, cure } = faultSentences(fault, setting.target, system);
    return [...wrapped(what, `${index + first}. `, '   '), ...wrapped(`Cause: ${cause}`, '   '), ...(curesTried ? wrapped(`Cure: ${cure}`, '   ') : [])];
  });
  const rest = faults.length - shownFaults.length;
  return ['', head, ...lines, ...(rest > 0 ? [`   and ${rest} more, all in the JSON result`] : [])];
}

function warningLines(coat: ReportedCoat): string[] {
  const warnings = coatWarnings(coat);
  return warnings.length === 0 ? [] : ['', ...bulleted('Warnings', warnings.map(({ text }) => text))];
}
