import AxeBuilder from '@axe-core/playwright';
import { expect, test } from './appPage.ts';
import { isNarrow, openStage } from './stagePage.ts';

test.setTimeout(240_000);

test('the demo’s survey stands beside its plan; an offer is taken and undone; the maps turn', async ({ app, page }) => {
  await expect(app.sentence).toContainText('inside the limits', { timeout: 60_000 });
  const stage = await openStage(page, /Survey/, 'Survey', 'Plan against truth');
  await stage.getByLabel('Survey', { exact: true }).selectOption({ index: 0 });
  const said = stage.getByTestId('truth-said');
  await expect(said).toContainText('of that planned: 20 readings', { timeout: 90_000 });
  const before = await said.textContent();
  await expect(stage.getByText(/a guess, not a reading/)).toBeVisible();
  await stage.getByRole('button', { name: 'Standard error' }).click();
  await expect(stage.getByRole('img', { name: /standard error of the dry film/ }).first()).toBeVisible();
  await stage.getByText('As a table').click();
  await expect(stage.getByRole('columnheader', { name: /Planned, µm dry/ })).toBeVisible();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await stage.getByRole('button', { name: /^Use for this set-up: .*Transfer efficiency 65 % to/ }).click();
  // To the digits shown: the offer has four figures.
  await expect(said).toContainText(/is (100|>99\.9|99\.9) %/, { timeout: 90_000 });
  await expect(stage.getByRole('button', { name: /^Use for this set-up/ })).toHaveCount(0);
  await stage.getByRole('button', { name: 'Undo' }).click();
  await expect(said).toHaveText(before ?? '', { timeout: 90_000 });
  await page.setViewportSize({ width: 360, height: 740 });
  await expect.poll(() => isNarrow(page, '.survey')).toBe(true);
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});

test('where to read: the rule’s number and the model’s places, listed, drawn and saved as CSV', async ({ app, page }) => {
  await expect(app.sentence).toContainText('inside the limits', { timeout: 60_000 });
  const stage = await openStage(page, /Survey/, 'Survey', 'Where to read');
  await stage.getByLabel('Survey', { exact: true }).selectOption({ index: 0 });
  await expect(stage.getByTestId('where-said')).toContainText('asks for 5 readings on this panel, and 4 places', { timeout: 90_000 });
  await expect(stage.getByRole('row')).toHaveCount(10);
  await expect(stage.getByRole('img', { name: /with 9 numbered places to read/ })).toBeVisible();
  const saving = page.waitForEvent('download');
  await stage.getByRole('button', { name: 'Save as CSV, to fill in' }).click();
  expect((await saving).suggestedFilename()).toMatch(/-places\.csv$/);
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.setViewportSize({ width: 360, height: 740 });
  await expect.poll(() => isNarrow(page, '.survey')).toBe(true);
});
