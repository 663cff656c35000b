import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { allowed_ms } from './allowedTime.ts';
import { expect, test } from './appPage.ts';

/** Goes into the film's life and waits until it is known to its end. */
async function openTime(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'In time' }).click();
  await expect(slider(page)).toBeVisible({ timeout: 60_000 });
}

function slider(page: Page) {
  return page.getByRole('slider', { name: 'Time of the film' });
}

function line(page: Page) {
  return page.getByTestId('moment-line');
}

async function numberOf(page: Page, name: 'data-time' | 'data-wet'): Promise<number> {
  return Number(await line(page).getAttribute(name));
}

test.setTimeout(180_000);

test('the wet film falls with time, map and section follow, and the film as laid comes back', async ({ app, page }) => {
  await app.openPlanned();
  const trace = page.locator('.chart-line.wet');
  const laid = await trace.getAttribute('d');
  await openTime(page);
  await expect(line(page)).toContainText('no film yet');
  await slider(page).press('End');
  await expect(line(page)).toContainText('ready for another coat');
  const [dry_m, end_s, dryTrace] = [await numberOf(page, 'data-wet'), await numberOf(page, 'data-time'), await trace.getAttribute('d')];
  await slider(page).press('Home');
  await expect(line(page)).toHaveAttribute('data-time', '0');
  // Ten seconds each while the coat is sprayed, which takes 70.
  for (let i = 0; i < 9; i++) await slider(page).press('PageUp');
  // Nine moments of the film, one after the other; a busy machine takes its time.
  await expect.poll(() => numberOf(page, 'data-time'), { timeout: 30_000 }).toBeGreaterThan(75);
  await expect(line(page)).toContainText('nothing has run');
  await expect(line(page)).toContainText(/µm wet on average.*above the dew point.*dry to touch in about \d+ min, recoat in about \d+ min/);
  const fresh_s = await numberOf(page, 'data-time');
  expect(fresh_s).toBeLessThan(end_s / 4);
  // A sprayed dope is a fifth to a quarter solids, so fresh film is more than twice what it dries to.
  expect(await numberOf(page, 'data-wet')).toBeGreaterThan(2 * dry_m);
  expect(await trace.getAttribute('d')).not.toBe(dryTrace);
  await page.getByRole('button', { name: 'As laid' }).click();
  await expect.poll(async () => trace.getAttribute('d')).toBe(laid);
});

test('space plays and pauses, a key is a step there and back, and 30 times real time keeps pace', { tag: '@timed' }, async ({ app, page }) => {
  await app.openPlanned();
  await openTime(page);
  await slider(page).press('ArrowRight');
  await expect(line(page)).toHaveAttribute('data-time', '1');
  await slider(page).press('ArrowLeft');
  await expect(line(page)).toHaveAttribute('data-time', '0');
  await page.getByRole('button', { name: '30×' }).click();
  await slider(page).focus();
  await page.keyboard.press('Space');
  await page.waitForTimeout(500);
  const [from_s, from_ms] = [await numberOf(page, 'data-time'), Date.now()];
  await page.waitForTimeout(3000);
  const [to_s, to_ms] = [await numberOf(page, 'data-time'), Date.now()];
  await page.keyboard.press('Space');
  await expect(page.getByRole('button', { name: 'Play', exact: true })).toBeVisible();
  const pace = ((to_s - from_s) * 1000) / (to_ms - from_ms);
  test.info().annotations.push({ type: 'times real time, asked for 30', description: pace.toFixed(1) });
  // Both ends are read to a frame of a quarter of a second at most, of three.
  // A slower machine shows fewer moments of the film in the same time, by as much.
  const slower = (await allowed_ms(page, 1000, 1)) / 1000;
  expect(pace).toBeGreaterThan((30 * (1 - 0.5 / 3)) / slower);
  // The time that was asked for when it paused is still on its way.
  const asked = await slider(page).getAttribute('aria-valuetext');
  await expect(line(page)).toContainText(`${asked}: `);
  expect(await numberOf(page, 'data-time')).toBeGreaterThanOrEqual(to_s);
  const stands_s = await numberOf(page, 'data-time');
  await page.waitForTimeout(300);
  expect(await numberOf(page, 'data-time')).toBe(stands_s);
  await app.settled();
});

