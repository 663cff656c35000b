import { cp, mkdtemp, readFile, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test, type BrowserContext, type Page } from '@playwright/test';
import { throughAllStages } from './allStages.ts';
import { AppPage, expect } from './appPage.ts';
import { serveSite, type StaticSite } from './staticSite.ts';

/** The service worker is what is tested here; the other tests go without (playwright.config.ts). */
test.use({ serviceWorkers: 'allow' });

let site: StaticSite;
let newerBuild: string;

test.beforeEach(async () => {
  site = await serveSite('dist');
  newerBuild = await mkdtemp(join(tmpdir(), 'crosscoat-newer-'));
});

test.afterEach(async () => {
  await site.close();
  await rm(newerBuild, { recursive: true, force: true });
});

/** Opens the app and waits until all of it is kept: the service worker serves this window. */
async function openKept(context: BrowserContext): Promise<AppPage> {
  const app = new AppPage(await context.newPage());
  await app.page.goto(site.address);
  await app.settled();
  await expect.poll(() => app.page.evaluate(() => navigator.serviceWorker.controller !== null), { timeout: 60_000 }).toBe(true);
  return app;
}

/** Another build at the same address: its pieces have other names, and the old ones are gone from the host. */
async function publishNewer(): Promise<void> {
  await cp('dist', newerBuild, { recursive: true, filter: (path) => !path.endsWith('.map') });
  const assets = await readdir(join(newerBuild, 'assets'));
  // All of them: what names another piece has another name with it, as in a real build.
  const renamed = assets.filter((name) => name.endsWith('.js'));
  const rename = (text: string): string => renamed.reduce((now, name) => now.replaceAll(name, `new-${name}`), text);
  await writeFile(join(newerBuild, 'index.html'), rename(await readFile(join(newerBuild, 'index.html'), 'utf8')));
  const worker = rename(await readFile(join(newerBuild, 'sw.js'), 'utf8'));
  const revised = worker.replace(/(url:"index\.html",revision:")[^"]*|(revision:")[^"]*(",url:"index\.html")/, '$1$2newer$3');
  expect(revised).not.toBe(worker);
  await writeFile(join(newerBuild, 'sw.js'), revised);
  for (const name of renamed) {
    const text = rename(await readFile(join(newerBuild, 'assets', name), 'utf8'));
    await rm(join(newerBuild, 'assets', name));
    await writeFile(join(newerBuild, 'assets', `new-${name}`), text);
  }
  site.folder = newerBuild;
}

async function askForNewer(page: Page): Promise<void> {
  await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
}

const firstScript = (page: Page): Promise<string> => page.locator('script[type="module"]').first().getAttribute('src').then((src) => src ?? '');

test('without a network the app opens again, lays its film, and every stage opens', async ({ context }) => {
  test.setTimeout(400_000);
  const { page } = await openKept(context);
  await context.setOffline(true);
  await site.close();
  await page.reload();
  const app = new AppPage(page);
  await app.settled();
  // The browser tells a change only; what a pulled plug is before loading, the tool's switch is not.
  await context.setOffline(false);
  await context.setOffline(true);
  await expect(page.getByText('No network. Nothing here needs one')).toBeVisible({ timeout: 60_000 });
  await throughAllStages(page);
  site = await serveSite('dist');
});

test('a newer version is told, starts only by the reader’s press, and the job is as it was', async ({ context }) => {
  test.setTimeout(400_000);
  const app = await openKept(context);
  const { page } = app;
  await page.evaluate(() => Object.assign(window, { isStillOpen: true }));
  await publishNewer();
  await askForNewer(page);
  const notice = page.getByText('A newer version is ready.');
  await expect(notice).toBeVisible({ timeout: 60_000 });
  // The window goes on with its own version: a stage that it never opened is no longer on the host.
  await app.stage('Gun');
  await expect(page.locator('.form-column').locator('input').first()).toBeVisible();
  await app.stage('Strokes');
  const distance = page.getByRole('textbox', { name: 'Gun to panel', exact: true });
  await distance.fill('187');
  expect(await page.evaluate(() => 'isStillOpen' in window)).toBe(true);
  expect(await firstScript(page)).not.toContain('new-');

  await page.getByRole('button', { name: 'Start it now' }).click();
  await expect.poll(() => page.evaluate(() => 'isStillOpen' in window).catch(() => true), { timeout: 60_000 }).toBe(false);
  await app.settled();
  expect(await firstScript(page)).toContain('new-');
  await expect(distance).toHaveValue('187');
  await expect(notice).toHaveCount(0);
});

test('a window that stays with the old version still opens its stages after another has started the new one', async ({ context }) => {
  test.setTimeout(400_000);
  const old = await openKept(context);
  const other = await openKept(context);
  await publishNewer();
  await askForNewer(other.page);
  await other.page.getByRole('button', { name: 'Start it now' }).click({ timeout: 60_000 });
  await expect.poll(() => firstScript(other.page).catch(() => ''), { timeout: 60_000 }).toContain('new-');
  await expect(old.page.getByText('Another window has started a newer version.')).toBeVisible({ timeout: 60_000 });
  expect(await firstScript(old.page)).not.toContain('new-');
  await old.stage('Gun');
  await expect(old.page.locator('.form-column').locator('input').first()).toBeVisible({ timeout: 30_000 });
  await old.page.getByRole('navigation').getByRole('button', { name: /Demonstrations/ }).click();
  await expect(old.page.getByRole('dialog', { name: 'Demonstrations' })).toBeVisible({ timeout: 30_000 });
});
