import type { ReportedRecord } from '../../record/reportedRecord.ts';
import { escaped } from '../escape.ts';
import type { PagePart } from '../page.ts';
import { BLANK_LINE, filledOrBlank, wordsTable } from './linesHtml.ts';

/** Said over the fields that may not stay blank. */
const SIGN_NOTE =
  'No field here may stay blank on the sheet that is kept (after 14 CFR 43.9, from memory): where nothing was entered there is a line to write on. Who may sign, and for what, is for the rules of the place and the licensed person.';

/** Who did what when, one row an entry, and the lines that the responsible person fills in by hand. */
export function signPart({ job, log }: ReportedRecord): PagePart {
  const rows = log.map(({ entry }) => [
    escaped((entry.ended ?? entry.started).slice(0, 10)),
    filledOrBlank(entry.name),
    filledOrBlank(entry.who),
    filledOrBlank(entry.certificate),
    entry.signed === undefined ? BLANK_LINE : `${escaped(entry.signed.who)}, ${filledOrBlank(entry.signed.certificate)}`,
  ]);
  const table = rows.length === 0 ? '' : wordsTable(['Date', 'Work', 'Done by', 'Certificate number', 'Signed off by, certificate number'], rows, true);
  return { head: 'Who did what, and by hand', html: `<p>${escaped(SIGN_NOTE)}</p>${table}${byHand(`${job.name}; ${job.part.name}`)}` };
}

function byHand(description: string): string {
  const rows = [
    ['Description of the work', filledOrBlank(description === '; ' ? '' : description)],
    ['Approved data followed, with revision', BLANK_LINE],
    ['Date of completion', BLANK_LINE],
    ['Name', BLANK_LINE],
    ['Certificate number and kind', BLANK_LINE],
    ['Signature', BLANK_LINE],
  ];
  return `<div class="words by-hand"><table><tbody>${rows.map(([head = '', cell = '']) => `<tr><th scope="row">${head}</th><td>${cell}</td></tr>`).join('')}</tbody></table></div>`;
}
