import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { allowed_ms } from './allowedTime.ts';
import {
  colourDistance, inHarness, type OpenCanvas, openCanvas, pixel, screenOf, screenshot,
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

interface Calls {
  draws: number;
  uploads: number;
  allocations: number;
}

/** Counts what reaches the GPU from now on. */
async function countCalls(page: Page): Promise<() => Promise<Calls>> {
  await page.evaluate(() => {
    const calls = { draws: 0, uploads: 0, allocations: 0 };
    Object.assign(window, { glCalls: calls });
    const gl = document.querySelector('canvas')?.getContext('webgl2') as unknown as Record<string, (...given: unknown[]) => unknown>;
    const count = (name: string, kind: keyof typeof calls): void => {
      const real = gl[name] as (...given: unknown[]) => unknown;
      gl[name] = (...given: unknown[]): unknown => {
        calls[kind]++;
        return real.apply(gl, given);
      };
    };
    count('drawArrays', 'draws');
    count('drawArraysInstanced', 'draws');
    count('texSubImage2D', 'uploads');
    count('texImage2D', 'allocations');
  });
  return () => page.evaluate(() => ({ ...(window as unknown as { glCalls: Calls }).glCalls }));
}

test('nothing is drawn while nothing changes', async () => {
  const { page } = open;
  const calls = await countCalls(page);
  await inHarness(page, (harness) => harness.change({}));
  const before = await calls();
  expect(before.draws).toBeGreaterThan(0);
  await page.waitForTimeout(400);
  expect(await calls()).toEqual(before);
});

test('a new film of the same size is one upload into the same texture; the gun is none', async () => {
  const { page } = open;
  const calls = await countCalls(page);
  await inHarness(page, (harness) => harness.change({
    gun: { x_m: 1, y_m: 0.5, rim: Float64Array.of(0.9, 0.4, 1.1, 0.4, 1, 0.6), spraying: true },
  }));
  const moved = await calls();
  expect(moved.draws).toBeGreaterThan(0);
  expect(moved.uploads + moved.allocations).toBe(0);
  await inHarness(page, (harness) => {
    const field = harness.scene.field;
    if (field === null) throw new Error('no field');
    return harness.change({ field: { ...field, values: field.values.map((film) => 0.5 * film) } });
  });
  const filmed = await calls();
  expect(filmed.uploads).toBe(1);
  expect(filmed.allocations).toBe(0);
});

test('a film of 1500 by 750 cells costs the page less than 5 ms', { tag: '@timed' }, async () => {
  const { page } = open;
  const times = await inHarness(page, async (harness) => {
    const field = harness.make.field(0.0016);
    await harness.change({ field });
    const taken = [];
    for (let i = 0; i < 21; i++) {
      const scene = { ...harness.scene, field: { ...field, values: field.values.slice() } };
      const start = performance.now();
      harness.canvas.show(scene);
      taken.push(performance.now() - start);
      await harness.drawn();
    }
    return { columns: field.columns, rows: field.rows, taken: taken.sort((a, b) => a - b) };
  });
  expect([times.columns, times.rows]).toEqual([1500, 750]);
  const median = times.taken[10] as number;
  console.log(`show() of a new 1500 × 750 film: median ${median.toFixed(2)} ms, worst ${times.taken.at(-1)?.toFixed(2)} ms`);
  expect(median).toBeLessThan(await allowed_ms(page, 5));
});

test('a lost GPU comes back with the same picture', async () => {
  const { page } = open;
  await page.evaluate(() => window.harness?.change(window.harness.make.full('light')));
  const before = await screenshot(page);
  await inHarness(page, (harness) => {
    const field = harness.scene.field;
    if (field === null) throw new Error('no field');
    return harness.change({ field: { ...field, values: new Float32Array(field.values.length) } });
  });
  await page.evaluate(async () => {
    const { harness } = window;
    const canvas = document.querySelector('canvas');
    const loss = canvas?.getContext('webgl2')?.getExtension('WEBGL_lose_context');
    if (!canvas || !loss || !harness) throw new Error('this browser cannot lose its context');
    const lost = new Promise((heard) => canvas.addEventListener('webglcontextlost', heard, { once: true }));
    loss.loseContext();
    await lost;
    // A film that arrives meanwhile must be there afterwards.
    await harness.change({ field: harness.make.full('light').field });
    const restored = new Promise((heard) => canvas.addEventListener('webglcontextrestored', heard, { once: true }));
    setTimeout(() => loss.restoreContext(), 50);
    await restored;
    await harness.drawn();
  });
  const after = await screenshot(page);
  let differing = 0;
  for (let y = 0; y < 720; y += 3) {
    for (let x = 0; x < 1280; x += 3) if (colourDistance(pixel(before, x, y), pixel(after, x, y)) > 0) differing++;
  }
  expect(differing).toBe(0);
});

test('a canvas is drawn in device pixels and follows its host', async ({ browser }) => {
  const fine = await openCanvas(browser, served.address, { viewport: { width: 360, height: 420 }, deviceScaleFactor: 2 });
  const size = (): Promise<number[]> => fine.page.evaluate(() => {
    const canvas = document.querySelector('canvas');
    return [canvas?.width ?? 0, canvas?.height ?? 0, canvas?.clientWidth ?? 0, canvas?.clientHeight ?? 0];
  });
  expect(await size()).toEqual([720, 840, 360, 420]);
  await fine.page.setViewportSize({ width: 800, height: 560 });
  await inHarness(fine.page, (harness) => harness.drawn());
  expect(await size()).toEqual([1600, 1120, 800, 560]);
  // Untouched by hand, the panel is fitted again: its far corner is in sight.
  const at = await screenOf(fine.page);
  const [x] = at(2.4, 0);
  expect(x).toBeGreaterThan(700);
  expect(x).toBeLessThan(800);
  // The window goes to a screen of another pixel ratio; the host keeps its size, so that only the
  // ratio can tell. (An emulated ratio is noticed by the page only when the window changes too.)
  await fine.page.evaluate(() => document.getElementById('host')?.setAttribute('style', 'width: 400px; height: 300px'));
  await expect.poll(size).toEqual([800, 600, 400, 300]);
  const session = await fine.page.context().newCDPSession(fine.page);
  await session.send('Emulation.setDeviceMetricsOverride', { width: 810, height: 560, deviceScaleFactor: 3, mobile: false });
  await expect.poll(size).toEqual([1200, 900, 400, 300]);
  expect(fine.complaints).toEqual([]);
  await fine.close();
});

test('a grid larger than the GPU can hold is drawn coarser, with a note', async () => {
  const { page } = open;
  await page.evaluate(() => {
    const columns = 9000;
    const rows = 3;
    return window.harness?.change({
      field: {
        columns, rows, cellSize_m: 2.4 / columns, values: new Float32Array(columns * rows).fill(1),
        cover: new Float32Array(columns * rows).fill(1), domain: [0, 1],
        colours: new Uint8Array(1024).fill(255),
      },
    });
  });
  const largest = await page.evaluate(() => {
    const gl = document.querySelector('canvas')?.getContext('webgl2');
    return { most: gl?.getParameter(gl.MAX_TEXTURE_SIZE) as number, error: gl?.getError() };
  });
  expect(largest.error).toBe(0);
  const step = Math.ceil(9000 / largest.most);
  const note = page.locator('svg text', { hasText: `Map drawn with 1 cell in ${step}` });
  await expect(note).toHaveCount(step === 1 ? 0 : 1);
});

test('the drawing is sound for assistive tools', async () => {
  const { page } = open;
  await page.evaluate(() => window.harness?.change(window.harness.make.full('light')));
  const found = await new AxeBuilder({ page }).include('#host').analyze();
  expect(found.violations.map(({ id, help }) => `${id}: ${help}`)).toEqual([]);
});

test('destroying it leaves the host empty and goes on hearing nothing', async () => {
  const { page } = open;
  const root = await page.$('#host > div');
  if (root === null) throw new Error('no root');
  await page.evaluate(() => window.harness?.canvas.destroy());
  expect(await page.locator('#host').evaluate((host) => host.childElementCount)).toBe(0);
  const heard = await inHarness(page, (harness) => harness.heard.length);
  // Whoever still holds the element gets no answer from it either.
  await root.dispatchEvent('pointermove', { clientX: 300, clientY: 300 });
  await root.dispatchEvent('keydown', { key: 'ArrowRight', shiftKey: true });
  await page.setViewportSize({ width: 700, height: 500 });
  await page.waitForTimeout(100);
  expect(await inHarness(page, (harness) => harness.heard.length)).toBe(heard);
});
