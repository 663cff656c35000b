import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import { expect, test } from './appPage.ts';
import { isNarrow, openStage } from './stagePage.ts';

test.setTimeout(180_000);

/** The job as the page saves it. */
async function savedText(page: Page): Promise<string> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  return readFile(await (await download).path(), 'utf8');
}

/** Opens the entries of a log, and begins a blank one as somebody; what the demo has noted before stays. */
async function beginBlank(page: Page, who = 'Runa Feldmark'): Promise<Locator> {
  const stage = await openStage(page, /^Log/, 'Log', 'Entries');
  await stage.getByLabel('Who writes here').fill(who);
  await stage.getByText('Begin something else').click();
  await stage.getByRole('button', { name: 'Begin a blank entry' }).click();
  await stage.getByLabel('Who does it').waitFor();
  return stage;
}

test('an entry is made from the plan by keyboard alone', async ({ app, page }) => {
  await expect(app.sentence).toBeVisible();
  const stage = await openStage(page, /^Log/, 'Log', 'Entries');
  const who = stage.getByLabel('Who writes here');
  await who.focus();
  await page.keyboard.type('Runa Feldmark');
  const begin = stage.getByRole('button', { name: /^(Begin it now|Go on with it)$/ }).first();
  await begin.focus();
  await page.keyboard.press('Enter');
  await expect(stage.getByText('Before and while you do it')).toBeVisible();
  await stage.getByLabel('Cup seconds').focus();
  await page.keyboard.type('24');
  await expect(stage.getByText('it counts once seconds and temperature are both there')).toBeVisible();
  await page.keyboard.press('Tab');
  await page.keyboard.type('20.5');
  await stage.getByLabel('Air temperature at the start').focus();
  await page.keyboard.type('20.6');
  await page.keyboard.press('Tab');
  await page.keyboard.type('54');
  await page.keyboard.press('Tab');
  await page.keyboard.type('12');
  await expect(stage.getByText(/20\.6 °C, 54 %, dew point 11\.0 °C; surface 12\.0 °C, 1\.0 °C above the dew point/)).toBeVisible();
  await expect(stage.getByRole('status', { name: 'Look at again' })).toContainText('only 1.0 °C above the dew point');
  await stage.getByRole('button', { name: 'End now' }).focus();
  await page.keyboard.press('Enter');
  await expect(stage.getByLabel('Ended')).toBeVisible();
  await expect(stage.locator('.log-entries-entry.open').getByText('Not signed', { exact: true })).toBeVisible();
});

test('a change is in the history; signed it is locked, its digest shown; reopening keeps the signature; undo takes none back', async ({ app, page }) => {
  await expect(app.sentence).toBeVisible();
  const stage = await beginBlank(page);
  await stage.getByLabel('Remark').fill('Dusty room.');
  await stage.getByLabel('Remark').blur();
  await expect(stage.locator('.history-list')).toHaveCount(0);
  await stage.getByLabel('Remark').fill('Clean room.');
  await stage.getByText('1 change since it was first noted').click();
  await expect(stage.locator('.history-list li')).toContainText('Before: “Dusty room.”');
  await stage.getByLabel('Cup seconds').fill('24');
  await stage.getByLabel('What they sign, in their own words').fill('Seen and found as written.');
  await stage.getByRole('button', { name: 'Sign and lock this entry' }).click();
  await expect(stage.getByRole('alert')).toContainText('half typed or wrong (“24”)');
  await stage.getByLabel('Cup seconds').fill('');
  await stage.getByRole('button', { name: 'Sign and lock this entry' }).click();
  await expect(stage.getByText(/Unchanged since it was signed/)).toBeVisible();
  await expect(stage.locator('.sign-off-digest code')).toHaveText(/^[0-9a-f]{64}$/);
  await expect(stage.getByLabel('Remark')).toHaveCount(0);
  await expect(stage.getByRole('button', { name: 'Undo' })).toBeDisabled();
  await stage.getByText('Reopen it, to change it').click();
  await stage.getByLabel('Why', { exact: true }).fill('The room was misread.');
  await stage.getByRole('button', { name: 'Reopen this entry' }).click();
  await expect(stage.getByLabel('Remark')).toHaveValue('Clean room.');
  await stage.getByText('2 changes since it was first noted').click();
  await expect(stage.locator('.history-list li').last()).toContainText('reopened, because: The room was misread.');
});

