import { test as bare } from '@playwright/test';
import { AppPage, expect, test } from './appPage.ts';
import { keptJobs, keptOverlaps } from './keptJobs.ts';

test('no room left is told at once, and the message goes when there is some', async ({ app, page }) => {
  await app.openPlanned();
  await expect.poll(async () => (await keptJobs(page)).length).toBe(1);
  // The browser asks for the room left at most each half minute, so that a quota set by its tools comes too late: put refuses as it would.
  await page.evaluate(() => {
    const stores = IDBObjectStore.prototype as { put: unknown };
    const { put } = stores;
    Object.assign(window, { makeRoom: () => (stores.put = put) });
    stores.put = () => {
      throw new DOMException('Encountered full disk while committing transaction.', 'QuotaExceededError');
    };
  });
  await app.field('Overlap').fill('61');
  const alert = page.getByRole('alert').filter({ hasText: 'not being kept' });
  await expect(alert).toContainText('is full');
  await expect(alert).toContainText('Save the job as a file');
  expect(await keptOverlaps(page)).toEqual([50]);
  await page.evaluate(() => (window as unknown as { readonly makeRoom: () => void }).makeRoom());
  // By itself, without another key.
  await expect(alert).toHaveCount(0, { timeout: 15_000 });
  expect(await keptOverlaps(page)).toEqual([61]);
});

test('room that runs short is told with its figures', async ({ app, page }) => {
  await page.addInitScript(() => {
    navigator.storage.estimate = () => Promise.resolve({ usage: 850e6, quota: 1e9 });
  });
  await app.openPlanned();
  await expect.poll(async () => (await keptJobs(page)).length).toBe(1);
  await page.reload();
  await expect(page.getByRole('alert')).toContainText('85 % full');
  await expect(page.getByRole('alert')).toContainText('850 MB of 1,000 MB');
});

bare('a browser that refuses storage says so at once, and the work goes on', async ({ page }) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('The user denied permission to access the database.', 'SecurityError');
    };
  });
  const app = new AppPage(page);
  await page.goto('./');
  await expect(page.getByRole('alert')).toContainText('does not let this page keep anything', { timeout: 30_000 });
  await app.settled();
  await app.openPlanned();
  await app.field('Overlap').fill('61');
  await expect(app.field('Overlap')).toHaveValue('61');
});

test('a clock that was set back between two visits changes neither what opens nor the order', async ({ app, page }) => {
  await app.openPlanned();
  await app.field('Overlap').fill('61');
  await expect.poll(() => keptOverlaps(page)).toEqual([61]);
  await page.clock.setFixedTime(new Date('2001-02-03T04:05:06Z'));
  await page.reload();
  await expect(app.field('Overlap')).toHaveValue('61');
  await app.field('Overlap').fill('62');
  await expect.poll(() => keptOverlaps(page)).toEqual([62]);
  await page.locator('summary', { hasText: 'More' }).click();
  await page.getByRole('button', { name: 'Start again from the demo' }).click();
  await expect.poll(async () => (await keptJobs(page)).length).toBe(2);
  const [newest, older] = await keptJobs(page);
  expect(newest?.revision).toBeGreaterThan(older?.revision ?? Infinity);
  expect(older?.changedAt).toBe('2001-02-03T04:05:06.000Z');
  // What was in hand comes back, whatever the clock said of it.
  await page.reload();
  await expect.poll(async () => (await keptOverlaps(page)).length).toBe(2);
  await expect(app.field('Overlap')).not.toHaveValue('62');
});