test('while it plays a press is answered within 200 ms', { tag: '@timed' }, async ({ app, page }) => {
  await app.openPlanned();
  await openTime(page);
  await page.getByRole('button', { name: '30×' }).click();
  await page.getByRole('button', { name: 'Play', exact: true }).click();
  await expect.poll(() => numberOf(page, 'data-time')).toBeGreaterThan(1);
  // Inside the page, from the press to the frame after the one that shows it: the test's own wire is no part of it.
  const answered_ms = await page.evaluate(async () => {
    // The five whose form stands in the window; the others open a stage over it.
    const buttons = [...document.querySelectorAll<HTMLButtonElement>('.stage')].filter((button) => /^\d+(Part|Mix|Air|Gun|Strokes)/.test(button.textContent ?? ''));
    const taken: number[] = [];
    // Three rounds: the first seconds of playing fetch and compile what the next ones have.
    for (const button of [...buttons, ...buttons, ...buttons]) {
      await new Promise((resolve) => setTimeout(resolve, 150));
      const from = performance.now();
      button.click();
      while (button.getAttribute('aria-current') !== 'step') await new Promise((resolve) => requestAnimationFrame(resolve));
      await new Promise((resolve) => requestAnimationFrame(resolve));
      taken.push(performance.now() - from);
    }
    return taken;
  });
  test.info().annotations.push({ type: 'press to answer, ms', description: answered_ms.map((each) => each.toFixed(0)).join(', ') });
  expect(answered_ms.length).toBe(15);
  await expect(page.getByRole('button', { name: 'Pause' })).toBeVisible();
  await page.getByRole('button', { name: 'Pause' }).click();
  expect(Math.min(...answered_ms)).toBeLessThan(await allowed_ms(page, 200));
});

test('frames go into the textures that are there', async ({ app, page }) => {
  await app.openPlanned();
  await openTime(page);
  await page.evaluate(() => {
    const counts = { made: 0, written: 0 };
    (window as unknown as { counts: typeof counts }).counts = counts;
    const gl = WebGL2RenderingContext.prototype as unknown as Record<string, (...all: unknown[]) => unknown>;
    for (const [name, count] of [['createTexture', 'made'], ['texSubImage2D', 'written'], ['texImage2D', 'written']] as const) {
      const call = gl[name];
      if (call === undefined) throw new Error(`no ${name}`);
      gl[name] = function counted(this: unknown, ...all: unknown[]) {
        counts[count]++;
        return call.apply(this, all);
      };
    }
  });
  await page.getByRole('button', { name: '30×' }).click();
  await page.getByRole('button', { name: 'Play', exact: true }).click();
  const counts = () => page.evaluate(() => (window as unknown as { counts: { made: number; written: number } }).counts);
  // However slow the machine is: a handful of frames has to come.
  await expect.poll(async () => (await counts()).written, { timeout: 30_000 }).toBeGreaterThan(5);
  await page.getByRole('button', { name: 'Pause' }).click();
  expect((await counts()).made).toBe(0);
});

test('every field has its legend in the unit of the reader, and a run is told', async ({ app, page }) => {
  await openTime(page);
  // A key goes no farther than the film has lived by then.
  await expect(async () => {
    await slider(page).press('PageUp');
    expect(await numberOf(page, 'data-time')).toBeGreaterThanOrEqual(200);
  }).toPass({ timeout: 60_000 });
  await expect(line(page)).toContainText(/runs over .* cm², the longest .* mm/);
  const choice = page.getByRole('combobox', { name: 'Show on the panel' });
  const legend = page.locator('.legend figcaption');
  for (const [words, title] of [
    ['Dry film now', 'dry film now, µm'],
    ['Viscosity, top layer', 'viscosity of the top layer, mPa s'],
    ['Film above the dew point', 'film temperature above the dew point, °C'],
    ['How far it has run', 'distance that the film has run, mm'],
    ['Solids, top layer', 'solids of the top layer, %'],
    ['Wet film now', 'wet film now, µm'],
  ] as const) {
    await choice.selectOption({ label: words });
    await expect(legend).toHaveText(title, { timeout: 20_000 });
  }
  await app.settled();
});

