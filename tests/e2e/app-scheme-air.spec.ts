import AxeBuilder from '@axe-core/playwright';
import { expect, test } from './appPage.ts';
import { isNarrow } from './stagePage.ts';

test.setTimeout(180_000);

const LOGGED = 'time;temp_F;RH (%)\n2026-05-04T08:00;55;85\n2026-05-04T11:00;66;60\n2026-05-04T14:00;73;45\n2026-05-04T18:00;68;60\n';

test('the air is judged by whose rule, mended in one step, and read from a logger', async ({ app, page }) => {
  await app.settled();
  await page.getByRole('navigation').getByRole('button', { name: /^Scheme/ }).click();
  const stage = page.getByRole('dialog', { name: 'Scheme' });
  await stage.getByRole('tab', { name: 'Air' }).click();
  const verdict = stage.getByTestId('air-verdict');

  await stage.getByLabel('Temperature', { exact: true }).first().fill('18');
  await stage.getByLabel('Relative humidity').first().fill('70');
  await stage.getByLabel('Relative humidity').first().blur();
  await expect(verdict).toHaveText('Wait');
  await expect(stage.getByTestId('air-reasons')).toContainText('below the dew point, so it can blush');
  await expect(stage.getByRole('row', { name: /^FAA circular AC 43\.13-1B/ })).toContainText('Go with care');
  await expect(stage.getByText('Never warm the room with an open flame').first()).toBeVisible();

  await stage.getByRole('button', { name: /^Look at 2\d\.\d °C$/ }).last().click();
  await expect(verdict).toHaveText('Go');
  await stage.getByRole('button', { name: 'Undo' }).click();
  await expect(verdict).toHaveText('Wait');

  await stage.getByLabel('Open a logger’s file').setInputFiles({ name: 'logger.csv', mimeType: 'text/csv', buffer: Buffer.from(LOGGED) });
  await expect(stage.getByText('4 rows in the job, 4 of them on this day.')).toBeVisible();
  await stage.getByLabel('Open a logger’s file').setInputFiles({ name: 'shares.csv', mimeType: 'text/csv', buffer: Buffer.from('time,temperature_C,humidity\n2026-05-04T08:00,18,0.7\n') });
  await expect(stage.getByRole('alert')).toContainText('may mean 0.7 % or 70 %');
  await expect(stage.getByText('4 rows in the job, 4 of them on this day.')).toBeVisible();
  await stage.getByRole('alert').getByRole('button', { name: 'Dismiss' }).click();
  await stage.getByText('The hours as a table').click();
  await stage.getByRole('button', { name: 'Look at 14:00' }).last().click();
  await expect(verdict).toHaveText('Go');

  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.setViewportSize({ width: 360, height: 740 });
  expect(await isNarrow(page, '.scheme')).toBe(true);
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});
