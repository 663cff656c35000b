import type { Page } from '@playwright/test';
import { PNG } from 'pngjs';
import { demoJob, serialiseJob } from '../../sim/index.ts';
import { expect, test } from './appPage.ts';

/** A job that opens and cannot be sprayed: its hole lies beside the outline. */
function unsprayable(): string {
  const job = demoJob();
  const panels = job.part.panels.map((panel) => ({ ...panel, holes: [{ circle_mm: [9000, 9000, 40] as [number, number, number] }] }));
  return serialiseJob({ ...job, name: 'Hole beside the outline', part: { ...job.part, panels } });
}

/** How many colours a picture of the canvas's inside has; of bare paper, one. */
async function coloursOfCanvas(page: Page): Promise<Set<string>> {
  const box = await page.getByTestId('canvas').boundingBox();
  if (box === null) throw new Error('no canvas');
  const clip = { x: box.x + 2, y: box.y + 2, width: box.width - 4, height: box.height - 4 };
  const { data } = PNG.sync.read(await page.screenshot({ clip }));
  const seen = new Set<string>();
  for (let at = 0; at < data.length; at += 4) seen.add(`${data[at]} ${data[at + 1]} ${data[at + 2]}`);
  return seen;
}

test('a job that cannot be sprayed leaves nothing of the film before; Undo brings that back', async ({ app, page }) => {
  await app.settled();
  expect((await coloursOfCanvas(page)).size).toBeGreaterThan(10);
  await app.drop('beside.json', unsprayable());
  await expect(page.getByRole('alert')).toContainText('cannot be sprayed');
  await expect(page.getByRole('banner')).toContainText('Hole beside the outline');
  await expect(page.getByText('No film yet: see the message above.')).toBeVisible();
  await expect(app.sentence).toHaveCount(0);
  await expect(app.wetMean).toHaveCount(0);
  await expect(page.locator('.fault')).toHaveCount(0);
  await expect(page.locator('.stroke-table')).toHaveCount(0);
  await expect.poll(async () => (await coloursOfCanvas(page)).size).toBe(1);
  await app.drop('path.csv', 't_s,x_mm,y_mm,z_mm,fan_deg,pitch_deg,yaw_deg,trigger\n0,0,200,200,90,0,0,1\n1,400,200,200,90,0,0,1\n');
  await expect(page.locator('.recording', { hasText: 'path.csv' })).toBeVisible();
  await expect(app.wetMean).toHaveCount(0);
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('button', { name: 'Undo' }).click();
  await app.settled();
  await expect(page.getByRole('banner')).toContainText('Rudder, first build coat');
  await expect(page.getByRole('alert')).toHaveCount(0);
});

test('an edit that cannot be sprayed keeps the last good film, and says so', async ({ app, page }) => {
  await app.settled();
  const mean = await app.wetMean.textContent();
  await app.stage('Part');
  // The demo's hole moves beside its outline.
  const places = page.getByRole('group', { name: 'Hole 1' }).getByRole('textbox');
  await places.first().fill('9000');
  await expect(page.getByText('These figures are of the last job that could be sprayed; see the message above.')).toBeVisible();
  await expect(app.wetMean).toHaveText(mean ?? '');
});

test('a reload with a job that cannot be sprayed shows bare paper, not black', async ({ app, page }) => {
  await app.drop('beside.json', unsprayable());
  await expect(page.getByRole('alert')).toContainText('cannot be sprayed');
  await page.reload();
  await expect(page.getByRole('alert')).toContainText('cannot be sprayed');
  await expect(page.locator('.panel-canvas')).toBeAttached();
  const paper = await page.getByTestId('canvas').evaluate((host) => getComputedStyle(host).backgroundColor.match(/\d+/g)?.join(' '));
  expect([...(await coloursOfCanvas(page))]).toEqual([paper]);
});

test('Fit shows the numbers of all strokes, also of those that begin off the panel', async ({ app, page }) => {
  await app.openPlanned();
  for (const lead of ['Fluid on before the edge', 'Fluid off past the edge']) {
    await page.locator('summary', { hasText: 'Order, edges and trigger' }).evaluate((summary) => ((summary.parentElement as HTMLDetailsElement).open = true));
    // Above and below the panel, where the margin of paper alone is less than half of this.
    await app.field(lead).fill('150');
    await app.field(lead).press('Tab');
  }
  // Faults put away, so that no tag takes a number's place.
  await page.getByRole('checkbox', { name: 'faults' }).uncheck();
  await app.settled();
  await page.getByRole('button', { name: 'Fit' }).click();
  const strokes = Number((await page.getByRole('heading', { name: /Strokes as planned/ }).textContent())?.match(/\d+/)?.[0]);
  const canvas = await page.getByTestId('canvas').boundingBox();
  if (canvas === null) throw new Error('no canvas');
  for (const number of [1, 2, strokes]) {
    const text = page.locator('.panel-canvas svg text').filter({ hasText: new RegExp(`^${number}$`) }).first();
    // A frame may put a new text in place of the one just found.
    await expect(async () => {
      const box = await text.boundingBox({ timeout: 1000 });
      if (box === null) throw new Error(`stroke ${number} has no box`);
      expect(box.x).toBeGreaterThanOrEqual(canvas.x + 50);
      expect(box.x + box.width).toBeLessThanOrEqual(canvas.x + canvas.width);
      expect(box.y).toBeGreaterThanOrEqual(canvas.y);
    }).toPass({ timeout: 10_000 });
  }
});
