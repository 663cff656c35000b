import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import { expect, test } from './appPage.ts';
import { isNarrow, openStage } from './stagePage.ts';

test.setTimeout(180_000);

test('the job card is written, follows the units, is saved as HTML and as text, and fits a telephone', async ({ app, page }) => {
  await expect(app.sentence).toContainText('of the panel', { timeout: 60_000 });
  const stage = await openStage(page, /^Scheme/, 'Scheme', 'Job card');
  // The frame runs no script, a test's neither: its page is read as it was given.
  const frame = stage.locator('iframe');
  await expect(frame).toHaveAttribute('srcdoc', /<h1>Monday 4 May 2026<\/h1>/, { timeout: 60_000 });
  await expect(frame).toHaveAttribute('srcdoc', /200 mm: about a spread hand/);
  await expect(frame).toHaveAttribute('srcdoc', /first stroke of each pass/);

  const html = page.waitForEvent('download');
  await stage.getByRole('button', { name: 'Save as HTML' }).click();
  expect(await readFile(await (await html).path(), 'utf8')).toMatch(/^<!doctype html>/);
  const text = page.waitForEvent('download');
  await stage.getByRole('button', { name: 'Save as text' }).click();
  expect(await readFile(await (await text).path(), 'utf8')).toContain('Third clear, cross coat');

  await page.setViewportSize({ width: 360, height: 740 });
  await expect.poll(() => isNarrow(page, '.scheme')).toBe(true);
  expect((await new AxeBuilder({ page }).exclude('iframe').analyze()).violations).toEqual([]);
});
