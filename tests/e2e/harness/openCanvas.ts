import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContextOptions, Page } from '@playwright/test';
import { PNG } from 'pngjs';
import { createServer, type ViteDevServer } from 'vite';
import type { CanvasHarness } from './canvas.ts';

/** Serves the repository on a free port; the cache stands apart from a developer's own server. */
export async function serveRepository(): Promise<{ address: string; close(): Promise<void> }> {
  const server: ViteDevServer = await createServer({
    server: { port: 0, strictPort: false, open: false, hmr: false, watch: null },
    cacheDir: join(tmpdir(), 'crosscoat-vite-e2e'),
    optimizeDeps: { include: ['pixi.js', 'd3-array', 'd3-interpolate', 'd3-scale-chromatic'] },
    logLevel: 'error',
  });
  await server.listen();
  const at = server.httpServer?.address();
  if (at === null || at === undefined || typeof at === 'string') throw new Error('serveRepository: no port');
  return { address: `http://localhost:${at.port}`, close: () => server.close() };
}

/** A harness page in a browser of a given size, and everything it complained about. */
export interface OpenCanvas {
  readonly page: Page;
  readonly complaints: readonly string[];
  close(): Promise<void>;
}

export async function openCanvas(
  browser: Browser, address: string, options: BrowserContextOptions = {},
): Promise<OpenCanvas> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 720 }, ...options });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  await page.goto(`${address}/tests/e2e/harness/canvas.html`);
  await page.waitForFunction(() => window.harness !== undefined);
  return { page, complaints, close: () => context.close() };
}

/** Runs in the page: the harness, present once `openCanvas` is done. */
export function inHarness<T>(page: Page, act: (harness: CanvasHarness) => T | Promise<T>): Promise<T> {
  // The function is sent as text, so it may name nothing from outside itself.
  return page.evaluate<T>(`(${act.toString()})(window.harness)`);
}

export async function screenshot(page: Page): Promise<PNG> {
  return PNG.sync.read(await page.screenshot());
}

export type Rgb = readonly [red: number, green: number, blue: number];

export function pixel(picture: PNG, x: number, y: number): Rgb {
  const at = 4 * (Math.round(y) * picture.width + Math.round(x));
  const channel = (i: number): number => {
    const value = picture.data[at + i];
    if (value === undefined) throw new Error(`pixel: (${x}, ${y}) is outside ${picture.width} × ${picture.height}`);
    return value;
  };
  return [channel(0), channel(1), channel(2)];
}

export function colourDistance(a: Rgb, b: Rgb): number {
  return Math.max(Math.abs(a[0] - b[0]), Math.abs(a[1] - b[1]), Math.abs(a[2] - b[2]));
}

/** Hovers over the middle of a pixel and says which place on the panel was probed there, m. */
export async function probedAt(page: Page, x: number, y: number): Promise<readonly [number, number]> {
  // Off it first: a mouse that does not move is not heard.
  await page.mouse.move(x + 2, y + 2);
  await page.mouse.move(x, y);
  return inHarness(page, (harness) => {
    const last = harness.heard.filter(({ name, value }) => name === 'probe' && value !== null).at(-1);
    if (last === undefined) throw new Error('probedAt: no probe was heard');
    return last.value as [number, number];
  });
}

/** The pixel of a place on the panel, from two probes: independent of the camera's own code. */
export async function screenOf(page: Page): Promise<(x_m: number, y_m: number) => [number, number]> {
  const [x0, y0] = await probedAt(page, 300, 200);
  const [x1, y1] = await probedAt(page, 700, 500);
  const [perX, perY] = [400 / (x1 - x0), 300 / (y1 - y0)];
  return (x_m, y_m) => [300 + (x_m - x0) * perX, 200 + (y_m - y0) * perY];
}
