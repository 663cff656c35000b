import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import { chiefSentence, debriefSession, drillById, markSentence, settleCoat, strokesOf, USUAL_RUBRIC } from '../../sim/index.ts';
import { expect } from './appPage.ts';
import { chooseDrill, debrief, openPractice, practiceTest as test, savedSession, savedStrokes, strokeByKeys } from './practicePage.ts';
import { joined, spray, stroke, type Leg } from './scriptedHand.ts';

test.setTimeout(180_000);

/** The planned strokes of a drill as legs of a hand that sprays them exactly. The fluid follows the trigger by the lag, so the hand pulls that much earlier. */
function planned(id: string, howMany = Infinity): Leg[] {
  const drill = drillById(id);
  const setting = settleCoat(drill.job(), drill.coat);
  const { path, strokes } = strokesOf(setting);
  const legs = strokes.slice(0, howMany).map(({ firstRow, lastRow, meant }) => {
    const row = (index: number) => [path.x_m[index] as number, path.y_m[index] as number] as const;
    return stroke(row(firstRow), row(lastRow), meant.speed_m_s);
  });
  return joined(legs);
}

const phase = (stage: Locator): Locator => stage.locator('.spray-phase');
const rows = async (stage: Locator): Promise<number> => Number(await stage.locator('.spray-cost').getAttribute('data-rows'));

/** Violations of the page as it stands. */
async function complaints(page: Page): Promise<unknown[]> {
  return (await new AxeBuilder({ page }).analyze()).violations;
}

test('a scripted mouse at 1000 samples a second sprays the planned film, and what is told is told again by the model', async ({ app, page }) => {
  void app;
  const stage = await openPractice(page);
  await chooseDrill(stage, 'square-and-steady');
  const sent = await spray(page, planned('square-and-steady'));
  await expect(phase(stage)).toHaveAttribute('data-phase', 'spraying');
  await debrief(stage);
  const session = await savedSession(page, stage);
  // Every sample from the first pull of the trigger on is a row, and a second of aiming before it.
  const kept = session.strokes.trimEnd().split('\n').length - 1;
  expect(kept).toBeGreaterThanOrEqual(sent - 1);

  const told = debriefSession(session, USUAL_RUBRIC);
  const { sprayed, planned: plan, coat } = told;
  console.log(`    mean ${(sprayed.figures.mean_m * 1e6).toFixed(2)} µm, planned ${(plan.figures.mean_m * 1e6).toFixed(2)}; CV ${sprayed.figures.cv.toFixed(4)}, planned ${plan.figures.cv.toFixed(4)}`);
  expect(Math.abs(sprayed.figures.mean_m / plan.figures.mean_m - 1)).toBeLessThan(0.02);
  expect(Math.abs(sprayed.figures.cv - plan.figures.cv)).toBeLessThan(0.02);
  for (const { speed, distance, overlap } of coat.strokes.measures) {
    expect(Math.abs(speed.mean_m_s / 0.3 - 1)).toBeLessThan(0.02);
    expect(Math.abs(distance.mean_m / 0.2 - 1)).toBeLessThan(0.02);
    if (overlap !== null) expect(Math.abs(overlap.meanFraction / 0.5 - 1)).toBeLessThan(0.02);
  }
  expect(told.score.isPassed).toBe(true);
  await expect(stage.locator('.debrief')).toContainText(chiefSentence(told, 'metric'));
  await expect(stage.locator('.debrief')).toContainText(markSentence(told, 'metric'));
  const strokes = await savedStrokes(page, stage);
  expect(strokes).toBe(session.strokes);

  await expect(stage.getByRole('heading', { name: 'What if' })).toBeVisible();
  expect(await complaints(page)).toEqual([]);
  await stage.getByRole('tab', { name: 'Progress' }).click();
  await expect(stage.getByRole('button', { name: /^Open ?: Square and steady/ })).toBeVisible();
  expect(await complaints(page)).toEqual([]);
  await page.reload();
  await app.settled();
  const again = await openPractice(page);
  await again.getByRole('tab', { name: 'Progress' }).click();
  await again.getByRole('button', { name: /^Open ?: Square and steady/ }).click();
  await expect(again.locator('.debrief')).toContainText(chiefSentence(told, 'metric'), { timeout: 30_000 });
  // The strokes alone, opened again as a session of the same drill, are told in the same words.
  await again.getByRole('tab', { name: 'Progress' }).click();
  await again.getByLabel(/Open session files or strokes/).setInputFiles({ name: 'again.csv', mimeType: 'text/csv', buffer: Buffer.from(strokes) });
  await expect(again.getByLabel('Name of the session')).toHaveValue('again.csv', { timeout: 30_000 });
  await expect(again.locator('.debrief')).toContainText(chiefSentence(told, 'metric'));
  await expect(again.locator('.debrief')).toContainText(markSentence(told, 'metric'));
});

