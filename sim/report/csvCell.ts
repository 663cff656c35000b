/** Spreadsheets read a cell that starts with one of these as a formula. */
const FORMULA_STARTS = /^[=+\-@\t\r]/;

/**
 * A text cell of a CSV row (RFC 4180): quoted where it holds a comma, a quote or a line break,
 * and with an apostrophe before a first character that a spreadsheet would take for a formula.
 */
export function textCell(text: string): string {
  const guarded = FORMULA_STARTS.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(guarded) ? `"${guarded.replace(/"/g, '""')}"` : guarded;
}

/** A number cell of at most `digits` figures with a decimal point; empty where not finite. Minus signs are left: it is a number. */
export function numberCell(value: number, digits = 7): string {
  return Number.isFinite(value) ? String(Number(value.toPrecision(digits))) : '';
}

/** A cell of whatever was noted: empty where nothing was. */
export function optionalCell(value: string | number | undefined, digits?: number): string {
  if (value === undefined) return '';
  return typeof value === 'number' ? numberCell(value, digits) : textCell(value);
}
