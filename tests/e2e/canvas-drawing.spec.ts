import { expect, test } from '@playwright/test';
import { PNG } from 'pngjs';
import { DOMAIN, filmAt, mapColours, ZONE_PLACES, ZONE_SIDE_M } from './harness/analyticScene.ts';
import { hatchMeasures } from './harness/hatchMeasures.ts';
import {
  colourDistance, inHarness, type OpenCanvas, openCanvas, pixel, probedAt, type Rgb,
  screenOf, screenshot, serveRepository,
} from './harness/openCanvas.ts';

const LIGHT_PAPER: Rgb = [0xf7, 0xf4, 0xec];
const DARK_PAPER: Rgb = [0x14, 0x18, 0x1e];
const INK: Rgb = [0x1b, 0x22, 0x2c];
/** One step of rounding in each of: the colour's byte, the GPU's blend, the screenshot. */
const COLOUR_SLACK = 3;
const CELL_M = 0.004;

let served: Awaited<ReturnType<typeof serveRepository>>;
let open: OpenCanvas;
test.beforeAll(async () => { served = await serveRepository(); });
test.afterAll(async () => { await served.close(); });
test.beforeEach(async ({ browser }) => { open = await openCanvas(browser, served.address); });
test.afterEach(async () => {
  await open.close();
  expect(open.complaints).toEqual([]);
});

/** The map's colour of the cell under a place, by the stated rule. */
function expectedColours(x_m: number, y_m: number): Rgb[] {
  const centre = (at_m: number): number => (Math.floor(at_m / CELL_M) + 0.5) * CELL_M;
  const share = (filmAt(centre(x_m), centre(y_m)) - DOMAIN[0]) / (DOMAIN[1] - DOMAIN[0]);
  const colours = mapColours();
  // A share that falls within float rounding of a half may go to either neighbour.
  const near = [share * 255 - 1e-3, share * 255 + 1e-3].map(Math.round);
  return near.map((i) => [colours[4 * i] as number, colours[4 * i + 1] as number, colours[4 * i + 2] as number]);
}

test('film colours are those of the map at known places', async () => {
  const { page } = open;
  const picture = await screenshot(page);
  let checked = 0;
  for (const [x, y] of [[200, 150], [400, 480], [640, 200], [700, 560], [1000, 140], [900, 250], [1150, 350]] as const) {
    // The colour stands at the pixel's middle.
    const [x_m, y_m] = await probedAt(page, x + 0.5, y + 0.5);
    const seen = pixel(picture, x, y);
    const away = Math.min(...expectedColours(x_m, y_m).map((colour) => colourDistance(colour, seen)));
    expect(away, `at ${x_m.toFixed(3)}, ${y_m.toFixed(3)} m saw ${seen.join(' ')}`).toBeLessThanOrEqual(COLOUR_SLACK);
    checked++;
  }
  expect(checked).toBe(7);
});

test('the panel stands where the probe says: its left and lower edges are at zero', async () => {
  const { page } = open;
  const picture = await screenshot(page);
  const firstX = Array.from({ length: 400 }, (_, i) => 60 + i).find((x) => colourDistance(pixel(picture, x, 400), INK) < 40);
  const lastY = Array.from({ length: 150 }, (_, i) => 680 - i).find((y) => colourDistance(pixel(picture, 300, y), INK) < 40);
  expect(firstX).toBeDefined();
  expect(lastY).toBeDefined();
  const [x_m] = await probedAt(page, firstX as number, 400);
  const [, y_m] = await probedAt(page, 300, lastY as number);
  // The line is under 2 px wide: its edge is within 1.5 px of the panel's, 0.0034 m at this zoom.
  expect(Math.abs(x_m)).toBeLessThan(0.0035);
  expect(Math.abs(y_m)).toBeLessThan(0.0035);
});

test('holes and what lies outside the outline are bare paper, light and dark', async () => {
  const { page } = open;
  const at = await screenOf(page);
  for (const [theme, paper] of [['light', LIGHT_PAPER], ['dark', DARK_PAPER]] as const) {
    if (theme === 'dark') await inHarness(page, (harness) => harness.change({ theme: 'dark' }));
    const picture = await screenshot(page);
    expect(colourDistance(pixel(picture, ...at(1.8, 0.4)), paper)).toBeLessThanOrEqual(COLOUR_SLACK);
    expect(colourDistance(pixel(picture, ...at(2.36, 1.16)), paper)).toBeLessThanOrEqual(COLOUR_SLACK);
    expect(colourDistance(pixel(picture, ...at(2.0, 1.0)), paper)).toBeGreaterThan(40);
  }
});

