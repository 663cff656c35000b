import type { Page } from '@playwright/test';
import type { Act } from './acts.ts';

export interface Checked {
  readonly lost_ms: number;
  readonly fault: string | null;
}

/** Every keystroke is promised to be kept within this. */
const PROMISED_MS = 1000;
/** The practice session under way is kept every 5 s; a second more for the writing, on a machine with other work. */
const PROMISED_DRAFT_MS = 6000;

/** Of what was typed into the job's name, what is not there. */
export async function checkTyped(page: Page, { keys }: Act, killed_ms: number): Promise<Checked> {
  const text = await page.getByRole('textbox', { name: 'Job', exact: true }).inputValue();
  const kept = keys.findLastIndex((key) => key.text === text);
  const lost = keys.slice(kept + 1).find(({ at_ms }) => at_ms <= killed_ms);
  const lost_ms = lost === undefined ? 0 : killed_ms - lost.at_ms;
  return { lost_ms, fault: lost_ms > PROMISED_MS ? `${Math.round(lost_ms)} ms of typing lost: the name is "${text}"` : null };
}

/** Of what was sprayed, how much the draft does not have. */
export async function checkDraft(page: Page, { sprayedFrom_ms }: Act, killed_ms: number): Promise<Checked> {
  const sprayed_ms = killed_ms - (sprayedFrom_ms ?? killed_ms);
  const strokes = await page.evaluate(async () => {
    const open = indexedDB.open('crosscoat');
    await new Promise((resolve) => (open.onsuccess = resolve));
    const read = open.result.transaction('drafts').objectStore('drafts').get('under-way');
    await new Promise((resolve) => (read.onsuccess = resolve));
    open.result.close();
    return (read.result as { strokes?: string } | undefined)?.strokes ?? '';
  });
  const kept_ms = sprayedTime_ms(strokes);
  const lost_ms = Math.max(0, sprayed_ms - kept_ms);
  return { lost_ms, fault: lost_ms > PROMISED_DRAFT_MS ? `${Math.round(lost_ms)} ms of spraying lost of ${Math.round(sprayed_ms)} ms` : null };
}

/** From the first row of a recorded-stroke CSV to its last. */
function sprayedTime_ms(strokes: string): number {
  const rows = strokes.trim().split('\n').slice(1);
  const time_s = (row: string | undefined): number => Number(row?.split(',')[0]);
  return rows.length < 2 ? 0 : (time_s(rows.at(-1)) - time_s(rows[0])) * 1000;
}
