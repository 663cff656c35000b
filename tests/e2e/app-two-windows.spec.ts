import type { Page } from '@playwright/test';
import { AppPage, expect, test } from './appPage.ts';
import { keptJobs, keptOverlaps, removeElsewhere } from './keptJobs.ts';

/** Longer than the saving's wait. */
const SAVED_MS = 800;

/** The demo on its planned coat, kept. */
async function kept(app: AppPage): Promise<void> {
  await app.openPlanned();
  await expect.poll(async () => (await keptJobs(app.page)).length).toBe(1);
}

/** A second window of the same browser, on the same job. */
async function secondWindow(app: AppPage): Promise<AppPage> {
  const other = new AppPage(await app.page.context().newPage());
  await other.open();
  return other;
}

/** From now on nobody hears what this window writes, as if the browser had put the others to sleep. */
async function unheard(page: Page): Promise<void> {
  await page.evaluate(() => (BroadcastChannel.prototype.postMessage = () => undefined));
}

test('a job that is open already is told at once', async ({ app }) => {
  await kept(app);
  const other = await secondWindow(app);
  await expect(other.page.getByRole('alert')).toContainText('open in another window too');
  expect(other.complaints).toEqual([]);
});

test('a window without unsaved changes takes over what the other one wrote, and Undo brings its own back', async ({ app }) => {
  await kept(app);
  const before = await app.field('Overlap').inputValue();
  const other = await secondWindow(app);
  await other.field('Overlap').fill('61');
  await expect(app.field('Overlap')).toHaveValue('61');
  await expect(app.page.getByRole('alert')).toContainText('this window has taken it over');
  expect(await keptJobs(app.page)).toHaveLength(1);
  await app.page.getByRole('alert').getByRole('button', { name: 'Undo' }).click();
  await expect(app.field('Overlap')).toHaveValue(before);
  // Which is a change like any other: the other window has it too.
  await expect(other.field('Overlap')).toHaveValue(before);
  expect(await keptJobs(app.page)).toHaveLength(1);
});

test('what comes too late overwrites nothing: both are kept, and the other can be opened', async ({ app }) => {
  await kept(app);
  const other = await secondWindow(app);
  await unheard(app.page);
  await app.field('Overlap').fill('61');
  await app.page.waitForTimeout(SAVED_MS);
  await other.field('Overlap').fill('62');
  const alert = other.page.getByRole('alert');
  await expect(alert).toContainText('nothing was overwritten');
  await expect(other.page.getByRole('banner')).toContainText(', from the other window');
  expect(await keptOverlaps(other.page)).toEqual([62, 61]);
  // Each goes on with its own.
  await other.field('Overlap').fill('63');
  await app.field('Overlap').fill('60');
  await expect.poll(async () => [...(await keptOverlaps(other.page))].sort()).toEqual([60, 63]);
  await alert.getByRole('button', { name: 'Open the other window' }).click();
  await expect(other.field('Overlap')).toHaveValue('60');
  await other.page.getByRole('button', { name: 'Undo' }).click();
  await expect(other.field('Overlap')).toHaveValue('63');
  expect(other.complaints).toEqual([]);
});

test('two hands typing at the same moment lose nothing', async ({ app }) => {
  await kept(app);
  const other = await secondWindow(app);
  await Promise.all([app.field('Overlap').fill('11'), other.field('Overlap').fill('22')]);
  await app.page.waitForTimeout(2 * SAVED_MS);
  // What each window shows is kept, in one job or in two.
  const shown = await Promise.all([app, other].map(async (each) => Number(await each.field('Overlap').inputValue())));
  const inKept = new Set(await keptOverlaps(app.page));
  for (const value of shown) expect(inKept.has(value)).toBe(true);
  const all = await keptJobs(app.page);
  expect(all.length).toBe(new Set(shown).size);
});

test('a job that was removed in another window is kept again when it is wanted', async ({ app }) => {
  await kept(app);
  const [before] = await keptJobs(app.page);
  const other = await secondWindow(app);
  await other.page.close();
  await removeElsewhere(app.page, before?.id ?? '');
  const alert = app.page.getByRole('alert');
  await expect(alert).toContainText('was removed in another window');
  await alert.getByRole('button', { name: 'Keep it' }).click();
  await expect(alert).toContainText('it is kept again');
  const [again] = await keptJobs(app.page);
  expect(again?.id).not.toBe(before?.id);
  // And by a change alone, without the button.
  await removeElsewhere(app.page, again?.id ?? '');
  await app.field('Overlap').fill('47');
  await expect.poll(() => keptOverlaps(app.page)).toEqual([47]);
});