test('a pen that stops for 0.7 s with the fluid on makes the run that the model places there', async ({ page, app }) => {
  void app;
  const stage = await openPractice(page);
  await chooseDrill(stage, 'upright');
  const stop: Leg[] = [
    { from_m: [-0.1, 0.4], to_m: [-0.06, 0.4], time_s: 0.14, trigger: 0 },
    { from_m: [-0.06, 0.4], to_m: [0.25, 0.4], time_s: 0.31 / 0.28, trigger: 1 },
    { from_m: [0.25, 0.4], to_m: [0.25, 0.4], time_s: 0.7, trigger: 1 },
    { from_m: [0.25, 0.4], to_m: [0.56, 0.4], time_s: 0.31 / 0.28, trigger: 1 },
    { from_m: [0.56, 0.4], to_m: [0.6, 0.4], time_s: 0.14, trigger: 0 },
  ];
  await spray(page, stop, 'pen', 240);
  await stage.getByRole('button', { name: '1 min' }).click();
  await expect(phase(stage)).toHaveAttribute('data-phase', 'spraying', { timeout: 20_000 });
  await debrief(stage);
  const told = debriefSession(await savedSession(page, stage), USUAL_RUBRIC);
  const stops = told.coat.strokes.measures.flatMap((measure) => measure.stops);
  expect(stops).toHaveLength(1);
  expect(Math.abs((stops[0]?.duration_s ?? 0) / 0.7 - 1)).toBeLessThan(0.02);
  const run = told.coat.life?.verdict.faults.find(({ kind }) => kind === 'run')?.zones[0]?.run;
  // Upright, the film gathers first at the fan's lower end, half its width of 0.2 m below, and has then run a little.
  expect(Math.abs((run?.start_m[0] ?? 0) - 0.25)).toBeLessThan(0.03);
  expect(Math.abs((run?.start_m[1] ?? 0) - 0.4)).toBeLessThan(0.13);
  await expect(stage.locator('.debrief')).toContainText(/stood still for 0\.\d+ s .* a run began at/);
});

test('a sample is on the screen in the next frame', { tag: '@timed' }, async ({ page, app }) => {
  void app;
  const stage = await openPractice(page);
  await chooseDrill(stage, 'square-and-steady');
  await spray(page, stroke([-0.06, 0.25], [0.1, 0.25], 0.3));
  const frames = await page.evaluate(async () => {
    const root = document.querySelector<HTMLElement>('.spray-canvas');
    const canvas = root?.querySelector('canvas');
    if (root === null || canvas === null || canvas === undefined) throw new Error('no panel');
    const box = root.getBoundingClientRect();
    const scale = Number(root.dataset['pxPerM']);
    const x_px = Number(root.dataset['originX']) + 0.45 * scale;
    const y_px = Number(root.dataset['originY']) - 0.1 * scale;
    const probe = new OffscreenCanvas(1, 1).getContext('2d', { willReadFrequently: true });
    const colour = (): string => {
      probe?.clearRect(0, 0, 1, 1);
      // Off the gun's cross, well out in the fan, where the film grows slowly enough not to reach the last colour at once.
      probe?.drawImage(canvas, (x_px + 3) * devicePixelRatio, (y_px + 0.07 * scale) * devicePixelRatio, 1, 1, 0, 0, 1, 1);
      return [...(probe?.getImageData(0, 0, 1, 1).data ?? [])].join(' ');
    };
    const frame = (): Promise<number> => new Promise((resolve) => requestAnimationFrame(resolve));
    const send = (type: string, buttons: number): void => void root.dispatchEvent(new PointerEvent(type, { bubbles: true, pointerId: 1, isPrimary: true, pointerType: 'mouse', clientX: box.left + x_px, clientY: box.top + y_px, button: type === 'pointermove' ? -1 : 0, buttons }));
    send('pointermove', 0);
    await frame();
    await frame();
    const bare = colour();
    send('pointerdown', 1);
    // The fluid follows the trigger by the gun's lag; after that each frame shows what was sprayed up to it.
    const colours: string[] = [];
    for (let i = 0; i < 40; i++) {
      await frame();
      colours.push(colour());
    }
    send('pointerup', 0);
    return { bare, colours };
  });
  const first = frames.colours.findIndex((one) => one !== frames.bare);
  expect(first).toBeGreaterThanOrEqual(0);
  // From the first drop on, the colour moves on in nearly every frame: none waits for a step of the film's own quarter second.
  const moved = frames.colours.slice(first, first + 10).filter((one, i, all) => i > 0 && one !== all[i - 1]).length;
  expect(moved).toBeGreaterThanOrEqual(6);
});

