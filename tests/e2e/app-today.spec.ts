import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import { expect, test } from './appPage.ts';
import { isNarrow, openStage } from './stagePage.ts';

test.setTimeout(180_000);

async function openToday(page: Page): Promise<Locator> {
  const stage = await openStage(page, /Today/, 'Today');
  await expect(stage.getByTestId('today-verdict')).toBeVisible({ timeout: 30_000 });
  return stage;
}

test('four fields by the keyboard alone give a verdict', async ({ app, page }) => {
  await expect(app.sentence).toBeVisible();
  await page.getByRole('navigation').getByRole('button', { name: /Today/ }).focus();
  await page.keyboard.press('Enter');
  const stage = page.getByRole('dialog', { name: 'Today' });
  const verdict = stage.getByTestId('today-verdict');
  await expect(verdict).toContainText('Go', { timeout: 30_000 });
  await expect(stage.getByText(/not a clearance\..*Fan on, respirator on/).first()).toBeVisible();
  const temperature = stage.getByRole('textbox', { name: 'Temperature' });
  // From the head to the first field, past its buttons.
  for (let i = 0; i < 8 && !(await temperature.evaluate((box) => box === document.activeElement)); i++) await page.keyboard.press('Tab');
  await expect(temperature).toBeFocused();
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type('61F');
  await page.keyboard.press('Tab');
  await expect(temperature).toHaveValue('16.111');
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type('80');
  await page.keyboard.press('Tab');
  await expect(stage.getByRole('combobox', { name: 'Finish' })).toBeFocused();
  await page.keyboard.type('Col');
  await page.keyboard.press('Tab');
  await expect(stage.getByRole('combobox', { name: 'Thinner' })).toBeFocused();
  await page.keyboard.type('Ret');
  await page.keyboard.press('Tab');
  await expect(stage.getByRole('combobox', { name: 'Finish' })).toHaveValue('colour-dope');
  await expect(stage.getByRole('combobox', { name: 'Thinner' })).toHaveValue('retarded');
  await expect(verdict).toContainText('Wait');
  await expect(verdict).toContainText('he humidity, 80 %, is above 75 %');
  await expect(stage.getByRole('heading', { name: 'What would make it go' })).toBeVisible();
  await expect(stage.getByText(/^Warm the room to/).first()).toBeVisible();
});

test('answers open to their working, speak both units, take any unit, and keep what was typed', async ({ app, page }) => {
  await expect(app.sentence).toBeVisible();
  const stage = await openToday(page);
  await stage.getByRole('combobox', { name: 'Cup' }).selectOption({ label: 'Ford cup No. 4' });
  await stage.getByRole('textbox', { name: 'Seconds in that cup' }).fill('36');
  await expect(stage.getByText(/36 s in the Ford cup No\. 4 is 121 mm²\/s/)).toBeVisible();
  await stage.getByRole('textbox', { name: 'Seconds in that cup' }).fill('17');
  await expect(stage.getByText(/17 s is outside the range of the Ford cup No\. 4/)).toBeVisible();
  await expect(stage.getByText(/^Mix .* at the recommended 1 : /)).toBeVisible();
  await stage.getByRole('textbox', { name: 'Finish to thinner' }).fill('4:1');
  await expect(stage.getByText(/^Mix .* at 1 : 0\.25 as typed: /)).toBeVisible();
  await stage.getByRole('textbox', { name: 'Dry film wanted, all coats' }).fill('1 mil');
  await expect(stage.getByText(/All coats: 25\.4 µm \(1 mil\) dry; in one coat that would be 159 µm/)).toBeVisible();
  await stage.getByRole('button', { name: 'mil · °F' }).click();
  await expect(stage.getByText(/All coats: 1 mil \(25\.4 µm\) dry/)).toBeVisible();
  await stage.getByRole('button', { name: 'µm · °C' }).click();
  await stage.getByRole('textbox', { name: 'Area' }).fill('0');
  await expect(stage.getByRole('alert').filter({ hasText: 'outside 0.01 to 1000 m²' })).toBeVisible();
  await stage.getByRole('textbox', { name: 'Area' }).fill('4');
  await stage.getByText('How this comes about').nth(2).click();
  await expect(stage.getByText(/wet = dry · \(1 \+ R\) \/ VS/)).toBeVisible();
  await page.reload();
  const again = await openToday(page);
  await expect(again.getByRole('textbox', { name: 'Area' })).toHaveValue('4');
  await expect(again.getByRole('textbox', { name: 'Seconds in that cup' })).toHaveValue('17');
});

test('any answer becomes the job in hand with one press, and one Undo brings the other back', async ({ app, page }) => {
  await expect(app.sentence).toBeVisible();
  const before = await page.locator('.title-name p').textContent();
  const stage = await openToday(page);
  await stage.getByRole('textbox', { name: 'Area' }).fill('1');
  await stage.getByRole('button', { name: /Make this a job, open at Strokes/ }).click();
  await expect(stage).toBeHidden();
  await expect(page.locator('.title-name p')).toHaveText(/^From Today/);
  await expect(page.getByRole('navigation').getByRole('button', { name: /^Strokes/ })).toHaveAttribute('aria-current', 'step');
  await app.settled();
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(page.locator('.title-name p')).toHaveText(before ?? '');
});

test('it reads well narrow and wide, light and dark, and prints on one page', async ({ app, page }) => {
  await expect(app.sentence).toBeVisible();
  const stage = await openToday(page);
  for (const width of [360, 1280, 1920]) {
    await page.setViewportSize({ width, height: 900 });
    expect(await isNarrow(page, '.today')).toBe(true);
  }
  await stage.getByText('Everything else', { exact: true }).click();
  for (const summary of await stage.getByText('How this comes about').all()) await summary.click();
  await page.setViewportSize({ width: 360, height: 900 });
  expect(await isNarrow(page, '.today')).toBe(true);
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  }
  for (const summary of await stage.getByText('How this comes about').all()) await summary.click();
  for (const format of ['A4', 'Letter'] as const) {
    const pdf = await page.pdf({ format });
    expect(pdf.toString('latin1').match(/\/Type\s*\/Page[^s]/g)).toHaveLength(1);
  }
  await page.keyboard.press('Escape');
  await expect(stage).toBeHidden();
  await expect(page.getByRole('navigation').getByRole('button', { name: /Today/ })).toBeFocused();
});
