import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import { PNG } from 'pngjs';
import { movedCorners, photographed, PLAIN_CAMERA, strokeFilm } from '../helpers/cardPhotos.ts';
import { expect, test } from './appPage.ts';
import { isNarrow, openStage } from './stagePage.ts';

test.setTimeout(180_000);

test('a window is mapped, probed by the keyboard and used; set-ups are compared and reported', async ({ app, page }) => {
  await expect(app.sentence).toContainText('inside the limits', { timeout: 60_000 });
  const stage = await openStage(page, /Set-ups/, 'Gun set-ups');
  await stage.getByRole('tab', { name: 'Working window' }).click();
  await expect(stage.locator('.window-map[aria-busy="false"]')).toBeVisible({ timeout: 60_000 });
  await expect(stage.getByText(/^Nothing is at fault on \d/)).toBeVisible();
  await expect(stage.getByText(/farther: \d+(\.\d+)? % less film/)).toBeVisible({ timeout: 30_000 });
  await expect(stage.getByText(/^Evenest at \d/)).toBeVisible();
  const room = stage.getByRole('row', { name: /^Thin lap/ });
  const before = await room.textContent();
  const speed = stage.getByRole('slider', { name: /Speed/ });
  for (let i = 0; i < 25; i++) await speed.press('ArrowRight');
  await expect(room).not.toHaveText(before ?? '');
  await expect(room).toContainText('past it');
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await stage.getByRole('button', { name: 'Use this place for the coat' }).click();
  await expect(stage.getByRole('button', { name: 'Undo' })).toHaveAttribute('title', /this place of the window/);
  await stage.getByRole('button', { name: 'Undo' }).click();

  await stage.getByRole('tab', { name: 'Side by side' }).click();
  const table = stage.locator('.compare-table');
  await expect(table.getByRole('row', { name: /^Mean wet film/ })).toContainText('±', { timeout: 60_000 });
  await expect(table.getByRole('columnheader')).toHaveCount(3);
  await expect(table).toContainText('no difference');
  await expect(stage.getByRole('img', { name: /against target/ }).first()).toBeVisible({ timeout: 30_000 });
  const download = page.waitForEvent('download');
  await stage.getByRole('button', { name: 'Save as a report (HTML)' }).click();
  const html = await readFile(await (await download).path(), 'utf8');
  expect(html).toContain('<h2>Working window, Conventional gun, wide fan</h2>');
  expect(html).toContain('never calls a room safe');
  // Self-contained: nothing is fetched from anywhere.
  expect(html.match(/(?:src|href)="(?!#)|@import|<script/g)).toBeNull();
  await page.setViewportSize({ width: 360, height: 740 });
  expect(await isNarrow(page, '.setups')).toBe(true);
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});

test('hands are sprayed by two workers and left off; a wish is worked out, used, and undone', async ({ app, page }) => {
  await expect(app.sentence).toContainText('inside the limits', { timeout: 60_000 });
  const stage = await openStage(page, /Set-ups/, 'Gun set-ups');
  await stage.getByRole('tab', { name: 'Hands' }).click();
  await expect(stage.getByText(/^Cross coat .* hands \(practised; seed 20\)/)).toBeVisible({ timeout: 60_000 });
  await stage.getByRole('button', { name: 'Leave off' }).click();
  await expect(stage.getByRole('row', { name: /^No fault/ })).toContainText('%', { timeout: 15_000 });
  await stage.getByRole('textbox', { name: /Hands to each/ }).fill('0');
  await expect(stage.getByText(/outside 20 to 2000/)).toBeVisible();
  await stage.getByRole('textbox', { name: /Hands to each/ }).fill('20');
  await stage.getByRole('button', { name: 'Spray by all hands' }).click();
  await expect(stage.getByText(/sprayed by 20 hands/)).toBeVisible({ timeout: 60_000 });
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

  await stage.getByRole('tab', { name: 'Worked out' }).click();
  await stage.getByRole('button', { name: 'Work it out' }).click();
  await expect(stage.getByRole('heading', { name: 'Ways to lay it' })).toBeVisible({ timeout: 60_000 });
  await stage.getByRole('button', { name: 'Use this for the coat' }).first().click();
  await expect(stage.getByText(/of the job or the wish as it was/)).toBeVisible();
  await stage.getByRole('button', { name: 'Undo' }).click();
  await stage.getByRole('textbox', { name: /Dry film, all coats/ }).fill('120');
  await stage.getByRole('textbox', { name: /Coats, all alike/ }).fill('1');
  await stage.getByRole('button', { name: 'Work it out' }).click();
  await expect(stage.getByRole('heading', { name: 'Nothing meets the wish' })).toBeVisible({ timeout: 60_000 });
  await expect(stage.getByText(/^With \d+ coats/)).toBeVisible();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.keyboard.press('Escape');
  await expect(stage).toBeHidden();
  await expect(page.getByRole('button', { name: /Set-ups/ }).first()).toBeFocused();
});

/** A photographed stroke of a fan 200 mm wide, β1 = 3, on a card of 400 × 300 mm that fills the picture nearly. */
function strokePhoto(): Buffer {
  const film = strokeFilm({ width_m: 0.2, beta1: 3, peak: 0.6 });
  const { width, height, rgba } = photographed({ size_m: [0.4, 0.3], film }, { ...PLAIN_CAMERA, corners: movedCorners(PLAIN_CAMERA.corners, 0.05, 3), noise: 0.005 });
  const png = new PNG({ width, height });
  png.data.set(rgba);
  return PNG.sync.write(png);
}

test('a card is typed, fitted and used; a photograph is squared by the keyboard and read', async ({ app, page }) => {
  await expect(app.sentence).toContainText('inside the limits', { timeout: 60_000 });
  const stage = await openStage(page, /Set-ups/, 'Gun set-ups');
  const box = stage.getByRole('textbox', { name: /Place and film/ });
  await box.fill('x_mm,film_um\n0,5\n10,6\n');
  await expect(stage.getByText(/too few/).first()).toBeVisible({ timeout: 30_000 });
  const rows = Array.from({ length: 31 }, (_, i) => {
    const x = -150 + 10 * i;
    const u = x / 120;
    return `${x},${(Math.abs(u) < 1 ? 34 * (1 - u * u) ** 2.5 : 0).toFixed(2)}`;
  });
  await box.fill(['x_mm,film_um', ...rows].join('\n'));
  await expect(stage.getByRole('row', { name: /^Full width 240/ })).toBeVisible({ timeout: 30_000 });
  await stage.getByRole('textbox', { name: 'Caught' }).fill('45');
  await stage.getByRole('textbox', { name: 'Time, trigger full on' }).fill('15');
  await expect(stage.getByText(/Fluid rate 180 mL\/min, ± \d/)).toBeVisible({ timeout: 30_000 });
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await stage.getByRole('button', { name: 'Use for this set-up' }).click();
  await expect(stage.getByRole('button', { name: 'Undo' })).toHaveAttribute('title', /test card/);

  await stage.locator('input[type=file]').setInputFiles({ name: 'card.png', mimeType: 'image/png', buffer: strokePhoto() });
  const photo = stage.getByRole('region', { name: 'Photograph of the card' });
  await expect(photo).toBeVisible({ timeout: 30_000 });
  const corner = photo.getByRole('button', { name: /^Corner lower left/i });
  const place = await corner.getAttribute('aria-label');
  await corner.press('Shift+ArrowRight');
  await expect(corner).not.toHaveAttribute('aria-label', place ?? '');
  expect(await isNarrow(page, '.setups')).toBe(true);
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.reload();
  const again = await openStage(page, /Set-ups/, 'Gun set-ups');
  await expect(again.getByRole('textbox', { name: /Place and film/ })).toHaveValue(/film_um/);
  await expect(again.getByRole('textbox', { name: 'Caught' })).toHaveValue('45');
});