test("the life's faults follow those of the film as laid, with figures, zone, cause and cure, and leave with it", async ({ app, page }) => {
  const heads = page.locator('.fault-head');
  const asLaid = await heads.count();
  await openTime(page);
  const figures = page.getByTestId('life-figures');
  await expect(figures).toContainText(/Dry to touch after\d+ min/, { timeout: 60_000 });
  await expect(figures).toContainText(/Ripple left, on average.* µmup to .* µm anywhere/);
  const run = heads.filter({ hasText: 'Run' });
  await expect(run).toContainText(`F${asLaid + 1}`);
  await run.click();
  const body = page.locator('.fault.chosen .fault-body');
  await expect(body).toContainText(/Stroke \d+ stood still/, { timeout: 60_000 });
  await expect(body).toContainText(/Cure\. With no stop in stroke \d+/, { timeout: 60_000 });
  await expect(page.getByTestId('canvas')).toContainText(`F${asLaid + 1}`);
  await page.getByRole('button', { name: 'As laid' }).click();
  await expect(heads).toHaveCount(asLaid);
  await expect(figures).toBeHidden();
  await app.settled();
});

test('a changed job is watched anew, and another coat too', async ({ app, page }) => {
  await app.openPlanned();
  await openTime(page);
  await slider(page).press('End');
  await expect(line(page)).toContainText('ready for another coat');
  const before_m = await numberOf(page, 'data-wet');
  await app.field('Speed of the gun').fill('0.9');
  await app.settled();
  await expect.poll(() => numberOf(page, 'data-wet'), { timeout: 60_000 }).toBeLessThan(0.8 * before_m);
  await app.chooseCoat('Single coat, 30 % overlap');
  await expect(slider(page)).toBeVisible({ timeout: 60_000 });
  await app.settled();
});

test('axe finds nothing: the film in time, light and dark', async ({ app, page }) => {
  await app.openPlanned();
  await openTime(page);
  await slider(page).press('PageUp');
  await app.settled();
  for (const theme of ['Light', 'Dark']) {
    await page.locator('summary', { hasText: 'More' }).click();
    await page.getByLabel('Paper').selectOption({ label: theme });
    await page.keyboard.press('Escape');
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`), theme).toEqual([]);
  }
});

test('from 360 to 1920 px the film in time is no wider than the window, in 16 px and 44 px', async ({ app, page }) => {
  await app.openPlanned();
  await openTime(page);
  for (let i = 0; i < 15; i++) await slider(page).press('PageUp');
  await app.settled();
  for (const width of [360, 1280, 1920]) {
    await page.setViewportSize({ width, height: 900 });
    const found = await page.evaluate(async () => {
      await new Promise(requestAnimationFrame);
      const boxes = [...document.querySelectorAll<HTMLElement>('.time button, .time input, .time summary')];
      const texts = [...document.querySelectorAll<HTMLElement>('.time *')].filter((each) => [...each.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim() !== ''));
      return {
        overflow: document.documentElement.scrollWidth - window.innerWidth,
        low: boxes.filter((each) => each.getBoundingClientRect().height < 43.5).map((each) => each.outerHTML.slice(0, 80)),
        small: texts.filter((each) => parseFloat(getComputedStyle(each).fontSize) < 16).map((each) => each.outerHTML.slice(0, 80)),
        checked: [boxes.length, texts.length],
      };
    });
    expect(found, `${width} px`).toMatchObject({ low: [], small: [] });
    expect(found.overflow, `${width} px`).toBeLessThanOrEqual(0);
    expect(Math.min(...found.checked)).toBeGreaterThan(5);
  }
});
