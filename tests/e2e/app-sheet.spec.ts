import { allowed_ms } from './allowedTime.ts';
import { expect, test } from './appPage.ts';

test('replay: the film grows with time, and the finished one comes back', async ({ app, page }) => {
  const slider = page.getByRole('slider', { name: 'Time of the replay' });
  const line = page.locator('.chart-line.wet');
  const finished = (await line.getAttribute('d')) ?? '';
  const [min, max] = [Number(await slider.getAttribute('min')), Number(await slider.getAttribute('max'))];
  await slider.focus();
  await slider.evaluate((box: HTMLInputElement, time) => {
    box.value = String(time);
    box.dispatchEvent(new InputEvent('input', { bubbles: true }));
  }, min + (max - min) / 4);
  await expect.poll(async () => (await line.getAttribute('d')) === finished).toBe(false);
  await page.getByRole('button', { name: 'Finished film' }).click();
  await expect.poll(async () => (await line.getAttribute('d')) === finished).toBe(true);
  await page.getByRole('button', { name: '4×' }).click();
  await page.getByRole('button', { name: 'Replay' }).click();
  await expect(page.getByRole('button', { name: 'Pause' })).toBeVisible();
  const first = await page.getByTestId('replay-time').textContent();
  await expect(page.getByTestId('replay-time')).not.toHaveText(first ?? '');
  await page.getByRole('button', { name: 'Pause' }).click();
  await app.settled();
});

test('a chosen fault goes to its place, shows cause and cure, and its cure can be tried and undone', async ({ app, page }) => {
  await app.chooseCoat('Single coat, 30 % overlap');
  const share = await page.getByTestId('in-target').textContent();
  await page.locator('.fault-head').first().click();
  await expect(page.locator('.fault-head').first()).toHaveAttribute('aria-expanded', 'true');
  await page.getByRole('button', { name: 'Try this' }).first().click();
  await app.settled();
  await expect(page.getByTestId('in-target')).not.toHaveText(share ?? '');
  await page.getByRole('button', { name: 'Undo' }).click();
  await app.settled();
  await expect(page.getByTestId('in-target')).toHaveText(share ?? '');
});

test('a stroke of the table is chosen and let go', async ({ app, page }) => {
  const stroke = page.getByRole('button', { name: 'Stroke 3', exact: true });
  await stroke.click();
  await expect(stroke).toHaveAttribute('aria-pressed', 'true');
  await stroke.press('Enter');
  await expect(stroke).toHaveAttribute('aria-pressed', 'false');
  await app.settled();
});

test('while the replay runs the verdict says that it is of the finished film', async ({ app, page }) => {
  await expect(page.getByRole('heading', { name: 'Verdict', exact: true })).toBeVisible();
  await page.getByRole('slider', { name: 'Time of the replay' }).press('ArrowLeft');
  await expect(page.getByRole('heading', { name: 'Verdict of the finished film' })).toBeVisible();
  await page.getByRole('button', { name: 'Finished film' }).click();
  await expect(page.getByRole('heading', { name: 'Verdict', exact: true })).toBeVisible();
  await app.settled();
});

test('a doubt is no error: it has a mark of its own that leads to the doubts', async ({ app, page }) => {
  await app.chooseCoat('Single coat, 30 % overlap');
  await expect(page.getByRole('button', { name: /Strokes.*has a doubt/ })).toBeVisible();
  await expect(page.getByText('needs attention')).toHaveCount(0);
  await page.getByRole('button', { name: 'see Doubts of Strokes' }).click();
  await expect(page.getByRole('region', { name: 'Doubts' })).toBeFocused();
  await expect(page.getByRole('region', { name: 'Doubts' })).toBeInViewport();
});

test('the caution is one line that stays, and is open until it was folded once', async ({ app, page }) => {
  const line = page.locator('summary', { hasText: 'earth the part, no ignition source within 20 ft (6 m), respirator' });
  const list = page.getByText('Wear an organic-vapour respirator');
  await expect(list).toBeVisible();
  await line.click();
  await expect(list).toBeHidden();
  expect((await line.boundingBox())?.height).toBeLessThan(50);
  await line.click();
  await expect(list).toBeVisible();
  await page.reload();
  await app.settled();
  await expect(line).toBeVisible();
  await expect(list).toBeHidden();
  // Folded, it leaves the first settings of the stage above the fold.
  await expect(page.getByRole('combobox', { name: 'Mix in the cup' })).toBeInViewport({ ratio: 1 });
});

test('a stroke or fault chosen from far down brings the canvas into sight', async ({ app, page }) => {
  const canvas = page.getByTestId('canvas');
  for (const choice of [page.getByRole('button', { name: 'Stroke 3', exact: true }), page.locator('.fault-head').nth(1)]) {
    await page.getByRole('main').evaluate((column) => column.scrollTo(0, column.scrollHeight));
    await expect(canvas).not.toBeInViewport({ ratio: 0.5 });
    await choice.click();
    await expect(canvas).toBeInViewport({ ratio: 0.9 });
  }
  await app.settled();
});

