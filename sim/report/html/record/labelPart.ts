import { labelRows } from '../../record/labelRows.ts';
import type { ReportedRecord } from '../../record/reportedRecord.ts';
import { escaped } from '../escape.ts';
import type { PagePart } from '../page.ts';
import { BLANK_LINE, filledOrBlank } from './linesHtml.ts';

/** Digits of the digest on the label: enough to tell records apart. */
const SHORT_DIGEST = 16;

/** A label to cut out and glue in beside the inspection hole: which cloth and which product lies in each layer. */
export function labelPart({ job, made, digest }: ReportedRecord): PagePart {
  const rows = labelRows(job).map(({ layer, products, coats }) => `<tr><th scope="row" class="short">${escaped(layer)}</th><td>${filledOrBlank(products)}</td><td>${escaped(coats)}</td></tr>`);
  const label = [
    `<div class="label words"><h3>${escaped(job.part.name)}</h3><p>${escaped(job.part.panels.map(({ name }) => name).join('; '))}</p>`,
    `<table><tbody><tr><th scope="row" class="short">cloth</th><td colspan="2">${BLANK_LINE}</td></tr>${rows.join('')}</tbody></table>`,
    `<p>${escaped(job.name)}, record of ${escaped(made.at.slice(0, 10))}, SHA-256 begins <code>${escaped(digest.slice(0, SHORT_DIGEST))}</code>. Certifies nothing.</p></div>`,
  ];
  return { head: 'Label for the inspection hole', html: `<p>To cut out. Write in what is not known here; never guess.</p>${label.join('')}` };
}
