import type { Page } from '@playwright/test';

/** What was done before the kill. */
export interface Act {
  /** The text of the field after each key, with the time at which the page had taken it, ms. */
  readonly keys: { readonly text: string; readonly at_ms: number }[];
  /** When the trigger was asked to open, ms: no later than it did. */
  readonly sprayedFrom_ms: number | null;
}

export interface Acting {
  /** Resolves when it is under way; it goes on until the browser is gone. */
  readonly begun: Promise<Act>;
}

/** The schema's limit of a name is 200 letters. */
const LONGEST = 150;

/** Types into the job's name without a pause. Each turn's text is its own. */
export function typeUntil(page: Page, turn: number): Acting {
  const act: Act = { keys: [], sprayedFrom_ms: null };
  const begun = (async () => {
    const field = page.getByRole('textbox', { name: 'Job', exact: true });
    let text = `turn ${turn} `;
    await field.fill(text);
    act.keys.push({ text, at_ms: Date.now() });
    const go = async (): Promise<void> => {
      for (let i = 0; ; i++) {
        if (text.length >= LONGEST) {
          text = `turn ${turn} again ${i} `;
          await field.fill(text);
        } else {
          const key = String.fromCharCode(97 + (i % 26));
          await field.press(key);
          text += key;
        }
        act.keys.push({ text, at_ms: Date.now() });
      }
    };
    void go().catch(() => undefined);
    return act;
  })();
  return { begun };
}

/** Lays strokes on the practice panel with the mouse, to and fro. */
export function sprayUntil(page: Page): Acting {
  const begun = (async () => {
    await page.getByRole('navigation').getByRole('button', { name: /Practice/ }).click();
    const stage = page.getByRole('dialog', { name: 'Practice' });
    await stage.locator('.spray-host[data-ready="true"]').waitFor({ timeout: 60_000 });
    await clearFound(page);
    const box = await stage.locator('.spray-canvas').boundingBox();
    if (box === null) throw new Error('no panel to spray');
    const across = (share: number): number => box.x + box.width * (0.25 + 0.5 * share);
    await page.mouse.move(across(0), box.y + box.height / 2);
    const act: Act = { keys: [], sprayedFrom_ms: Date.now() };
    await page.mouse.down();
    const go = async (): Promise<void> => {
      for (let i = 0; ; i++) await page.mouse.move(across(Math.abs(((i / 40) % 2) - 1)), box.y + box.height * (0.4 + 0.2 * Math.sin(i / 90)));
    };
    void go().catch(() => undefined);
    return act;
  })();
  return { begun };
}

/** What an earlier turn left must not pass for this one's. */
async function clearFound(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const open = indexedDB.open('crosscoat');
    await new Promise((resolve) => (open.onsuccess = resolve));
    const writing = open.result.transaction('drafts', 'readwrite');
    writing.objectStore('drafts').clear();
    await new Promise((resolve) => (writing.oncomplete = resolve));
    open.result.close();
  });
}