test('the section line is kept for a panel of one size only', async ({ app, page }) => {
  const kept = page.getByTestId('section');
  const usual = await kept.getAttribute('aria-valuemax');
  await page.getByRole('button', { name: 'Across', exact: true }).click();
  await expect(kept).not.toHaveAttribute('aria-valuemax', usual ?? '');
  const across = (await kept.getAttribute('aria-valuemax')) ?? '';
  await app.stage('Part');
  await page.getByRole('combobox', { name: 'Outline', exact: true }).selectOption({ label: 'Corners' });
  await page.getByRole('textbox', { name: /Outline: corners/ }).fill('0, 0\n300, 0\n300, 1000\n0, 1000');
  await app.settled();
  // Up the new panel, which is 1 m high; the reader's line across the old one is not carried over.
  await expect.poll(async () => kept.getAttribute('aria-valuemax')).toBe('500');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(async () => kept.getAttribute('aria-valuemax')).toBe(across);
  await app.settled();
});

test('the section is read by keys', async ({ app, page }) => {
  await page.getByRole('button', { name: 'Across', exact: true }).click();
  const section = page.getByTestId('section');
  await section.focus();
  for (let i = 0; i < 40; i++) await page.keyboard.press('ArrowRight');
  await expect(page.getByTestId('section-readout')).toHaveText(/\d+.* mm: .*µm wet/);
  await expect(section).toHaveAttribute('aria-valuenow', '40');
  await app.settled();
});

test('the probe reads film and strokes under the pointer', async ({ app, page }) => {
  const box = await page.getByTestId('canvas').boundingBox();
  if (box === null) throw new Error('no canvas');
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await expect(page.getByTestId('probe')).toContainText(/µm wet/);
  await expect(page.getByTestId('probe')).toContainText(/stroke \d+: /);
  await app.settled();
});

test('from 360 to 1920 px nothing is wider than the window, and text is 16 px or more', async ({ app, page }) => {
  for (const width of [360, 768, 1280, 1920]) {
    await page.setViewportSize({ width, height: 900 });
    await app.settled();
    const found = await page.evaluate(() => {
      // The drawing's own lettering is part of the canvas and has its own check.
      const small = [...document.querySelectorAll('body *:not(.canvas-host *)')].filter(
        (each) =>
          [...each.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim() !== '') &&
          parseFloat(getComputedStyle(each).fontSize) < 16,
      );
      return { overflow: document.documentElement.scrollWidth - window.innerWidth, small: small.map((each) => each.outerHTML.slice(0, 80)) };
    });
    expect(found.overflow, `${width} px`).toBeLessThanOrEqual(0);
    // From three columns on each scrolls by itself, and the page not at all.
    if (width >= 1280) expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBe(900);
    expect(found.small, `${width} px`).toEqual([]);
  }
});

test('at 360 px the header leaves room: name, coat and units, one row of buttons; the sentence is above the canvas', async ({ app, page }) => {
  await page.setViewportSize({ width: 360, height: 740 });
  await app.settled();
  // Three rows: a line of text, and two of controls 44 px high with their padding.
  expect((await page.getByRole('banner').boundingBox())?.height).toBeLessThanOrEqual(145);
  const [sentence, canvas] = [await app.sentence.boundingBox(), await page.getByTestId('canvas').boundingBox()];
  if (sentence === null || canvas === null) throw new Error('no sentence or canvas');
  expect(sentence.y + sentence.height).toBeLessThan(canvas.y);
});

test('buttons and boxes are 44 px high or more', async ({ app, page }) => {
  const low = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('button, input:not([type=checkbox]):not([type=file]), select, summary')]
      .filter((each) => each.offsetParent !== null && each.getBoundingClientRect().height < 43.5)
      .map((each) => each.outerHTML.slice(0, 80)),
  );
  expect(low).toEqual([]);
  await app.settled();
});

test('a change holds the page for less than 50 ms, but for one change in nine', { tag: '@timed' }, async ({ app, page }) => {
  await page.evaluate(() => {
    const held: number[] = [];
    (window as unknown as { held: number[] }).held = held;
    new PerformanceObserver((list) => held.push(...list.getEntries().map(({ duration }) => duration))).observe({ type: 'longtask' });
  });
  await app.openPlanned();
  const longest: number[] = [];
  for (const text of ['0.5', '0.4', '0.45', '0.55', '0.35', '0.42', '0.47', '0.52', '0.38']) {
    await app.field('Speed of the gun').fill(text);
    await app.settled();
    longest.push(await page.evaluate(() => Math.max(0, ...(window as unknown as { held: number[] }).held.splice(0))));
  }
  test.info().annotations.push({ type: 'longest task of each change, ms', description: longest.join(', ') });
  // The browser reports no task below 50 ms. The worst is left out: other work on the machine can only lengthen a task.
  expect(longest.sort((a, b) => a - b).at(-2)).toBeLessThan(await allowed_ms(page, 50));
});
