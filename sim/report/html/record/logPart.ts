import type { LogEntrySpec } from '../../../job/schema.ts';
import { SIGNING_NOTE } from '../../changeWords.ts';
import { entryCautions, entryLines, LOG_KIND_WORDS } from '../../logWords.ts';
import type { ReportedRecord } from '../../record/reportedRecord.ts';
import type { ReportedEntry } from '../../reportedLog.ts';
import type { UnitSystem } from '../../units.ts';
import { escaped } from '../escape.ts';
import { htmlList, type PagePart } from '../page.ts';
import { linesHtml } from './linesHtml.ts';
import { historyHtml, signatureHtml } from './signatureHtml.ts';

/** What was done, entry by entry, in the order in which it was begun. */
export function logPart({ log }: ReportedRecord, system: UnitSystem): PagePart {
  const entries = log.map((each, i) => entryHtml(each, i, system));
  return { head: 'Log', html: log.length === 0 ? '<p>Nothing is logged.</p>' : `<p>${escaped(SIGNING_NOTE)}</p>${entries.join('\n')}` };
}

function entryHtml(reported: ReportedEntry, place: number, system: UnitSystem): string {
  const { entry, signature } = reported;
  const kind = LOG_KIND_WORDS[entry.kind];
  const cautions = entryCautions(reported, system);
  return [
    `<div class="entry"><h3>${place + 1}. ${escaped(entry.name.trim() === '' ? 'Not named' : entry.name)} (${escaped(kind.toLowerCase())})</h3>`,
    linesHtml(entryLines(reported, system)),
    cautions.length === 0 ? '' : `<h4>Look at again</h4>${htmlList(cautions)}`,
    photosHtml(entry.photos),
    historyHtml(entry.history, system),
    signatureHtml(entry.signed, signature),
    '</div>',
  ].join('');
}

function photosHtml(photos: LogEntrySpec['photos']): string {
  if (photos.length === 0) return '';
  const figures = photos.map(({ name, width, height, jpeg }) => `<figure><img src="data:image/jpeg;base64,${escaped(jpeg)}" width="${width}" height="${height}" alt="${escaped(name)}"><figcaption>${escaped(name)}</figcaption></figure>`);
  return `<div class="photos">${figures.join('')}</div>`;
}
