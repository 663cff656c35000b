import type { Page } from '@playwright/test';
import type { Act } from './acts.ts';

export interface Checked {
  readonly lost_ms: number;
  readonly fault: string | null;
}

/** Every keystroke and every stroke is promised to be kept within this. */
export const PROMISED_MS = 1000;

/** Of what was typed into the job's name, what is not there; a fault where that is more than `promised_ms`. */
export async function checkTyped(page: Page, { keys }: Act, killed_ms: number, promised_ms: number): Promise<Checked> {
  const text = await page.getByRole('textbox', { name: 'Job', exact: true }).inputValue();
  const kept = keys.findLastIndex((key) => key.text === text);
  const lost = keys.slice(kept + 1).find(({ at_ms }) => at_ms <= killed_ms);
  const lost_ms = lost === undefined ? 0 : killed_ms - lost.at_ms;
  return { lost_ms, fault: lost_ms > promised_ms ? `${Math.round(lost_ms)} ms of typing lost: the name is "${text}"` : null };
}

/** Of what was sprayed, how much the draft does not have; a fault where that is more than `promised_ms`. */
export async function checkDraft(page: Page, { sprayedFrom_ms }: Act, killed_ms: number, promised_ms: number): Promise<Checked> {
  const sprayed_ms = killed_ms - (sprayedFrom_ms ?? killed_ms);
  const strokes = await page.evaluate(async () => {
    const open = indexedDB.open('crosscoat');
    await new Promise((resolve) => (open.onsuccess = resolve));
    const drafts = open.result.transaction('drafts').objectStore('drafts');
    const whole = [drafts.get('under-way'), drafts.get('under-way-stamp')] as const;
    await new Promise((resolve) => (whole[1].onsuccess = resolve));
    // The draft, and the pieces that were put behind it.
    const head = `under-way/${String(whole[1].result)}`;
    const pieces = drafts.getAll(IDBKeyRange.bound(`${head}/`, `${head}0`));
    await new Promise((resolve) => (pieces.onsuccess = resolve));
    open.result.close();
    return ((whole[0].result as { strokes: string } | undefined)?.strokes ?? '') + (pieces.result as string[]).join('');
  });
  const kept_ms = sprayedTime_ms(strokes);
  const lost_ms = Math.max(0, sprayed_ms - kept_ms);
  return { lost_ms, fault: lost_ms > promised_ms ? `${Math.round(lost_ms)} ms of spraying lost of ${Math.round(sprayed_ms)} ms` : null };
}

/** From the row of a recorded-stroke CSV in which the trigger opens to the last; aiming before is not sprayed. */
function sprayedTime_ms(strokes: string): number {
  const rows = strokes.trim().split('\n').slice(1).map((row) => row.split(',').map(Number));
  const opened = rows.find((row) => (row.at(-1) ?? 0) > 0);
  return opened === undefined ? 0 : ((rows.at(-1)?.[0] ?? 0) - (opened[0] ?? 0)) * 1000;
}