test('a file changed after it was signed says so', async ({ app, page }) => {
  await expect(app.sentence).toBeVisible();
  const stage = await beginBlank(page);
  await stage.getByLabel('Remark').fill('As it was.');
  await stage.getByRole('button', { name: 'Sign and lock this entry' }).click();
  await expect(stage.getByText(/Unchanged since it was signed/)).toBeVisible();
  await stage.getByRole('button', { name: /^Close/ }).click();
  const text = await savedText(page);
  expect(text).toContain('As it was.');
  await page.getByTestId('open-file').setInputFiles({ name: 'changed.crosscoat.json', mimeType: 'application/json', buffer: Buffer.from(text.replace('As it was.', 'As it was not.')) });
  await app.settled();
  const again = await openStage(page, /^Log/, 'Log', 'Entries');
  await expect(again.getByText(/CHANGED SINCE SIGNED/)).toBeVisible();
});

test('a photograph is made small, without what the camera wrote; another kind of file is refused with the reason', async ({ app, page }) => {
  await expect(app.sentence).toBeVisible();
  const stage = await beginBlank(page);
  const png = await page.evaluate(async () => {
    const canvas = document.createElement('canvas');
    canvas.width = 3000;
    canvas.height = 2000;
    const context = canvas.getContext('2d')!;
    for (let i = 0; i < 4000; i++) {
      context.fillStyle = `hsl(${(i * 37) % 360} 70% ${20 + (i % 60)}%)`;
      context.fillRect((i * 97) % 3000, (i * 61) % 2000, 90, 70);
    }
    const blob = await new Promise<Blob>((done) => canvas.toBlob((made) => done(made!), 'image/png'));
    return [...new Uint8Array(await blob.arrayBuffer())];
  });
  await stage.getByLabel('Take or choose photographs').setInputFiles([
    { name: 'wide tip.png', mimeType: 'image/png', buffer: Buffer.from(png) },
    { name: 'notes.txt', mimeType: 'text/plain', buffer: Buffer.from('no picture') },
  ]);
  const photo = stage.locator('.log-entries-photo');
  await expect(photo).toHaveAttribute('width', '1280', { timeout: 60_000 });
  await expect(photo).toHaveAttribute('height', '853');
  const src = await photo.getAttribute('src');
  expect(src!.length).toBeLessThan(400_100);
  expect(Buffer.from(src!.split(',')[1]!, 'base64').includes('Exif')).toBe(false);
  await expect(stage.getByRole('alert')).toContainText('notes.txt is no PNG or JPEG');
});

test('a half-typed field outlives a reload; the sheet fits a telephone and axe finds nothing', async ({ app, page }) => {
  await expect(app.sentence).toBeVisible();
  let stage = await beginBlank(page);
  await stage.getByLabel('Cup seconds').fill('2');
  await stage.getByLabel('What they sign, in their own words').fill('Half a sen');
  await page.reload();
  await expect(app.sentence).toBeVisible();
  stage = await openStage(page, /^Log/, 'Log', 'Entries');
  await expect(stage.getByLabel('Cup seconds')).toHaveValue('2');
  await expect(stage.getByLabel('What they sign, in their own words')).toHaveValue('Half a sen');
  await page.setViewportSize({ width: 1280, height: 800 });
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.setViewportSize({ width: 360, height: 740 });
  await expect.poll(() => isNarrow(page, '.log')).toBe(true);
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});
