import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import ICAL from 'ical.js';
import { expect, test } from './appPage.ts';
import { isNarrow, openStage } from './stagePage.ts';

test.setTimeout(180_000);

test('the days are laid, a step is tried late, hours are changed and undone, and the calendar is read back', async ({ app, page }) => {
  await expect(app.sentence).toContainText('inside the limits', { timeout: 60_000 });
  const stage = await openStage(page, /^Scheme/, 'Scheme', 'Days');
  const ready = stage.getByTestId('days-ready');
  await expect(ready).toContainText(/^Ready on .* at \d\d:\d\d: 10 coats, .* at work, .* of waits\./, { timeout: 60_000 });
  const planned = await ready.textContent();

  // A trial changes no job.
  await stage.getByRole('combobox', { name: 'Begin late: Third clear, cross coat' }).selectOption({ label: '2 h late' });
  await expect(ready).toContainText('Begun late');
  await expect(stage.getByRole('row', { name: /Third clear, cross coat/ })).toContainText('2 h later');
  await stage.getByRole('button', { name: 'All as planned again' }).click();
  await expect(ready).toHaveText(planned ?? '');
  await expect(stage.getByRole('button', { name: 'Undo' })).toBeDisabled();

  await stage.getByRole('button', { name: /^Count down after step 3/ }).click();
  await expect(stage.getByText(/^Earliest next step, “Clear over tapes and patches”/)).toBeVisible();
  await stage.getByText(/^1 First clear.*until/).click();
  await expect(stage.getByText(/^Stated 3 h at 70 °F; in this air 2 h 51 min/)).toBeVisible();

  await stage.getByLabel('Work ends each day').fill('07:00');
  await expect(stage.getByText(/^Work ends at 07:00, not after it begins/)).toBeVisible();
  await stage.getByLabel('Work ends each day').fill('20:00');
  await expect(ready).not.toHaveText(planned ?? '');
  await stage.getByRole('button', { name: 'Undo' }).click();
  await expect(ready).toHaveText(planned ?? '');
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

  const download = page.waitForEvent('download');
  await stage.getByRole('button', { name: 'Save as a calendar (.ics)' }).click();
  const events = new ICAL.Component(ICAL.parse(await readFile(await (await download).path(), 'utf8')) as never).getAllSubcomponents('vevent');
  const summaries = events.map((event) => String(event.getFirstPropertyValue('summary')));
  expect(summaries).toContain('Third clear, cross coat');
  expect(summaries).toContain('Wait after Third clear, cross coat');
  expect(events.every((event) => event.getFirstSubcomponent('valarm') !== null)).toBe(true);

  await page.setViewportSize({ width: 360, height: 740 });
  expect(await isNarrow(page, '.scheme')).toBe(true);
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});
