import { readFile } from 'node:fs/promises';
import type { Locator, Page } from '@playwright/test';
import { parseJob } from '../../sim/index.ts';
import { expect, test } from './appPage.ts';
import { tabAndPress, tabAndType, tabTo } from './keyboard.ts';
import { strokeByKeys } from './practicePage.ts';

test.setTimeout(400_000);

/** A stage from the row of stages, by keys. */
async function turnTo(page: Page, name: string): Promise<void> {
  await tabAndPress(page, page.getByRole('navigation', { name: 'Stages of the work' }).getByRole('button', { name: new RegExp(`^${name}`) }).first());
}

async function openOver(page: Page, name: string, title = name): Promise<Locator> {
  await turnTo(page, name);
  const stage = page.getByRole('dialog', { name: title });
  await expect(stage).toBeVisible();
  return stage;
}

/** The next sheet of a stage, from the tab of the one shown. */
async function nextSheet(page: Page, stage: Locator, name: string): Promise<void> {
  await tabTo(page, stage.getByRole('tab', { selected: true }));
  for (let i = 0; i < 10 && !(await stage.getByRole('tab', { name, exact: true, selected: true }).isVisible()); i++) await page.keyboard.press('ArrowRight');
  await expect(stage.getByRole('tab', { name, exact: true })).toBeFocused();
}

async function close(page: Page, stage: Locator): Promise<void> {
  await page.keyboard.press('Escape');
  await expect(stage).toBeHidden();
}

test('the whole job by the keyboard alone: asked, planned, set, practised, surveyed, signed, recorded, saved', async ({ app, page }) => {
  await app.settled();

  // What today's air says.
  const today = await openOver(page, 'Today');
  await tabAndType(page, today.getByRole('textbox', { name: 'Temperature' }), '70F');
  await expect(today.getByRole('textbox', { name: 'Temperature' })).toHaveValue('21.111');
  await expect(today.getByTestId('today-verdict')).toContainText('Go', { timeout: 30_000 });
  await close(page, today);

  // A job of its own, with its panel, air, gun and strokes.
  await tabAndPress(page, page.getByRole('button', { name: 'Jobs', exact: true }));
  const jobs = page.getByRole('dialog', { name: 'Jobs' });
  await tabAndPress(page, jobs.getByRole('button', { name: 'New small job' }));
  await expect(jobs).toBeHidden();
  await expect(page.locator('.title-name p').first()).toHaveText('New job');
  await turnTo(page, 'Part');
  await tabAndType(page, app.field('Job'), 'Left aileron');
  await tabAndType(page, app.field('Width'), '800');
  await turnTo(page, 'Air');
  await tabAndType(page, app.field('Temperature'), '22');
  await turnTo(page, 'Gun');
  await tabAndType(page, app.field('Fan width'), '240');
  await turnTo(page, 'Strokes');
  await tabAndType(page, app.field('Speed of the gun'), '0.4');
  await app.settled();
  await expect(app.wetMean).toHaveText(/^\d/);

  // The scheme that it belongs to.
  const scheme = await openOver(page, 'Scheme');
  await tabAndPress(page, scheme.getByRole('button', { name: 'Begin with this' }).first());
  await expect(scheme.getByTestId('steps-said')).toBeVisible({ timeout: 60_000 });
  await close(page, scheme);

  // How much the set-up forgives.
  const setUps = await openOver(page, 'Set-ups', 'Gun set-ups');
  await nextSheet(page, setUps, 'Working window');
  await expect(setUps.locator('.window-map[aria-busy="false"]')).toBeVisible({ timeout: 60_000 });
  const speed = setUps.getByRole('slider', { name: /Speed/ });
  await tabTo(page, speed);
  const before = await speed.inputValue();
  await page.keyboard.press('ArrowRight');
  await expect(speed).not.toHaveValue(before);
  await close(page, setUps);

  // A stroke laid by keys.
  const practice = await openOver(page, 'Practice');
  await expect(practice.locator('.spray-host')).toHaveAttribute('data-ready', 'true', { timeout: 30_000 });
  await tabTo(page, practice.getByRole('application', { name: 'Panel to spray' }));
  await strokeByKeys(page);
  await tabAndPress(page, practice.getByRole('button', { name: 'Finish and debrief' }));
  await expect(practice.locator('.debrief')).toBeVisible({ timeout: 60_000 });
  await close(page, practice);

  // Readings by place, judged.
  const survey = await openOver(page, 'Survey');
  await tabAndType(page, survey.getByRole('textbox', { name: 'Film that it should have, dry' }), '50');
  await tabAndPress(page, survey.getByRole('button', { name: 'Begin the survey' }));
  await tabTo(page, survey.getByRole('application', { name: /to scale/ }));
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('Enter');
  for (const film of ['52', '49', '55', '58', '2 mil']) {
    await page.keyboard.type(film);
    await page.keyboard.press('Enter');
  }
  await expect(survey.getByRole('heading', { name: '5 readings' })).toBeVisible();
  await nextSheet(page, survey, 'Verdict');
  await expect(survey.getByText(/rule borrowed from/i).first()).toBeVisible();
  await close(page, survey);

  // What was really done, signed.
  const log = await openOver(page, 'Log');
  await tabAndType(page, log.getByLabel('Who writes here'), 'Runa Feldmark');
  await tabAndPress(page, log.getByRole('button', { name: /^(Begin it now|Begin a blank entry)$/ }).first());
  await tabAndType(page, log.getByLabel('Remark'), 'Laid by keys.');
  await tabAndPress(page, log.getByRole('button', { name: 'End now' }));
  await tabAndPress(page, log.getByRole('button', { name: 'Sign and lock this entry' }));
  await expect(log.getByText(/Unchanged since it was signed/)).toBeVisible();

  // The record, and the job.
  await nextSheet(page, log, 'Record');
  const [record] = await Promise.all([page.waitForEvent('download', { timeout: 90_000 }), tabAndPress(page, log.getByRole('button', { name: 'Save as HTML' }))]);
  expect(await readFile(await record.path(), 'utf8')).toContain('<h1>Record: Left aileron</h1>');
  await close(page, log);
  const [file] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('ControlOrMeta+s')]);
  const { job } = parseJob(JSON.parse(await readFile(await file.path(), 'utf8')));
  expect(job).toMatchObject({ name: 'Left aileron', air: { temperature_C: 22 }, setUps: [{ fan: { width_mm: 240 } }], coats: [{ plan: { speed_m_s: 0.4 } }], schemes: [{}] });
  expect(job.surveys?.[0]?.readings).toHaveLength(5);
  expect(job.log?.[0]).toMatchObject({ notes: 'Laid by keys.', signed: { who: 'Runa Feldmark' } });
});
