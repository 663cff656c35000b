import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import { expect, test } from './appPage.ts';
import { pressEnter } from './press.ts';
import { isNarrow, openStage } from './stagePage.ts';

test.setTimeout(180_000);

/** A new survey of the coat in hand, asking for a film. */
async function beginSurvey(page: Page, film: string): Promise<Locator> {
  const stage = await openStage(page, /^Survey/, 'Survey', 'Readings');
  const another = stage.getByRole('button', { name: 'New survey' });
  if (await another.isVisible()) await another.click();
  await stage.getByRole('textbox', { name: 'Film that it should have, dry' }).fill(film);
  await stage.getByRole('button', { name: 'Begin the survey' }).click();
  await expect(stage.getByRole('heading', { name: '0 readings' })).toBeVisible();
  return stage;
}

async function paste(stage: Locator, text: string): Promise<void> {
  await stage.getByRole('textbox', { name: 'Readings, one a line' }).fill(text);
}

async function dropFile(stage: Locator, name: string, text: string): Promise<void> {
  const data = await stage.page().evaluateHandle(
    ([fileName, content]) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([content], fileName, { type: 'text/csv' }));
      return transfer;
    },
    [name, text] as const,
  );
  await stage.locator('.survey-readings').dispatchEvent('drop', { dataTransfer: data });
}

test('readings are entered by the keyboard alone, changed, removed, and brought back by undo', async ({ app: { page } }) => {
  const stage = await beginSurvey(page, '100');
  await expect(stage.getByText(/open cloth: magnetic and eddy-current gauges read nothing useful/)).toBeVisible();
  const panel = stage.getByRole('application', { name: /to scale/ });
  await panel.focus();
  await page.keyboard.press('Shift+ArrowLeft');
  await page.keyboard.press('ArrowUp');
  await expect(stage.getByTestId('survey-place')).toHaveText('Cross: x 260, y 635 mm.');
  await page.keyboard.press('Enter');
  await expect(stage.getByTestId('survey-place')).toHaveText('Place: x 260, y 635 mm.');
  // Enter has put the caret where the figure is typed, and each figure's Enter makes ready for the next.
  for (const film of ['105', '98', '110', '120', '4 mil']) {
    await page.keyboard.type(film);
    await page.keyboard.press('Enter');
  }
  await expect(stage.getByRole('heading', { name: '5 readings' })).toBeVisible();
  await expect(stage.getByRole('row', { name: /^1 105 µm dry 105 µm x 260, y 635 mm/ })).toBeVisible();
  await expect(stage.getByRole('row', { name: /^5 102 µm dry 102 µm not said/ })).toBeVisible();

  await pressEnter(stage.getByRole('button', { name: 'Change reading 5' }));
  const editor = stage.getByRole('region', { name: 'Reading 5' });
  await editor.getByRole('textbox', { name: 'Film as read, dry' }).fill('101');
  await expect(stage.getByRole('row', { name: /^5 101 µm dry/ })).toBeVisible();
  await pressEnter(editor.getByRole('button', { name: 'Done' }));
  await expect(stage.getByText(/^1 change since/)).toBeVisible();
  await pressEnter(stage.getByRole('button', { name: 'Remove reading 5' }));
  await expect(stage.getByRole('heading', { name: '4 readings' })).toBeVisible();
  await pressEnter(stage.getByRole('button', { name: 'Undo' }));
  await expect(stage.getByRole('heading', { name: '5 readings' })).toBeVisible();

  await page.setViewportSize({ width: 360, height: 740 });
  await expect.poll(() => isNarrow(page, '.survey')).toBe(true);
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});

test('a column in mil and a dropped CSV are understood; a bad one tells row and column and loses nothing', async ({ app: { page } }) => {
  const stage = await beginSurvey(page, '50');
  await stage.getByRole('textbox', { name: 'Film as read, dry' }).fill('47');
  await paste(stage, '2.0\n2.2\n1.9\n');
  await expect(stage.getByTestId('survey-pasted')).toContainText('read as µm');
  await stage.getByRole('combobox', { name: /A column without a name/ }).selectOption('mil');
  await expect(stage.getByTestId('survey-pasted')).toContainText('3 readings understood: gauge on metal 3, dry film 48.3 to 55.9 µm, read as mil');
  await stage.getByRole('button', { name: 'Add 3' }).click();
  await expect(stage.getByRole('heading', { name: '3 readings' })).toBeVisible();

  await dropFile(stage, 'bad.csv', 'x_mm,y_mm,dft_um\n10,20,50\n30,40,fifty\n');
  const notice = stage.getByRole('alert').filter({ hasText: 'bad.csv was not opened; nothing was changed' });
  await expect(notice).toContainText(/row 3/);
  await expect(notice).toContainText('dft_um');
  await expect(stage.getByRole('textbox', { name: 'Film as read, dry' })).toHaveValue('47');
  await expect(stage.getByRole('heading', { name: '3 readings' })).toBeVisible();

  await dropFile(stage, 'good.csv', 'x_mm,y_mm,dft_um,area_id,spot_id,note\n100,400,50,A,1,"=SUM(A1)"\n300,700,52,A,1,\n');
  await expect(stage.getByRole('heading', { name: '5 readings' })).toBeVisible();
  const download = page.waitForEvent('download');
  await stage.getByRole('button', { name: 'Save the readings (CSV)' }).click();
  const csv = await readFile(await (await download).path(), 'utf8');
  expect(csv.split('\r\n')[0]).toBe('area_id,spot_id,x_mm,y_mm,dft_um,note');
  expect(csv).toContain('\'=SUM(A1)');
  await stage.getByRole('button', { name: 'Undo' }).click();
  await expect(stage.getByRole('heading', { name: '3 readings' })).toBeVisible();

  await paste(stage, 'dft_um\n50\nx\n');
  await expect(stage.getByText(/row 3, column dft_um/)).toBeVisible();
  await page.reload();
  const again = await openStage(page, /^Survey/, 'Survey', 'Readings');
  await expect(again.getByRole('textbox', { name: 'Readings, one a line' })).toHaveValue('dft_um\n50\nx\n');
  await expect(again.getByRole('textbox', { name: 'Film as read, dry' })).toHaveValue('47');
});