test('each kind of zone has a hatching of its own', async () => {
  const { page } = open;
  const bare = await screenshot(page);
  const at = await screenOf(page);
  await inHarness(page, (harness) => harness.change({ zones: harness.make.everyZone() }));
  const hatched = await screenshot(page);
  const measures = Object.fromEntries(Object.entries(ZONE_PLACES).map(([kind, [left_m, low_m]]) => {
    const [left, low] = at(left_m + 0.1 * ZONE_SIDE_M, low_m + 0.1 * ZONE_SIDE_M);
    const [right, high] = at(left_m + 0.75 * ZONE_SIDE_M, low_m + 0.75 * ZONE_SIDE_M);
    return [kind, hatchMeasures(bare, hatched, Math.ceil(left), Math.ceil(high), Math.floor(right), Math.floor(low))];
  }));
  const { holiday, 'thin-lap': thin, 'heavy-spot': heavy, 'dry-spray': dry } = measures as Required<typeof measures>;
  if (!holiday || !thin || !heavy || !dry) throw new Error('a kind has no measures');
  // Even hatching has one direction (coherence 1); crossed lines and dots have none (0).
  expect(thin.coherence).toBeGreaterThan(0.7);
  expect(heavy.coherence).toBeLessThan(0.3);
  expect(holiday.coherence).toBeLessThan(0.3);
  expect(dry.coherence).toBeLessThan(0.3);
  // Rising to the right.
  expect(Math.abs(thin.direction_deg - 45)).toBeLessThan(10);
  // A line of an upright grid fills its row; slanting lines fill none.
  expect(holiday.fullestRow).toBeGreaterThan(0.9);
  for (const slanting of [thin, heavy]) expect(slanting.fullestRow).toBeLessThan(0.8);
  // Dots leave whole rows between them nearly untouched; crossed lines cross every row.
  for (const crossed of [holiday, heavy]) expect(crossed.emptiestRow).toBeGreaterThan(0.1);
  expect(dry.emptiestRow).toBeLessThan(0.1);

  const { run, blush, blister, pinhole, 'orange-peel': peel, 'dry-lap': lap, 'over-thick': thick } = measures as Required<typeof measures>;
  if (!run || !blush || !blister || !pinhole || !peel || !lap || !thick) throw new Error('a kind has no measures');
  for (const one of [run, lap, blush, thick]) expect(one.coherence).toBeGreaterThan(0.7);
  for (const none of [peel, blister, pinhole]) expect(none.coherence).toBeLessThan(0.3);
  // Upright, level, falling to the right, level.
  expect(Math.abs(run.direction_deg)).toBeGreaterThan(80);
  expect(Math.abs(lap.direction_deg)).toBeLessThan(10);
  expect(Math.abs(blush.direction_deg + 45)).toBeLessThan(10);
  expect(Math.abs(thick.direction_deg)).toBeLessThan(10);
  // A net leaves no row empty; rings and points do, and a row of points holds less than one of rings or dots.
  expect(peel.emptiestRow).toBeGreaterThan(0.1);
  for (const apart of [blister, pinhole]) expect(apart.emptiestRow).toBeLessThan(0.1);
  expect(pinhole.fullestRow).toBeLessThan(Math.min(blister.fullestRow, dry.fullestRow));
});

test('the selected zone and stroke take the accent', async () => {
  const { page } = open;
  const accent: Rgb = [0xa8, 0x32, 0x1a];
  const at = await screenOf(page);
  await inHarness(page, (harness) => harness.change({ strokes: harness.make.strokes(5), selectedStrokes: [] }));
  const [x, y] = at(1.06, 0.36).map(Math.round) as [number, number];
  const nearest = (picture: PNG): number =>
    Math.min(...Array.from({ length: 9 }, (_, i) => colourDistance(pixel(picture, x, y - 4 + i), accent)));
  expect(nearest(await screenshot(page))).toBeGreaterThan(40);
  await inHarness(page, (harness) => harness.change({ selectedStrokes: [1] }));
  expect(nearest(await screenshot(page))).toBeLessThanOrEqual(COLOUR_SLACK);
});

test('ruler ticks stand at the places they name', async () => {
  const { page } = open;
  for (const [unit_m, unitName, label] of [[0.001, 'mm', '1000'], [0.0254, 'in', '40']] as const) {
    await page.evaluate(([unit, name]) => window.harness?.change({ ruler: { unit_m: unit, unitName: name } }), [unit_m, unitName] as const);
    // The lettering stands 4 px to the right of its tick.
    const x = await page.locator('svg text:not([text-anchor])').filter({ hasText: new RegExp(`^${label}$`) }).getAttribute('x');
    const [x_m] = await probedAt(page, Number(x) - 4, 300);
    const [next_m] = await probedAt(page, Number(x) - 3, 300);
    expect(Math.abs(x_m - Number(label) * unit_m)).toBeLessThan(next_m - x_m);
    await expect(page.locator('svg text').filter({ hasText: new RegExp(`^${unitName}$`) })).toHaveCount(1);
  }
});

test('lettering is 16 px at least and down is lettered by its arrow', async () => {
  const { page } = open;
  const sizes = await page.locator('svg text').evaluateAll((texts) =>
    texts.map((text) => parseFloat(getComputedStyle(text).fontSize)));
  expect(sizes.length).toBeGreaterThan(15);
  expect(Math.min(...sizes)).toBeGreaterThanOrEqual(16);
  await expect(page.locator('svg text', { hasText: /^down$/ })).toHaveCount(1);
  await inHarness(page, (harness) => harness.change({ panel: { ...harness.scene.panel, down_rad: null } }));
  await expect(page.locator('svg text', { hasText: /^down$/ })).toHaveCount(0);
});

test('the picture is a PNG of the whole canvas with its rulers', async () => {
  const { page } = open;
  const bytes = await inHarness(page, async (harness) => {
    const blob = await harness.canvas.picture();
    return [blob.type, [...new Uint8Array(await blob.arrayBuffer())]] as const;
  });
  expect(bytes[0]).toBe('image/png');
  const picture = PNG.sync.read(Buffer.from(bytes[1]));
  expect([picture.width, picture.height]).toEqual([1280, 720]);
  const shot = await screenshot(page);
  let same = 0;
  let ink = 0;
  const step = 7;
  for (let y = 0; y < 720; y += step) {
    for (let x = 0; x < 1280; x += step) {
      if (colourDistance(pixel(picture, x, y), pixel(shot, x, y)) <= COLOUR_SLACK) same++;
    }
  }
  for (let x = 60; x < 1270; x++) if (colourDistance(pixel(picture, x, 694), INK) < 60) ink++;
  // Lettering may be smoothed otherwise in an image: at most 1 % of the sampled pixels.
  expect(same / (Math.ceil(720 / step) * Math.ceil(1280 / step))).toBeGreaterThan(0.99);
  expect(ink).toBeGreaterThan(20);
});
