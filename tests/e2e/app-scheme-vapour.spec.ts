import AxeBuilder from '@axe-core/playwright';
import { expect, test } from './appPage.ts';
import { isNarrow, openStage } from './stagePage.ts';

test.setTimeout(180_000);

test('the vapour of a coat is told first, answers to the room, is undone, and opens to its working', async ({ app, page }) => {
  await expect(app.sentence).toContainText('inside the limits', { timeout: 60_000 });
  const stage = await openStage(page, /Scheme/, 'Scheme', 'Vapour');
  const said = stage.getByTestId('vapour-said');
  await expect(said).toContainText('of the lower explosive limit', { timeout: 60_000 });
  await expect(said).toContainText('far from exploding is not fit to breathe');
  await expect(stage.getByText(/not a clearance/)).toBeVisible();
  await expect(stage.getByText(/a fire rule, not a health rule/)).toBeVisible();
  const before = await said.textContent();
  const room = stage.getByRole('textbox', { name: 'Room', exact: true });
  await room.fill('20 m3');
  await expect(said).not.toHaveText(before ?? '');
  await room.fill('0');
  await expect(stage.getByText(/outside 1 to 100000 m³/)).toBeVisible();
  await room.press('Enter');
  await stage.getByRole('button', { name: 'Undo' }).click();
  await expect(said).toHaveText(before ?? '');
  await stage.getByText('As a table').click();
  await expect(stage.getByRole('columnheader', { name: 'times exposure limits' })).toBeVisible();
  await stage.getByText('How the air is worked out').click();
  await expect(stage.getByText(/Le Chatelier/)).toBeVisible();
  const face = stage.getByRole('textbox', { name: 'Open face of the booth' });
  await face.fill('');
  await expect(stage.getByText('No open face is stated')).toBeVisible();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.setViewportSize({ width: 360, height: 740 });
  expect(await isNarrow(page, '.scheme')).toBe(true);
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});