test('the verdict goes by the boundary, stays open for combs, and says who decides', async ({ app: { page } }) => {
  const stage = await beginSurvey(page, '100');
  await paste(stage, 'dft_um\n105\n98\n110\n120\n101\n');
  await stage.getByRole('button', { name: 'Add 5' }).click();
  await stage.getByRole('tab', { name: 'Verdict' }).click();
  const answer = stage.getByTestId('survey-answer');
  await expect(answer).toHaveText(/^Fails: 1 of 5 readings \(20 %\)/);
  await stage.getByRole('combobox', { name: 'Boundary of that share' }).selectOption('lenient');
  await expect(answer).toHaveText(/^Passes: .*mean, 107 µm, reaches 100 µm/);
  await expect(stage.getByText(/accepts nothing/)).toBeVisible();
  await expect(stage.getByText(/Rule borrowed from ISO 19840/)).toBeVisible();
  await expect(stage.getByRole('row', { name: /90\/10 rule/ })).toContainText('Fails');
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

  await stage.getByRole('combobox', { name: 'Judged by' }).selectOption({ label: 'Spots and areas rule' });
  await expect(stage.getByRole('textbox', { name: 'Least specified film, dry' })).toHaveValue('80');
  await expect(stage.getByText(/Rule borrowed from SSPC-PA 2/)).toBeVisible();
  await stage.getByRole('button', { name: 'Undo' }).click();
  await expect(answer).toHaveText(/^Passes/);
  await page.setViewportSize({ width: 360, height: 740 });
  await expect.poll(() => isNarrow(page, '.survey')).toBe(true);
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.setViewportSize({ width: 1280, height: 900 });

  await stage.getByRole('tab', { name: 'Readings' }).click();
  for (let k = 0; k < 5; k++) await stage.getByRole('button', { name: 'Remove reading 1', exact: true }).click();
  await stage.getByRole('button', { name: 'Wet-film comb' }).click();
  await stage.getByRole('textbox', { name: 'Last wetted tooth, wet film' }).fill('800');
  await stage.getByRole('textbox', { name: 'Next dry tooth, wet film' }).fill('2000');
  await page.keyboard.press('Enter');
  await expect(stage.getByRole('row', { name: /800 to 2000 µm wet/ })).toBeVisible();
  await stage.getByRole('tab', { name: 'Verdict' }).click();
  await expect(answer).toHaveText(/^Not decided: /);
});

test('a coupon is worked out at once, and a signed survey is locked', async ({ app: { page } }) => {
  const stage = await beginSurvey(page, '5');
  await stage.getByRole('button', { name: 'Weigh a coupon' }).click();
  await stage.getByRole('textbox', { name: 'Weight before the coat' }).fill('4.40');
  await stage.getByRole('textbox', { name: 'Weight when dry' }).fill('4.64');
  await stage.getByRole('textbox', { name: 'Coated area, all coated faces' }).fill('400');
  await expect(stage.getByText(/µm dry film, 6 g\/m² dry$/)).toBeVisible();
  await page.keyboard.press('Enter');
  await expect(stage.getByRole('heading', { name: '1 reading' })).toBeVisible();
  await stage.getByRole('textbox', { name: 'Name of the person who signs' }).fill('Inga Vestermark, inspector');
  await stage.getByRole('button', { name: 'Sign and lock this survey' }).click();
  await expect(stage.getByText(/Signed by Inga Vestermark, inspector on/)).toBeVisible();
  await expect(stage.getByRole('button', { name: 'Remove reading 1' })).toBeDisabled();
  await expect(stage.getByRole('textbox', { name: 'Name of the survey' })).toBeDisabled();
  await stage.getByRole('button', { name: 'Remove', exact: true }).click();
  await expect(stage.getByRole('alert').filter({ hasText: 'Nothing was removed' })).toContainText('so it is locked and stays');
  await dropFile(stage, 'late.csv', 'dft_um\n50\n');
  await expect(stage.getByRole('heading', { name: '1 reading' })).toBeVisible();
});