test('the keyboard alone sprays, and reaches the debrief', async ({ page, app }) => {
  void app;
  const stage = await openPractice(page);
  await chooseDrill(stage, 'square-and-steady');
  const panel = stage.getByRole('application', { name: 'Panel to spray' });
  await panel.focus();
  await strokeByKeys(page);
  await expect(phase(stage)).toHaveAttribute('data-phase', 'spraying');
  const finish = stage.getByRole('button', { name: 'Finish and debrief' });
  for (let i = 0; i < 12 && !(await finish.evaluate((button) => button === document.activeElement)); i++) await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(stage.locator('.debrief')).toBeVisible({ timeout: 30_000 });
  const session = await savedSession(page, stage);
  expect(debriefSession(session, USUAL_RUBRIC).coat.strokes.measures).toHaveLength(1);
});

test('a gamepad sprays by stick and trigger', { tag: '@timed' }, async ({ page, app }) => {
  void app;
  await page.evaluate(() => {
    const pad = { connected: true, axes: [0, 0, 0, 0], buttons: Array.from({ length: 17 }, () => ({ pressed: false, value: 0 })) };
    Object.assign(window, { pad });
    Object.defineProperty(navigator, 'getGamepads', { value: () => [pad] });
  });
  const stage = await openPractice(page);
  await chooseDrill(stage, 'square-and-steady');
  const set = (axis: number, trigger: number): Promise<void> =>
    page.evaluate(([x, pull]) => {
      const { pad } = window as unknown as { pad: { axes: number[]; buttons: { value: number }[] } };
      pad.axes[0] = x;
      (pad.buttons[7] as { value: number }).value = pull;
    }, [axis, trigger] as const);
  await set(0.6, 0);
  await page.waitForTimeout(600);
  await set(0.6, 1);
  await page.waitForTimeout(600);
  await set(0.6, 0);
  await page.waitForTimeout(200);
  await set(0, 0);
  await expect(phase(stage)).toHaveAttribute('data-phase', 'spraying');
  await debrief(stage);
  const session = await savedSession(page, stage);
  // Full is 1 m/s; what is beyond the dead zone of 0.12 counts squared.
  const meant_m_s = ((0.6 - 0.12) / (1 - 0.12)) ** 2;
  const [measure] = debriefSession(session, USUAL_RUBRIC).coat.strokes.measures;
  expect(Math.abs((measure?.speed.mean_m_s ?? 0) / meant_m_s - 1)).toBeLessThan(0.05);
});

test('a screen matched to a card draws at true scale; an arm that swings arcs; pace and sound can be had', async ({ page, app }) => {
  void app;
  const stage = await openPractice(page);
  await chooseDrill(stage, 'square-and-steady');
  await expect(stage.getByText(/^Scale about 1 : /)).toBeVisible();
  await stage.getByRole('button', { name: 'Match the screen to a card' }).click();
  const slider = stage.getByLabel('Height of the drawing');
  await slider.fill('257');
  await stage.getByRole('button', { name: 'It is as tall as the card' }).click();
  await expect(stage.getByText(/^True scale:/)).toBeVisible();
  // A card of ISO/IEC 7810 ID-1 is 85.60 mm long.
  await expect.poll(async () => Number(await stage.locator('.spray-canvas').getAttribute('data-px-per-m'))).toBeCloseTo((257 / 85.6) * 1000, 6);
  await stage.getByLabel('Arm').selectOption('wrist');
  await stage.getByLabel(/^Pace:/).check();
  await stage.getByLabel(/^Sound:/).check();
  // Along the middle of the panel, from end to end: 350 mm to either side of a pivot 350 mm behind a nozzle 200 mm off.
  await spray(page, stroke([0, 0.15], [0.7, 0.15], 0.36));
  await expect(stage.locator('.pace-tick')).toBeVisible();
  await debrief(stage);
  const [measure] = debriefSession(await savedSession(page, stage), USUAL_RUBRIC).coat.strokes.measures;
  // The pointer's way over arm and distance is the swing; the fluid runs on for its lag of 80 ms after the trigger.
  const swing_rad = (0.35 + 0.08 * 0.36) / (0.35 + 0.2);
  expect(Math.abs((measure?.tilt.worst_rad ?? 0) / swing_rad - 1)).toBeLessThan(0.02);
  await expect(stage.getByRole('row', { name: /Gun square.*not met/ })).toBeVisible();
});

