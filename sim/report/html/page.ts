import { ESTIMATE_STATEMENT, SPRAY_CAUTIONS } from '../cautions.ts';
import { escaped } from './escape.ts';

/** One part of a report: a head and its HTML. */
export interface PagePart {
  readonly head: string;
  readonly html: string;
}

/** A whole report. */
export interface Page {
  readonly title: string;
  /** One plain line under the title. */
  readonly subtitle: string;
  readonly parts: readonly PagePart[];
  /** What was taken for granted, each a sentence. */
  readonly assumptions: readonly string[];
  /** More rules of style, for parts of its own. */
  readonly style?: string;
}

/** The style sheet of every report but the job card; a page's own rules come behind it. */
export const PAGE_STYLE = `
:root { color-scheme: light; }
body { font: 16px/1.45 system-ui, sans-serif; color: #181818; background: #fbf9f4; max-width: 60rem; margin: 0 auto; padding: 1.5rem; }
h1 { font-size: 1.7rem; margin: 0 0 0.2rem; } h2 { font-size: 1.2rem; border-bottom: 1.5px solid #181818; margin: 2rem 0 0.7rem; } h3 { font-size: 1rem; margin: 0.6rem 0 0.3rem; }
p { margin: 0.4rem 0; } .soft { color: #4a4a4a; }
table { border-collapse: collapse; width: 100%; font-variant-numeric: tabular-nums; }
th, td { text-align: right; padding: 0.25rem 0.5rem; border-bottom: 1px solid #b8b2a4; vertical-align: top; } th:first-child, td:first-child { text-align: left; }
td.best { font-weight: 700; } td .within { color: #4a4a4a; font-weight: 400; white-space: nowrap; }
.maps { display: flex; flex-wrap: wrap; gap: 1.2rem; } .maps figure { margin: 0; flex: 1 1 13rem; max-width: 19rem; } figure { margin: 0.6rem 0; } figcaption { margin-top: 0.3rem; }
svg { display: block; width: 100%; height: auto; } ul { margin: 0.4rem 0; padding-left: 1.3rem; } li { margin: 0.2rem 0; }
.cautions { border: 1.5px solid #181818; padding: 0.4rem 0.9rem; }
@page { margin: 14mm; }
@media print { body { background: none; padding: 0; max-width: none; font-size: 10.5pt; } h2 { break-after: avoid; } figure, tr, .cautions { break-inside: avoid; } .maps figure { flex-basis: 5cm; max-width: 5.6cm; } }
`;

/** Whoever opens it: nothing is fetched and nothing runs, whatever stands in it. */
const POLICY = `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src data:; style-src 'unsafe-inline'">`;

/**
 * A report as one HTML file that needs nothing else: no script, no picture from elsewhere. It prints on A4 and on
 * Letter. Cautions and assumptions stand on it.
 */
export function htmlPage({ title, subtitle, parts, assumptions, style = '' }: Page): string {
  return [
    '<!doctype html>',
    `<html lang="en"><head><meta charset="utf-8">${POLICY}<meta name="viewport" content="width=device-width, initial-scale=1"><title>${escaped(title)}</title><style>${PAGE_STYLE}${style}</style></head><body>`,
    `<main><h1>${escaped(title)}</h1><p class="soft">${escaped(subtitle)}</p>`,
    ...parts.map(({ head, html }) => `<section><h2>${escaped(head)}</h2>${html}</section>`),
    `<section><h2>Assumptions</h2>${htmlList([...assumptions, ESTIMATE_STATEMENT])}</section>`,
    `<section><h2>Before you spray</h2><div class="cautions">${htmlList(SPRAY_CAUTIONS)}</div></section>`,
    '</main></body></html>',
    '',
  ].join('\n');
}

/** A list of sentences. */
export function htmlList(texts: readonly string[]): string {
  return `<ul>${texts.map((text) => `<li>${escaped(text)}</li>`).join('')}</ul>`;
}

/** A cell of a table: its text, a smaller text behind it, and whether it is the best of its row. */
export interface HtmlCell {
  readonly text: string;
  readonly within?: string;
  readonly best?: boolean;
}

/** A table: a head, and rows that each begin with their name. */
export function htmlTable(head: readonly string[], rows: readonly (readonly [name: string, ...cells: HtmlCell[]])[]): string {
  const body = rows.map(([name, ...cells]) => `<tr><th scope="row">${escaped(name)}</th>${cells.map(htmlCell).join('')}</tr>`);
  return `<table><thead><tr>${head.map((text) => `<th scope="col">${escaped(text)}</th>`).join('')}</tr></thead><tbody>${body.join('')}</tbody></table>`;
}

function htmlCell({ text, within = '', best = false }: HtmlCell): string {
  return `<td${best ? ' class="best"' : ''}>${escaped(text)}${within === '' ? '' : ` <span class="within">${escaped(within)}</span>`}${best ? ' ✓' : ''}</td>`;
}
