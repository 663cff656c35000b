import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import { expect, test } from './appPage.ts';
import { isNarrow, openStage } from './stagePage.ts';

test.setTimeout(180_000);

test('amounts: a missing price is said; typed, the cost appears and is undone; the balance and a coverage are worked out; 360 px', async ({ app, page }) => {
  await expect(app.sentence).toContainText('inside the limits', { timeout: 60_000 });
  const stage = await openStage(page, /^Scheme/, 'Scheme', 'Amounts and weight');
  await expect(stage.getByTestId('buy')).toContainText('Buy 1 × 1 L of clear dope', { timeout: 60_000 });
  const cost = stage.getByTestId('cost');
  await expect(cost).toHaveText(/^Cost: not known\. Missing: the price of general thinner, 1 L and 5 L/);

  await stage.getByText('Tins and their prices', { exact: true }).click();
  const thinner = stage.getByRole('group', { name: 'thinner', exact: true });
  await thinner.getByLabel('Price of tin 1').fill('9.50');
  await expect(cost).toHaveText(/^Cost of the tins: \d+\.\d\d EUR/);
  await thinner.getByLabel('Price of tin 1').fill('dear');
  await expect(thinner.getByText(/"dear" is not a number/)).toBeVisible();
  await thinner.getByLabel('Price of tin 1').fill('');
  await expect(cost).toContainText('the price of general thinner, 1 L');
  await stage.getByRole('button', { name: 'Undo' }).click();
  // What was typed in one field is one step.
  await expect(cost).toHaveText(/^Cost: not known\. Missing: the price of general thinner, 1 L and 5 L/);
  await expect(stage.getByRole('button', { name: 'Undo' })).toBeDisabled();

  await expect(stage.getByTestId('balance')).toContainText('to the right of the hinge line', { timeout: 60_000 });
  await stage.getByLabel('Mixed liquid used').fill('500 mL');
  await stage.getByLabel('Weight gained, dry').fill('20');
  await expect(stage.getByTestId('coverage')).toContainText('of the solids used are on the part');
  await stage.getByLabel('Weight gained, dry').fill('2000');
  await expect(stage.getByTestId('coverage')).toContainText('That cannot be');
  const download = page.waitForEvent('download');
  await stage.getByRole('button', { name: 'Save the tables (CSV)' }).click();
  expect(await readFile(await (await download).path(), 'utf8')).toMatch(/^table,name,amount \(L\)/);

  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.setViewportSize({ width: 360, height: 740 });
  expect(await isNarrow(page, '.scheme')).toBe(true);
});
