import { readFileSync } from 'node:fs';
import { expect, test as base, type Download, type Locator, type Page } from '@playwright/test';
import { DEMO_PLANNED_COAT, demoJob, parseSession, type SessionSpec } from '../../sim/index.ts';
import { AppPage } from './appPage.ts';

/**
 * A test on a page that was here before, on the demo's planned coat: that has no fault whose cures would be
 * tried beside the hand. The storage is as the first version of the program left it.
 */
export const practiceTest = base.extend<{ app: AppPage }>({
  app: async ({ page }, use) => {
    const app = new AppPage(page);
    await page.route('**/blank', (route) => route.fulfill({ contentType: 'text/html', body: '' }));
    await page.goto('./blank');
    await page.evaluate(
      async (kept) => {
        const open = indexedDB.open('crosscoat', 1);
        open.onupgradeneeded = () => open.result.createObjectStore('kept');
        await new Promise((resolve) => (open.onsuccess = resolve));
        const writing = open.result.transaction('kept', 'readwrite');
        for (const [key, value] of Object.entries(kept)) writing.objectStore('kept').put(value, key);
        await new Promise((resolve) => (writing.oncomplete = resolve));
        open.result.close();
      },
      { job: demoJob(), coatId: DEMO_PLANNED_COAT },
    );
    await app.open();
    await use(app);
    expect(app.complaints).toEqual([]);
  },
});

/** Practice, opened over the window. */
export async function openPractice(page: Page): Promise<Locator> {
  await page.getByRole('navigation').getByRole('button', { name: /Practice/ }).click();
  const stage = page.getByRole('dialog', { name: 'Practice' });
  await expect(stage.locator('.spray-host')).toHaveAttribute('data-ready', 'true', { timeout: 30_000 });
  await expect(stage.locator('.spray-canvas')).toBeVisible();
  return stage;
}

/** Chooses a drill by its id and waits until its panel hangs. */
export async function chooseDrill(stage: Locator, id: string): Promise<void> {
  await stage.getByRole('combobox', { name: 'Drill', exact: true }).selectOption(id);
  await expect(stage.locator('.spray-host')).toHaveAttribute('data-ready', 'true');
}

/** One stroke to the right by the keys, on the panel that has the focus. */
export async function strokeByKeys(page: Page): Promise<void> {
  await page.keyboard.down('ArrowRight');
  await page.waitForTimeout(200);
  await page.keyboard.down(' ');
  await page.waitForTimeout(700);
  await page.keyboard.up(' ');
  await page.keyboard.up('ArrowRight');
}

/** Ends the session and waits for what the hand is told. */
export async function debrief(stage: Locator): Promise<void> {
  await stage.getByRole('button', { name: 'Finish and debrief' }).click();
  await expect(stage.locator('.debrief')).toBeVisible({ timeout: 60_000 });
}

/** The session in view as the file that the page saves. */
export async function savedSession(page: Page, stage: Locator): Promise<SessionSpec> {
  const file = await saved(page, () => stage.getByRole('button', { name: 'Save the session' }).click());
  return parseSession(await textOf(file));
}

/** The strokes in view as the CSV that the page saves. */
export async function savedStrokes(page: Page, stage: Locator): Promise<string> {
  return textOf(await saved(page, () => stage.getByRole('button', { name: /Export strokes/ }).click()));
}

async function saved(page: Page, press: () => Promise<void>): Promise<Download> {
  const [download] = await Promise.all([page.waitForEvent('download'), press()]);
  return download;
}

async function textOf(download: Download): Promise<string> {
  return readFileSync(await download.path(), 'utf8');
}
