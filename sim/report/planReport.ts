import type { Warning } from '../base/errors.ts';
import { ESTIMATE_STATEMENT } from './cautions.ts';
import { jsonNumber, type JsonValue } from './jsonValue.ts';
import { RESULT_VERSION, warningJson } from './reportJson.ts';
import type { ReportedJob } from './reportText.ts';
import type { ReportedCoat } from './reported.ts';
import { strokeJson } from './strokeJson.ts';
import { strokesTable } from './strokesTable.ts';
import { bulleted, wrapped } from './textLines.ts';
import { shown, shownTime, type UnitSystem } from './units.ts';

/** What a report reads of a coat that was planned and not laid. */
export interface PlannedStrokes {
  readonly setting: Pick<ReportedCoat['setting'], 'coat' | 'panel' | 'setUp' | 'warnings'>;
  readonly strokes: ReportedCoat['strokes'];
}

type PlannedJob = Pick<ReportedJob, 'name' | 'seed' | 'warnings'>;

/** Time with the fluid on, s. */
function sprayTime_s({ strokes }: PlannedStrokes): number {
  return strokes.measures.reduce((sum, { duration_s }) => sum + duration_s, 0);
}

/** The planned strokes as plain text: one line on the coat, its table, its warnings; lines joined, one newline at the end. */
export function planText(coats: readonly PlannedStrokes[], job: PlannedJob, system: UnitSystem): string {
  const { warnings = [] } = job;
  const lines = [
    ...coats.flatMap((coat) => [...coatLines(coat, system), '']),
    ...(warnings.length === 0 ? [] : [...bulleted('The job file', warnings.map(({ text }) => text)), '']),
    ...wrapped('Strokes and passes are numbered from 1. On and off: where the fluid opens and closes, outside the edge (negative: inside).'),
    ...wrapped(ESTIMATE_STATEMENT),
  ];
  return `${lines.join('\n')}\n`;
}

function coatLines(coat: PlannedStrokes, system: UnitSystem): string[] {
  const { setting, strokes } = coat;
  const seconds = sprayTime_s(coat);
  const warnings = plannedWarnings(coat).map(({ text }) => text);
  return [
    ...wrapped(
      `${setting.panel.name}: ${setting.coat.name}, ${setting.setUp.name}: ${strokes.measures.length} strokes, ` +
        `fluid on for ${shownTime(seconds)}, ${shown(seconds * setting.setUp.fluidRate_m3_s, 'volume', system)} of paint.`,
    ),
    '',
    ...strokesTable(strokes.measures, system),
    ...(warnings.length === 0 ? [] : ['', ...bulleted('Warnings', warnings)]),
  ];
}

function plannedWarnings({ setting, strokes }: PlannedStrokes): Warning[] {
  return [...setting.warnings, ...strokes.warnings];
}

/** The planned strokes as one JSON object, keyed as in the result of a coat. */
export function planJson(coats: readonly PlannedStrokes[], job: PlannedJob): { readonly [key: string]: JsonValue } {
  return {
    schemaVersion: RESULT_VERSION,
    job: job.name,
    seed: job.seed,
    estimate: ESTIMATE_STATEMENT,
    warnings: [...(job.warnings ?? []), ...coats.flatMap(plannedWarnings)].map(warningJson),
    panels: coats.map((coat) => ({
      panel: coat.setting.panel.id,
      coat: coat.setting.coat.id,
      setUp: coat.setting.setUp.id,
      sprayTime_s: jsonNumber(sprayTime_s(coat)),
      sprayed_mL: jsonNumber(sprayTime_s(coat) * coat.setting.setUp.fluidRate_m3_s, 1e-6),
      strokes: coat.strokes.measures.map(strokeJson),
      warnings: plannedWarnings(coat).map(warningJson),
    })),
  };
}
