import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { expect, test } from './appPage.ts';

async function exported(page: Page, words: string): Promise<{ name: string; bytes: Buffer }> {
  await page.locator('summary', { hasText: 'More' }).click();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: words }).click();
  const file = await download;
  return { name: file.suggestedFilename(), bytes: await readFile(await file.path()) };
}

test('a saved job opens again as it was', async ({ app, page }) => {
  await app.field('Overlap').fill('62');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save' }).click();
  const file = await download;
  expect(file.suggestedFilename()).toBe('rudder-first-build-coat.crosscoat.json');
  const path = await file.path();
  await app.field('Overlap').fill('40');
  await page.getByTestId('open-file').setInputFiles({
    name: file.suggestedFilename(),
    mimeType: 'application/json',
    buffer: await readFile(path),
  });
  await app.settled();
  await expect(app.field('Overlap')).toHaveValue('62');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(app.field('Overlap')).toHaveValue('40');
});

test('a dropped recording lays the coat', async ({ app, page }) => {
  const rows = Array.from({ length: 201 }, (_, i) => `${i / 100},${-100 + 4 * i},600,200,90,0,0,${i > 5 && i < 195 ? 1 : 0}`);
  await app.openPlanned();
  await app.drop('one-stroke.csv', `t_s,x_mm,y_mm,z_mm,fan_deg,pitch_deg,yaw_deg,trigger\n${rows.join('\n')}\n`);
  await expect(page.getByRole('heading', { name: 'Strokes as recorded: 1' })).toBeVisible();
  await expect(page.locator('.recording', { hasText: 'one-stroke.csv' })).toContainText('201 rows, 2 s');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('heading', { name: /Strokes as planned/ })).toBeVisible();
});

test('a broken recording says where, and changes nothing', async ({ app, page }) => {
  const sentence = await app.sentence.textContent();
  await app.drop('broken.csv', 't_s,x_mm,y_mm,z_mm\n0,0,0,200\n1,abc,0,200\n');
  const alert = page.getByRole('alert');
  await expect(alert).toContainText('broken.csv was not opened; nothing was changed');
  await expect(alert).toContainText(/row 3/);
  await expect(alert).toContainText('x_mm');
  await expect(app.sentence).toHaveText(sentence ?? '');
  await alert.getByRole('button', { name: 'Dismiss' }).click();
  await expect(alert).toHaveCount(0);
});

test('a broken job says where, and changes nothing', async ({ app, page }) => {
  await app.drop('broken.json', '{ "schemaVersion": 1, "name": "x", }');
  await expect(page.getByRole('alert')).toContainText(/row 1/);
  await app.drop('other.json', '{ "schemaVersion": 1, "name": "x", "seed": -1 }');
  await expect(page.getByRole('alert')).toContainText('/seed');
  await expect(page.getByRole('banner')).toContainText('Rudder, first build coat');
});

test('every export gives a file of its kind', async ({ app, page }) => {
  await app.settled();
  const png = await exported(page, 'Export film map, PNG');
  expect(png.name).toMatch(/-film\.png$/);
  expect(png.bytes.subarray(1, 4).toString()).toBe('PNG');
  const svg = await exported(page, 'Export strokes drawing, SVG');
  expect(svg.bytes.toString()).toContain('<g id="stroke-1">');
  const film = (await exported(page, 'Export film at every cell, CSV')).bytes.toString().split('\n');
  expect(film[0]).toBe('x_mm,y_mm,wet_um,dry_um,solids_at_impact,passes,cover');
  expect(film.length).toBeGreaterThan(100_000);
  const path = (await exported(page, 'Export gun path, CSV')).bytes.toString();
  expect(path).toMatch(/^t_s,x_mm,y_mm,z_mm,fan_deg,pitch_deg,yaw_deg,trigger\n/);
  const results = JSON.parse((await exported(page, 'Export results, JSON')).bytes.toString()) as { seed: number; panels: unknown[] };
  expect(results.seed).toBe(20);
});

test('an exported path drops in again as a recording', async ({ app, page }) => {
  await app.openPlanned();
  const strokes = Number((await page.getByRole('heading', { name: /Strokes as planned/ }).textContent())?.match(/\d+/)?.[0]);
  const path = await exported(page, 'Export gun path, CSV');
  await app.drop('path.csv', path.bytes.toString());
  await expect(page.getByRole('heading', { name: `Strokes as recorded: ${strokes}` })).toBeVisible();
});

test('start again from the demo, and undo', async ({ app, page }) => {
  await app.field('Overlap').fill('44');
  await app.field('Overlap').press('Tab');
  await page.locator('summary', { hasText: 'More' }).click();
  await page.getByRole('button', { name: 'Start again from the demo' }).click();
  await expect(app.field('Overlap')).toHaveValue('50');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(app.field('Overlap')).toHaveValue('44');
});
