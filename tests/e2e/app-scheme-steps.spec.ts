import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import { expect, test } from './appPage.ts';
import { isNarrow, openStage } from './stagePage.ts';

test.setTimeout(180_000);

async function openSteps(page: Page): Promise<Locator> {
  const stage = await openStage(page, /^Scheme/, 'Scheme', 'Steps');
  await expect(stage.getByTestId('steps-said')).toBeVisible({ timeout: 60_000 });
  return stage;
}

test('a step is added, moved by key, and undone; a rule fires with its words and leads to its step', async ({ app, page }) => {
  await expect(app.sentence).toBeVisible();
  const stage = await openSteps(page);
  await expect(stage.getByTestId('steps-said')).toContainText('14 steps, 10 coats');
  const names = stage.locator('.scheme-steps-name');
  await expect(names).toHaveCount(14);

  await stage.getByRole('button', { name: /Second aluminium/ }).first().click();
  await stage.getByRole('button', { name: 'Sand', exact: true }).click();
  await expect(names.nth(8)).toHaveText('Sand, level only');
  // Sanding the last aluminium coat is what the circular forbids.
  const finding = stage.locator('.scheme-steps-finding').filter({ hasText: 'Last aluminium coat sanded' });
  await expect(finding).toContainText('No aluminium follows this sanding.', { timeout: 60_000 });
  await expect(finding).toContainText('AC 43.13-1B 2-21h');
  await expect(stage.getByTestId('steps-said')).toContainText('1 thing to put right first');
  await finding.getByRole('button', { name: 'Go to step 9' }).click();
  await expect(stage.getByRole('button', { name: /Sand, level only/ }).first()).toBeFocused();

  await page.keyboard.press('Alt+ArrowUp');
  await expect(names.nth(7)).toHaveText('Sand, level only');
  await expect(stage.getByRole('button', { name: /Sand, level only/ }).first()).toBeFocused();
  await expect(stage.getByText('Last aluminium coat sanded')).toHaveCount(0, { timeout: 60_000 });
  await stage.getByRole('button', { name: 'Undo' }).click();
  await stage.getByRole('button', { name: 'Undo' }).click();
  await expect(names).toHaveCount(14);
});

test('a coat is edited: a wait that is too short is found; the sheet fits a telephone and axe finds nothing', async ({ app, page }) => {
  await expect(app.sentence).toBeVisible();
  const stage = await openSteps(page);
  await stage.getByRole('button', { name: /Third clear/ }).first().click();
  await expect(stage.getByText(/Why this coat is there: .*Leaving a coat out is not this program/)).toBeVisible();
  await stage.getByRole('textbox', { name: 'Wait after it, at 70 °F' }).fill('0');
  await expect(stage.getByRole('heading', { name: /Coat over one still wet/ })).toBeVisible({ timeout: 60_000 });
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.setViewportSize({ width: 360, height: 740 });
  await expect.poll(() => isNarrow(page, '.scheme')).toBe(true);
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});

test('a scheme is removed and begun again from the preset, in one step of undo', async ({ app, page }) => {
  await expect(app.sentence).toBeVisible();
  const stage = await openSteps(page);
  await stage.getByText('Panels, sides and limits of the scheme').click();
  await stage.getByRole('button', { name: 'Remove this scheme' }).click();
  await expect(stage.getByRole('heading', { name: 'Begin a scheme' })).toBeVisible();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await stage.getByRole('button', { name: 'Begin with this' }).first().click();
  await expect(stage.locator('.scheme-steps-name').first()).toHaveText('First clear, brushed, thinned to wet the cloth through');
  await expect(stage.getByTestId('steps-said')).toContainText('find nothing against it', { timeout: 60_000 });
  await stage.getByRole('button', { name: 'Undo' }).click();
  await expect(stage.getByRole('heading', { name: 'Begin a scheme' })).toBeVisible();
});
