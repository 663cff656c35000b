import { changeLines, momentShown, SIGNATURE_STATE_WORDS } from './changeWords.ts';
import { entryCautions, entryLines, LOG_KIND_WORDS } from './logWords.ts';
import type { ReportedEntry } from './reportedLog.ts';
import { bulleted, wrapped } from './textLines.ts';
import type { UnitSystem } from './units.ts';

/** A log as plain text, entries in their order; lines joined, one newline at the end. */
export function logText(entries: readonly ReportedEntry[], system: UnitSystem): string {
  if (entries.length === 0) return 'The log has no entries.\n';
  return `${entries.flatMap((each, k) => [...(k === 0 ? [] : ['']), ...entryText(each, k, system)]).join('\n')}\n`;
}

function entryText(reported: ReportedEntry, place: number, system: UnitSystem): string[] {
  const { entry, signature } = reported;
  const { signed } = entry;
  const cautions = entryCautions(reported, system);
  return [
    ...wrapped(`${place + 1}. ${entry.name} (${LOG_KIND_WORDS[entry.kind].toLowerCase()})`),
    ...entryLines(reported, system).flatMap(({ head, text }) => wrapped(`${head}: ${text}`, '   ', '     ')),
    ...(cautions.length === 0 ? [] : bulleted('   Look at again', cautions)),
    ...(entry.history.length === 0 ? [] : bulleted('   Changes', changeLines(entry.history, system).map(({ when, what, before }) => `${when}: ${what}; before: ${before}`))),
    ...(signed === undefined ? ['   Not signed.'] : [
      ...wrapped(`Signed ${momentShown(signed.at)} by ${signed.who}${signed.certificate === undefined ? '' : `, certificate ${signed.certificate}`}${signed.words === undefined ? '' : `: "${signed.words}"`}`, '   ', '     '),
      `   Digest ${signed.sha256}`,
      ...wrapped(SIGNATURE_STATE_WORDS[signature], '   ', '     '),
    ]),
  ];
}
