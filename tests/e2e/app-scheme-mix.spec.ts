import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import { expect, test } from './appPage.ts';
import { isNarrow, openStage } from './stagePage.ts';

test.setTimeout(180_000);

async function openMix(page: Page): Promise<Locator> {
  const stage = await openStage(page, /^Scheme/, 'Scheme', 'Mix');
  await expect(stage.getByRole('heading', { name: 'How far to thin, in which cup, for the gun' })).toBeVisible();
  return stage;
}

test('a ratio is typed, poured to marks, taken into the job and undone', async ({ app, page }) => {
  await expect(app.sentence).toContainText('of the panel', { timeout: 60_000 });
  const stage = await openMix(page);
  const ratio = stage.getByRole('textbox', { name: 'Ratio' }).first();
  await ratio.fill('10 %');
  await expect(stage.getByText(/may be of the finish or of the total/).first()).toBeVisible();
  await ratio.fill('4:1');
  await expect(stage.getByTestId('mix-said')).toHaveText('Four volumes of finish, one of thinner.');
  await stage.getByRole('combobox', { name: 'Mixed for' }).selectOption('own');
  await stage.getByRole('textbox', { name: 'Area' }).fill('6');
  await expect(stage.getByRole('img', { name: /^Pot: finish up to \d+ mL, then thinner up to/ })).toBeVisible();
  await expect(stage.getByRole('row', { name: /^thinner/ })).toContainText('mL');
  await expect(stage.getByTestId('mix-later')).toContainText('The same mix at 28.0 °C');
  await expect(stage.getByText('Never with an electric drill', { exact: false })).toBeVisible();

  // Seconds outside the cup's range are not taken.
  await stage.getByRole('textbox', { name: 'Seconds read of this mix' }).fill('90');
  await expect(stage.getByText(/90 s is outside the range of the Zahn cup No\. 2/)).toBeVisible();
  await expect(stage.getByRole('button', { name: 'Take this thinning into the job' })).toBeDisabled();
  await stage.getByRole('textbox', { name: 'Seconds read of this mix' }).fill('30');
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await stage.getByRole('button', { name: 'Take this thinning into the job' }).click();
  await expect(stage.getByText('The job has this ratio already.')).toBeVisible();
  await expect(stage.getByText(/^By the cup reading in the job.*30 s in the Zahn cup No\. 2/)).toBeVisible();
  const undo = stage.getByRole('button', { name: 'Undo' });
  await expect(undo).toHaveAttribute('title', 'Undo: Take this thinning');
  await undo.click();
  await expect(stage.getByText(/^By the usual law of this kind of finish/)).toBeVisible();
});

test('two readings set the law, retarder is tried, a slip is saved; nothing scrolls sideways', async ({ app, page }) => {
  await expect(app.sentence).toContainText('of the panel', { timeout: 60_000 });
  const stage = await openMix(page);
  for (const [reading, ratio, seconds] of [['First reading', '4:1', '40'], ['Second reading', '1:1', '20']] as const) {
    const group = stage.getByRole('group', { name: reading });
    await group.getByRole('textbox', { name: 'Ratio' }).fill(ratio);
    await group.getByRole('textbox', { name: 'Seconds' }).fill(seconds);
  }
  await expect(stage.getByText('The answer above is by your readings.')).toBeVisible();
  await stage.getByRole('textbox', { name: 'Seconds wanted for the gun' }).fill('30');
  // ln 56 lies between ln 91 at a fifth of thinner and ln 21 at a half: 0.299 of thinner, 1:0.427.
  await expect(stage.getByText(/^For 30 s in the Zahn cup No\. 2 at 21\.0 °C: about seven volumes of finish, three of thinner \(1:0\.42/)).toBeVisible();
  await stage.getByRole('button', { name: 'Use this ratio' }).click();
  await expect(stage.getByTestId('mix-said')).toContainText('seven volumes of finish');
  await stage.getByRole('button', { name: 'Use 10 % of retarder' }).click();
  await expect(stage.getByText(/^Retarder, n-butyl alcohol: 10 % of the thinner, within the usual/)).toBeVisible();
  const download = page.waitForEvent('download');
  await stage.getByRole('button', { name: 'Save the mixing slip to print (HTML)' }).click();
  const html = await readFile(await (await download).path(), 'utf8');
  expect(html).toContain('Cup seconds read');
  expect(html.match(/(?:src|href)="(?!#)|@import|<script/g)).toBeNull();
  await page.setViewportSize({ width: 360, height: 740 });
  expect(await isNarrow(page, '.scheme')).toBe(true);
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});
