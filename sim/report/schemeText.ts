import type { Preset } from '../scheme/preset.ts';
import type { StepSpec } from '../job/schema.ts';
import { counted } from '../base/counted.ts';
import { ESTIMATE_STATEMENT } from './cautions.ts';
import type { ReportedScheme } from './reportedScheme.ts';
import { schemeFindingWords, SEVERITY_WORDS } from './schemeRuleWords.ts';
import { hidingSentences, ledgerRows, lightSentence, stepHead, stepRow, STRENGTH_NOTE, strengthSentences, totalSentences } from './schemeSections.ts';
import { COAT_DEFINITIONS, COAT_DEFINITIONS_SOURCE, FIELD_LIGHT_RULE, LEAVING_OUT, NOT_CHECKED, stepDetails, STEP_KIND_WORDS, waitWords } from './schemeWords.ts';
import { bulleted, wrapped } from './textLines.ts';
import { textTable } from './textTable.ts';
import { shownTemperature, type UnitSystem } from './units.ts';
import { listed } from './words.ts';

/** A scheme as plain text; lines joined, one newline at the end. */
export function schemeText(report: ReportedScheme, system: UnitSystem): string {
  const { plan } = report;
  const light = lightSentence(report, system);
  const hiding = hidingSentences(report, system);
  const strength = strengthSentences(report.strength, system);
  const lines = [
    ...wrapped(schemeHead(report, system)), '',
    ...textTable([stepHead(system), ...plan.steps.map((step, k) => stepRow(step, k, system))]), '',
    ...totalSentences(report, system).flatMap((text) => wrapped(text)), '',
    ...textTable(ledgerRows(report, system)), '',
    ...findingLines(report, system), '',
    ...(hiding.length === 0 ? [] : [...bulleted('Hiding (Kubelka and Munk 1931: light and dark, not hue):', hiding), '']),
    ...(light === null ? [] : [...wrapped(`${light} ${FIELD_LIGHT_RULE}`), '']),
    ...bulleted('What a coat is:', COAT_DEFINITIONS.map(([word, meaning]) => `${word}: ${meaning}`)),
    ...wrapped(COAT_DEFINITIONS_SOURCE), '',
    ...bulleted('Where each figure comes from:', originLines(report, system)), '',
    ...bulleted('Not looked into:', NOT_CHECKED), '',
    ...(strength.length === 0 ? [] : [...bulleted('Strength of the cloth:', strength), ...wrapped(STRENGTH_NOTE), '']),
    ...plan.warnings.flatMap(({ text }) => wrapped(text)),
    ...wrapped(`${LEAVING_OUT} ${ESTIMATE_STATEMENT}`),
  ];
  return `${lines.join('\n')}\n`;
}

/** What the scheme is of, in which air. */
export function schemeHead({ plan: { scheme, air, steps } }: ReportedScheme, system: UnitSystem): string {
  const coats = steps.filter(({ coat }) => coat !== null).length;
  const source = scheme.source === undefined ? '' : ` ${scheme.source}.`;
  return `${scheme.name}: ${counted(steps.length, 'step')}, ${counted(coats, 'coat')}, on ${scheme.panels.join(', ')}${scheme.sides === 2 ? ', both sides' : ''}. Drying at ${shownTemperature(air.temperature_K, system)}; waits as stated for 70 °F.${source}`;
}

function findingLines({ findings, plan }: ReportedScheme, system: UnitSystem): string[] {
  if (findings.length === 0) return wrapped('The rules that could be checked find nothing against it.');
  return bulleted('Against it, gravest first:', findings.map((finding) => {
    const { title, found, act } = schemeFindingWords(finding, system);
    const step = plan.steps[finding.stepIndex]?.spec.name ?? '';
    return `${SEVERITY_WORDS[finding.severity]}: ${title}, step ${finding.stepIndex + 1} (${step}). ${found} ${act} Whose rule: ${finding.source}.`;
  }));
}

/** For each step its details and source; then how films and drying are known, once for the steps that share it. */
function originLines({ plan }: ReportedScheme, system: UnitSystem): string[] {
  const steps = plan.steps.map(({ spec }, k) =>
    `${k + 1}. ${[STEP_KIND_WORDS[spec.kind], ...stepDetails(spec, system)].join(', ')}. ${spec.source === undefined ? 'No source is stated.' : `Source: ${spec.source}.`}`);
  const shared = new Map<string, number[]>();
  for (const [k, { coat }] of plan.steps.entries()) {
    if (coat === null) continue;
    for (const words of [`Film: ${coat.filmOrigin.words}.`, `Drying: ${coat.dryOrigin.words}.`]) shared.set(words, [...(shared.get(words) ?? []), k + 1]);
  }
  return [...steps, ...[...shared].map(([words, numbers]) => `Step ${listed(numbers.map(String))}. ${words}`)];
}

/** A preset's steps with their sources as plain text. */
export function presetText(preset: Preset, steps: readonly StepSpec[], system: UnitSystem): string {
  const lines = [
    ...wrapped(`${preset.name}. ${preset.note} Source: ${preset.source}.`), '',
    ...steps.flatMap((step, k) => [
      ...wrapped(`${k + 1}. ${step.name}`, '', '   '),
      ...wrapped(`${[STEP_KIND_WORDS[step.kind], ...stepDetails(step, system), waitWords(step)].join(', ')}. Source: ${step.source ?? 'none stated'}.`, '   '),
      ...(step.note === undefined ? [] : wrapped(step.note, '   ')),
    ]), '',
    ...wrapped(`It needs a mix of ${[...new Set(preset.needs.map(({ finish }) => finish))].join(', ')}, and a coat on the panel that says set-up and strokes.`),
    ...wrapped(`${LEAVING_OUT} ${ESTIMATE_STATEMENT}`),
  ];
  return `${lines.join('\n')}\n`;
}
