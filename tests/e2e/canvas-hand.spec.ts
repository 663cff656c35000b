import { expect, type Page, test } from '@playwright/test';
import {
  colourDistance, inHarness, type OpenCanvas, openCanvas, pixel, probedAt, screenOf, screenshot,
  serveRepository,
} from './harness/openCanvas.ts';

let served: Awaited<ReturnType<typeof serveRepository>>;
let open: OpenCanvas;
test.beforeAll(async () => { served = await serveRepository(); });
test.afterAll(async () => { await served.close(); });
test.beforeEach(async ({ browser }) => { open = await openCanvas(browser, served.address); });
test.afterEach(async () => {
  await open.close();
  expect(open.complaints).toEqual([]);
});

async function lastHeard(page: Page, name: string): Promise<unknown> {
  const heard = await inHarness(page, (harness) => harness.heard.map((event) => ({ ...event })));
  return heard.filter((event) => event.name === name).at(-1)?.value;
}

/** Metres a pixel at the moment. */
async function pixelSize(page: Page): Promise<number> {
  const [x0] = await probedAt(page, 400, 300);
  const [x1] = await probedAt(page, 800, 300);
  return (x1 - x0) / 400;
}

/** Float noise of a place of about a metre. */
const PLACE_SLACK_M = 1e-9;

test('the wheel zooms about the pointer', async () => {
  const { page } = open;
  const size = await pixelSize(page);
  const before = await probedAt(page, 500, 350);
  await page.mouse.wheel(0, -300);
  const after = await probedAt(page, 500, 350);
  expect(Math.abs(after[0] - before[0])).toBeLessThan(PLACE_SLACK_M);
  expect(Math.abs(after[1] - before[1])).toBeLessThan(PLACE_SLACK_M);
  // A fifth nearer for each 100 px of wheel.
  expect(await pixelSize(page)).toBeCloseTo(size / 1.2 ** 3, 9);
});

test('dragging the paper carries the panel with the pointer', async () => {
  const { page } = open;
  const before = await probedAt(page, 700, 500);
  await page.mouse.down();
  await page.mouse.move(760, 470, { steps: 4 });
  await page.mouse.up();
  const after = await probedAt(page, 760, 470);
  expect(Math.abs(after[0] - before[0])).toBeLessThan(PLACE_SLACK_M);
  expect(Math.abs(after[1] - before[1])).toBeLessThan(PLACE_SLACK_M);
  expect(await lastHeard(page, 'zone')).toBeUndefined();
});

test('two fingers pinch about their middle', async ({ browser }) => {
  const touch = await openCanvas(browser, served.address, { hasTouch: true });
  const { page } = touch;
  const size = await pixelSize(page);
  const middle = await probedAt(page, 600, 500);
  const session = await page.context().newCDPSession(page);
  const fingers = (type: 'touchStart' | 'touchMove' | 'touchEnd', spread: number) =>
    session.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: type === 'touchEnd' ? [] : [{ x: 600 - spread, y: 500, id: 0 }, { x: 600 + spread, y: 500, id: 1 }],
    });
  await fingers('touchStart', 60);
  for (let spread = 70; spread <= 120; spread += 10) await fingers('touchMove', spread);
  await fingers('touchEnd', 0);
  const zoomed = await pixelSize(page);
  const kept = await probedAt(page, 600, 500);
  // The first move of each finger up to the slack of a click is not counted as a pinch.
  expect(size / zoomed).toBeGreaterThan(1.8);
  expect(size / zoomed).toBeLessThan(2.1);
  // Fingers report one after the other; what is left over is a few pixels at most.
  expect(Math.hypot(kept[0] - middle[0], kept[1] - middle[1])).toBeLessThan(6 * size);
  await touch.close();
});

test('a tap probes and shows the cross-hair', async ({ browser }) => {
  const touch = await openCanvas(browser, served.address, { hasTouch: true });
  await touch.page.touchscreen.tap(700, 500);
  const tapped = await lastHeard(touch.page, 'probe') as [number, number];
  const hovered = await probedAt(touch.page, 700, 500);
  expect(tapped[0]).toBeCloseTo(hovered[0], 9);
  expect(tapped[1]).toBeCloseTo(hovered[1], 9);
  await touch.close();
});

test('keys pan, zoom and fit while the canvas has the focus', async () => {
  const { page } = open;
  const fitted = await probedAt(page, 640, 300);
  const size = await pixelSize(page);
  await page.keyboard.press('Tab');
  await expect(page.getByRole('application', { name: 'Panel drawing' })).toBeFocused();
  // The ring of the focus, in the accent, over everything else.
  expect(colourDistance(pixel(await screenshot(page), 1278, 400), [0xa8, 0x32, 0x1a])).toBeLessThanOrEqual(3);
  await page.keyboard.press('+');
  expect(await pixelSize(page)).toBeCloseTo(size / 1.25, 9);
  await page.keyboard.press('-');
  const [x0, y0] = await probedAt(page, 640, 300);
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowUp');
  const [x1, y1] = await probedAt(page, 640, 300);
  expect(x1 - x0).toBeCloseTo(60 * size, 9);
  expect(y1 - y0).toBeCloseTo(60 * size, 9);
  await page.keyboard.press('0');
  const again = await probedAt(page, 640, 300);
  expect(again[0]).toBeCloseTo(fitted[0], 9);
  expect(again[1]).toBeCloseTo(fitted[1], 9);
});