test('two pointers, lost focus, a hidden page, another window size: nothing sprayed is lost', async ({ page, app }) => {
  void app;
  const stage = await openPractice(page);
  await chooseDrill(stage, 'square-and-steady');
  const trigger = stage.locator('.trigger-twin');
  await spray(page, stroke([-0.06, 0.25], [0.3, 0.25], 0.3));
  const before = await rows(stage);
  expect(before).toBeGreaterThan(100);
  const box = await stage.locator('.spray-canvas').boundingBox();
  if (box === null) throw new Error('no panel');
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await expect(trigger).toHaveAttribute('data-trigger', '1');
  // Another pointer meanwhile is not the gun.
  await stage.locator('.spray-canvas').dispatchEvent('pointermove', { pointerId: 7, pointerType: 'pen', clientX: box.x + 5, clientY: box.y + 5, bubbles: true });
  await page.evaluate(() => window.dispatchEvent(new Event('blur')));
  await expect(trigger).toHaveAttribute('data-trigger', '0');
  await page.mouse.up();
  await page.mouse.down();
  await expect(trigger).toHaveAttribute('data-trigger', '1');
  await page.evaluate(() => {
    Object.defineProperty(document, 'visibilityState', { value: 'hidden', configurable: true });
    document.dispatchEvent(new Event('visibilitychange'));
  });
  await expect(trigger).toHaveAttribute('data-trigger', '0');
  await page.evaluate(() => Reflect.deleteProperty(document, 'visibilityState'));
  await page.mouse.up();
  await page.setViewportSize({ width: 700, height: 900 });
  const canvas = stage.locator('.spray-canvas canvas');
  const dots = (): Promise<number> => canvas.evaluate((element) => (element as HTMLCanvasElement).width / element.clientWidth);
  expect(await dots()).toBeCloseTo(1, 2);
  const screen = await page.context().newCDPSession(page);
  await screen.send('Emulation.setDeviceMetricsOverride', { width: 700, height: 900, deviceScaleFactor: 2, mobile: false });
  await expect.poll(() => page.evaluate(() => devicePixelRatio)).toBe(2);
  await expect.poll(dots).toBeCloseTo(2, 2);
  await expect(phase(stage)).toHaveAttribute('data-phase', 'spraying');
  expect(await rows(stage)).toBeGreaterThan(before);
  await screen.send('Emulation.clearDeviceMetricsOverride');
  // A page that is closed in mid-session keeps what was sprayed.
  await expect.poll(() => page.evaluate(async () => {
    const open = indexedDB.open('crosscoat');
    await new Promise((resolve) => (open.onsuccess = resolve));
    const keys = open.result.transaction('drafts').objectStore('drafts').getAllKeys();
    await new Promise((resolve) => (keys.onsuccess = resolve));
    open.result.close();
    return keys.result[0];
  }), { timeout: 15_000 }).toBe('under-way');
  await page.reload();
  await app.settled();
  const again = await openPractice(page);
  await again.getByRole('button', { name: 'Look through it' }).click();
  await expect(again.locator('.debrief')).toBeVisible({ timeout: 30_000 });
});

test('where storage is full the session is offered as a file, and a cleared panel can still be looked through', async ({ page, app }) => {
  await page.evaluate(() => {
    const put = (store: IDBObjectStore): never => {
      throw new DOMException(`no room in ${store.name}`, 'QuotaExceededError');
    };
    IDBObjectStore.prototype.put = function (this: IDBObjectStore) {
      return put(this);
    };
  });
  const stage = await openPractice(page);
  await chooseDrill(stage, 'square-and-steady');
  await spray(page, stroke([-0.06, 0.25], [0.3, 0.25], 0.3));
  await stage.getByRole('button', { name: 'Start again' }).click();
  await expect(phase(stage)).toHaveAttribute('data-phase', 'aiming');
  await stage.getByRole('button', { name: /after all/ }).click();
  await expect(stage.locator('.debrief')).toBeVisible({ timeout: 30_000 });
  await expect(stage.getByText('Not kept in this browser.')).toBeVisible();
  const [download] = await Promise.all([page.waitForEvent('download'), stage.getByRole('button', { name: /^Save Square and steady/ }).click()]);
  expect(download.suggestedFilename()).toMatch(/\.crosscoat-session\.json$/);
  app.complaints.length = 0;
});

test('at 360 px nothing is wider than the screen, in the dark, by touch, and without violations', async ({ page, app }) => {
  void app;
  await page.emulateMedia({ colorScheme: 'dark', reducedMotion: 'reduce' });
  await page.setViewportSize({ width: 360, height: 780 });
  const stage = await openPractice(page);
  await chooseDrill(stage, 'half-overlap');
  await spray(page, stroke([-0.05, 0.3], [0.2, 0.3], 0.3), 'touch', 120);
  await expect(phase(stage)).toHaveAttribute('data-phase', 'spraying');
  const overflow = (): Promise<number> => stage.evaluate((element) => element.scrollWidth - element.clientWidth);
  expect(await overflow()).toBeLessThanOrEqual(0);
  expect(await complaints(page)).toEqual([]);
  await debrief(stage);
  expect(await overflow()).toBeLessThanOrEqual(0);
  await stage.getByRole('tab', { name: 'Class' }).click();
  expect(await overflow()).toBeLessThanOrEqual(0);
  expect(await complaints(page)).toEqual([]);
});
