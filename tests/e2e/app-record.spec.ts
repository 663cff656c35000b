import { readFile } from 'node:fs/promises';
import { createHash } from 'node:crypto';
import AxeBuilder from '@axe-core/playwright';
import { expect, test } from './appPage.ts';
import { isNarrow, openStage } from './stagePage.ts';

test.setTimeout(240_000);

/** Pages that a PDF says it has: the largest count of its tree is that of the root. */
function pageCount(pdf: Buffer): number {
  return Math.max(0, ...[...pdf.toString('latin1').matchAll(/\/Count (\d+)/g)].map(([, count]) => Number(count)));
}

test('the record is written, saved, and prints on A4 and Letter without a request; its digest is that of the canonical file', async ({ app, page, context }) => {
  await expect(app.sentence).toContainText('of the panel', { timeout: 60_000 });
  const stage = await openStage(page, /^Log/, 'Log', 'Record');
  const frame = stage.locator('iframe');
  await expect(frame).toHaveAttribute('srcdoc', /<h1>Record: Rudder, first build coat<\/h1>/, { timeout: 120_000 });
  await expect(stage.getByText('survey “Third clear by coupons”: fails')).toBeVisible();

  const saved = async (name: string): Promise<string> => {
    const download = page.waitForEvent('download');
    await stage.getByRole('button', { name }).click();
    return readFile(await (await download).path(), 'utf8');
  };
  const html = await saved('Save as HTML');
  const canonical = await saved('Save job, canonical form');
  expect(html).toContain(createHash('sha256').update(canonical).digest('hex'));
  expect(await saved('Save readings, CSV')).toContain('reading_no');
  expect(await saved('Save log, CSV')).toContain('Runa Feldmark');

  await page.setViewportSize({ width: 360, height: 740 });
  await expect.poll(() => isNarrow(page, '.log')).toBe(true);
  expect((await new AxeBuilder({ page }).exclude('iframe').analyze()).violations).toEqual([]);

  const sheet = await context.newPage();
  const requests: string[] = [];
  sheet.on('request', (request) => requests.push(request.url()));
  await sheet.setContent(html);
  expect(requests.filter((url) => !url.startsWith('data:'))).toEqual([]);
  expect(await sheet.evaluate(() => document.scripts.length)).toBe(0);
  expect((await new AxeBuilder({ page: sheet }).analyze()).violations).toEqual([]);
  for (const [format, width_px] of [['A4', 794], ['Letter', 816]] as const) {
    await sheet.emulateMedia({ media: 'print' });
    // As wide as the paper less its margins, 14 mm on each side: what is wider would be cut.
    await sheet.setViewportSize({ width: width_px - 106, height: 1000 });
    expect(await sheet.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
    const pages = pageCount(await sheet.pdf({ format }));
    expect(pages).toBeGreaterThan(5);
    expect(pages).toBeLessThan(20);
  }
});