test('Shift and arrows step the probe cell by cell; Escape puts it away', async () => {
  const { page } = open;
  await page.keyboard.press('Tab');
  await page.keyboard.press('Shift+ArrowRight');
  const first = await lastHeard(page, 'probe') as [number, number];
  await page.keyboard.press('Shift+ArrowRight');
  await page.keyboard.press('Shift+ArrowUp');
  const second = await lastHeard(page, 'probe') as [number, number];
  expect(second[0] - first[0]).toBeCloseTo(0.004, 9);
  expect(second[1] - first[1]).toBeCloseTo(0.004, 9);
  // Cell centres: an odd number of half cells.
  expect((second[0] / 0.002) % 2).toBeCloseTo(1, 6);
  await page.keyboard.press('Escape');
  expect(await lastHeard(page, 'probe')).toBeNull();
});

test('the mouse leaving ends the probe', async () => {
  const { page } = open;
  await page.evaluate(() => document.getElementById('host')?.style.setProperty('height', '80%'));
  await probedAt(page, 500, 300);
  await page.mouse.move(500, 700);
  expect(await lastHeard(page, 'probe')).toBeNull();
});

test('the section line moves by its ends, by its middle, and stays on the panel', async () => {
  const { page } = open;
  const at = await screenOf(page);
  const drag = async (from: readonly [number, number], to: readonly [number, number]): Promise<number[]> => {
    await page.mouse.move(...at(...from));
    await page.mouse.down();
    await page.mouse.move(...at(...to), { steps: 3 });
    await page.mouse.up();
    return await lastHeard(page, 'section') as number[];
  };
  const near = (line: number[], wanted: readonly number[]): void => {
    line.forEach((value, i) => expect(value).toBeCloseTo(wanted[i] as number, 6));
  };
  near(await drag([1.5, 0.65], [1.2, 0.35]), [0.3, 0.65, 1.2, 0.35]);
  near(await drag([0.75, 0.5], [0.85, 0.6]), [0.4, 0.75, 1.3, 0.45]);
  near(await drag([0.4, 0.75], [-0.1, 1.3]), [0, 1.2, 1.3, 0.45]);
});

test('the ends of the section line are named buttons of 44 px that keys move', async () => {
  const { page } = open;
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  const end = page.getByRole('button', { name: /^Section end A, 300 across, 650 up, mm/ });
  await expect(end).toBeFocused();
  const box = await end.boundingBox();
  expect(box?.width).toBeGreaterThanOrEqual(44);
  expect(box?.height).toBeGreaterThanOrEqual(44);
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Shift+ArrowDown');
  const line = await lastHeard(page, 'section') as number[];
  [0.305, 0.6, 1.5, 0.65].forEach((value, i) => expect(line[i]).toBeCloseTo(value, 9));
  await expect(page.getByRole('button', { name: /^Section end A, 305 across, 600 up, mm/ })).toBeFocused();
});

test('a click chooses a zone by its cells or its tag, and a stroke by its line', async () => {
  const { page } = open;
  const at = await screenOf(page);
  await inHarness(page, (harness) =>
    harness.change({ zones: harness.make.zones(), strokes: harness.make.strokes(5) }));
  await page.mouse.click(...at(0.75, 0.25));
  expect(await lastHeard(page, 'zone')).toBe('thin-lap');
  const tag = await page.locator('svg text', { hasText: 'Dry spray' }).boundingBox();
  if (tag === null) throw new Error('no tag');
  await page.mouse.click(tag.x + tag.width / 2, tag.y + tag.height / 2);
  expect(await lastHeard(page, 'zone')).toBe('dry-spray');
  expect(await lastHeard(page, 'stroke')).toBeUndefined();
  // Five strokes on 1.2 m: the second runs at 0.36 m.
  await page.mouse.click(...at(1.05, 0.36));
  expect(await lastHeard(page, 'stroke')).toBe(1);
});

test('going to a place centres it', async () => {
  const { page } = open;
  await inHarness(page, (harness) => {
    harness.canvas.goTo([0.8, 0.3], 0.4);
    return harness.drawn();
  });
  // The middle of what the rulers leave: 50 px on the left, 28 below.
  const [x_m, y_m] = await probedAt(page, (50 + 1280) / 2, (720 - 28) / 2);
  expect(x_m).toBeCloseTo(0.8, 9);
  expect(y_m).toBeCloseTo(0.3, 9);
  expect(await pixelSize(page)).toBeCloseTo(0.4 / (720 - 28), 9);
});
