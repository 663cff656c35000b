import AxeBuilder from '@axe-core/playwright';
import { expect, test } from './appPage.ts';

test.setTimeout(180_000);

const STOP_TOLD = /With a stop of 0\.6 s, the heaviest wet film is \d/;

test('a demonstration answers its knob, is told in words, and opens as a job', async ({ app, page }) => {
  const stage = await app.openDemonstrations();
  await stage.getByRole('combobox', { name: 'Demonstration' }).selectOption({ label: 'The gun stops in mid-stroke' });
  const words = stage.getByTestId('lesson-sentence');
  await expect(words).toContainText(STOP_TOLD, { timeout: 30_000 });
  await expect(stage.getByText(/^Ask:/)).toBeVisible();
  await expect(stage.getByText(/^Caution:/)).toBeVisible();
  const knob = stage.getByRole('slider', { name: /stop/i });
  const wrong = await knob.getAttribute('aria-valuetext');
  const told = await words.textContent();
  await knob.press('ArrowLeft');
  await expect(knob).not.toHaveAttribute('aria-valuetext', wrong ?? '');
  await expect(words).not.toHaveText(told ?? '', { timeout: 30_000 });
  await stage.getByRole('button', { name: /^Cured:/ }).click();
  await expect(words).not.toContainText('With a stop', { timeout: 30_000 });
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await stage.getByRole('button', { name: /^Wrong:/ }).click();
  await expect(words).toContainText(STOP_TOLD, { timeout: 30_000 });
  await stage.getByRole('button', { name: 'Open as a job' }).click();
  await expect(stage).toBeHidden();
  await expect(app.sentence).toContainText('heavy spot', { timeout: 60_000 });
});

test('closing by Escape gives the focus back', async ({ app, page }) => {
  const stage = await app.openDemonstrations();
  await expect(stage).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(stage).toBeHidden();
  await expect(page.getByRole('button', { name: /Demonstrations/ })).toBeFocused();
});

test('every handout is one sheet of A4', async ({ app, page }) => {
  const stage = await app.openDemonstrations();
  const list = stage.getByRole('combobox', { name: 'Demonstration' });
  await expect(list).toBeVisible();
  const titles = await list.locator('option').allTextContents();
  expect(titles.length).toBeGreaterThan(10);
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.lesson-handout')).toBeVisible({ timeout: 30_000 });
  await expect(app.sentence).toBeHidden();
  await page.emulateMedia({ media: null });
  const sheets: Record<string, number> = {};
  for (const title of titles) {
    await list.selectOption({ label: title });
    await expect(stage.getByRole('button', { name: 'Print handout' })).toBeEnabled({ timeout: 30_000 });
    const paper = (await page.pdf({ format: 'A4', preferCSSPageSize: true })).toString('latin1');
    sheets[title] = (paper.match(/\/Type\s*\/Page\b/g) ?? []).length;
  }
  expect(sheets).toEqual(Object.fromEntries(titles.map((title) => [title, 1])));
});

test('the stage fits a narrow screen', async ({ app, page }) => {
  await page.setViewportSize({ width: 360, height: 740 });
  const stage = await app.openDemonstrations();
  await expect(stage.getByText(/the heaviest wet film is/)).toBeVisible({ timeout: 30_000 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
});
