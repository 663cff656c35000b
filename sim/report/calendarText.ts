/** What a calendar is made with beside the days. */
export interface CalendarOptions {
  /** Name of the job; in every event's id too. */
  readonly jobName: string;
  /** When the calendar is made: UTC, such as `2026-05-01T07:30:00Z`. */
  readonly stamp: string;
}

/** Control characters but tab and line feed, which RFC 5545 3.1 forbids in a text, and halves of letters that no encoding knows. */
const UNUSUAL = /[\u0000-\u0008\u000b-\u001f\u007f]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** A text that a calendar can hold: each letter that it cannot becomes a space. */
export function unusualLettersOut(text: string): string {
  return text.replaceAll(/\r\n?/g, '\n').replaceAll(UNUSUAL, ' ');
}

/** A name that the library writes as it stands: on one line, and with the marks of RFC 5545 3.3.11 quoted. */
export function quotedName(name: string): string {
  return unusualLettersOut(name).replaceAll('\n', ' ').replaceAll(/[\\;,]/g, '\\$&');
}
