import type { Job } from '../../../job/schema.ts';
import { ledgerRows, stepHead, stepRow, totalSentences } from '../../schemeSections.ts';
import type { RecordedScheme, ReportedRecord } from '../../record/reportedRecord.ts';
import type { UnitSystem } from '../../units.ts';
import { escaped } from '../escape.ts';
import { htmlList, htmlTable, type PagePart } from '../page.ts';
import { wide, wordsTable } from './linesHtml.ts';

/** What was planned: the steps of each scheme with film and weight, then the coats with their set-ups and mixes. */
export function planPart({ job, schemes }: ReportedRecord, system: UnitSystem): PagePart {
  return { head: 'Plan', html: `<p>Figures are the model’s.</p>${schemes.length === 0 ? '<p>No scheme is planned.</p>' : schemes.map((scheme) => schemeHtml(scheme, system)).join('')}${coatsHtml(job)}` };
}

function schemeHtml({ name, report, problem }: RecordedScheme, system: UnitSystem): string {
  const head = `<h3>${escaped(name)}</h3>`;
  if (report === null) return `${head}<p>It could not be worked out: ${escaped(problem)}</p>`;
  const { plan } = report;
  const rows = plan.steps.map((step, k) => plainRow(stepRow(step, k, system)));
  const [ledgerHead = [], ...ledger] = ledgerRows(report, system);
  const source = plan.scheme.source === undefined ? '' : `<p>Source as stated: ${escaped(plan.scheme.source)}.</p>`;
  return [head, source, wide(htmlTable(stepHead(system), rows)), wide(htmlTable(ledgerHead, ledger.map(plainRow))), htmlList(totalSentences(report, system))].join('');
}

function plainRow([name = '', ...cells]: readonly string[]): readonly [string, ...{ readonly text: string }[]] {
  return [name, ...cells.map((text) => ({ text }))];
}

function coatsHtml({ coats, setUps, mixes, part }: Job): string {
  const nameOf = (all: readonly { readonly id: string; readonly name: string }[], id: string | undefined): string => (id === undefined ? 'the set-up’s own liquid' : (all.find((each) => each.id === id)?.name ?? id));
  const rows = coats.map(({ name, panel, setUp, mix, recording }) => [name, nameOf(part.panels, panel), nameOf(setUps, setUp), nameOf(mixes, mix), recording === undefined ? 'planned strokes' : 'recorded strokes'].map(escaped));
  return `<h3>Coats, set-ups and mixes</h3>${wordsTable(['Coat', 'Panel', 'Set-up', 'Mix', 'Laid by'], rows)}`;
}
