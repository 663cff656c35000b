import type { CardLine } from '../../cardLines.ts';
import { escaped } from '../escape.ts';

/** Lines, each a head and its words, as a list of definitions: it reads with styles off. */
export function linesHtml(lines: readonly CardLine[]): string {
  return `<dl class="lines">${lines.map(({ head, text }) => `<div><dt>${escaped(head)}</dt><dd>${escaped(text)}</dd></div>`).join('')}</dl>`;
}

/** A line to write on where nothing is stated: underscores, so that it is one with styles off too. */
export const BLANK_LINE = '<span class="blank">________________</span>';

/** A text, or a line to write on where it is empty: a field that may not stay blank on the printed sheet. */
export function filledOrBlank(text: string | undefined): string {
  return text === undefined || text.trim() === '' ? BLANK_LINE : escaped(text);
}

/** A table that scrolls by itself on a screen too narrow for it, by keyboard too. */
export function wide(table: string): string {
  return `<div class="wide" tabindex="0">${table}</div>`;
}

/** A table of words with any HTML in its cells; the first cell of each row names it and, where it is short, stays on one line. */
export function wordsTable(head: readonly string[], rows: readonly (readonly string[])[], isShort = false): string {
  const body = rows.map(([name = '', ...cells]) => `<tr><th scope="row"${isShort ? ' class="short"' : ''}>${name}</th>${cells.map((cell) => `<td>${cell}</td>`).join('')}</tr>`);
  return `<div class="words wide" tabindex="0"><table><thead><tr>${head.map((text) => `<th scope="col">${escaped(text)}</th>`).join('')}</tr></thead><tbody>${body.join('')}</tbody></table></div>`;
}
