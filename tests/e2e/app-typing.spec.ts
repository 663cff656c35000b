import { allowed_ms } from './allowedTime.ts';
import { expect, test } from './appPage.ts';

test('a first visit shows the demo: a sentence, figures, faults with cause and cure', async ({ app, page }) => {
  await expect(page.getByRole('banner')).toContainText('Rudder, first build coat');
  await expect(app.sentence).toContainText('of the panel is inside the limits');
  await expect(app.wetMean).toHaveText(/^\d/);
  const faults = page.locator('.fault-head');
  await expect(faults.first()).toHaveAttribute('aria-expanded', 'true');
  await expect(page.locator('.fault-body')).toContainText('Cause.');
  await expect(page.locator('.fault-body')).toContainText('Cure. With');
  await faults.nth(1).click();
  await expect(faults.first()).toHaveAttribute('aria-expanded', 'false');
  await expect(page.locator('.fault-body')).toHaveCount(1);
});

test('the demo\'s second coat is laid by its recorded session', async ({ app, page }) => {
  await app.settled();
  await expect(page.getByRole('heading', { name: /Strokes as recorded: \d+/ })).toBeVisible();
  await expect(page.locator('.recording')).toContainText(/rows, [\d.]+ s/);
});

test('a changed speed can change the film within 100 ms', { tag: '@timed' }, async ({ app, page }) => {
  await app.openPlanned();
  const speed = app.field('Speed of the gun');
  // The first change warms what the engine compiles; each is timed from the key to the figure on screen.
  const times: number[] = [];
  for (const text of ['0.5', '0.4', '0.45', '0.55', '0.3', '0.42', '0.47', '0.52', '0.33', '0.38', '0.43', '0.35']) {
    times.push(
      await page.evaluate(async (typed) => {
        const box = [...document.querySelectorAll('input')].find((each) => each.id.endsWith('speed_m_s')) as HTMLInputElement;
        const figure = document.querySelector('[data-testid="wet-mean"]') as HTMLElement;
        const before = figure.textContent;
        const start = performance.now();
        box.value = typed;
        box.dispatchEvent(new InputEvent('input', { bubbles: true }));
        return new Promise<number>((resolve) => {
          const look = (): void => {
            if (figure.textContent === before) requestAnimationFrame(look);
            else resolve(performance.now() - start);
          };
          requestAnimationFrame(look);
        });
      }, text),
    );
    await app.settled();
  }
  await expect(speed).toHaveValue('0.35');
  // The quickest after the first, as for any benchmark: other work on the machine only adds.
  const warm = times.slice(1).sort((a, b) => a - b);
  const best = warm[0] as number;
  test.info().annotations.push({ type: 'median after the first, ms', description: (warm[(warm.length - 1) / 2] as number).toFixed(0) });
  test.info().annotations.push({ type: 'change to figure, ms', description: times.map((time) => time.toFixed(0)).join(', ') });
  expect(best).toBeLessThan(await allowed_ms(page, 100));
});

test('8 in is understood in a field of millimetres', async ({ app }) => {
  await app.field('Gun to panel').fill('8 in');
  await app.field('Gun to panel').press('Tab');
  await expect(app.field('Gun to panel')).toHaveValue('203.2');
});

test('a wrong text stays with its message, over a reload too, and the film stays', async ({ app, page }) => {
  const mean = await app.wetMean.textContent();
  const box = app.field('Gun to panel');
  await box.fill('about a hand');
  await box.press('Tab');
  await expect(box).toHaveAttribute('aria-invalid', 'true');
  await expect(page.getByRole('alert')).toContainText('"about a hand" is not a length');
  await expect(page.getByRole('button', { name: /Strokes.*needs attention/ })).toBeVisible();
  await expect(app.wetMean).toHaveText(mean ?? '');
  await page.reload();
  await app.settled();
  await expect(app.field('Gun to panel')).toHaveValue('about a hand');
  await expect(app.field('Gun to panel')).toHaveAttribute('aria-invalid', 'true');
});

test('undo and redo, by button and by key', async ({ app, page }) => {
  await app.field('Overlap').fill('60');
  await app.field('Overlap').press('Tab');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(app.field('Overlap')).toHaveValue('50');
  await page.keyboard.press('Control+Shift+z');
  await expect(app.field('Overlap')).toHaveValue('60');
  await page.keyboard.press('Control+z');
  await expect(app.field('Overlap')).toHaveValue('50');
});

test('a reload loses nothing', async ({ app, page }) => {
  await app.chooseCoat('Single coat, 30 % overlap');
  await app.field('Overlap').fill('41');
  await app.stage('Gun');
  await app.field('Fan width').fill('260');
  await page.getByRole('button', { name: 'mil · in' }).click();
  await page.reload();
  await app.settled();
  await expect(app.field('Fan width')).toHaveValue('10.236');
  await expect(page.getByRole('combobox', { name: 'Coat', exact: true }).locator('option:checked')).toHaveText('Single coat, 30 % overlap');
  await app.stage('Strokes');
  await expect(app.field('Overlap')).toHaveValue('41');
});

test('units turn over everywhere and back', async ({ app, page }) => {
  await page.getByRole('button', { name: 'mil · in' }).click();
  await expect(app.sentence).toContainText('mil');
  await expect(app.field('Gun to panel')).toHaveValue('7.874');
  await expect(page.locator('.paint')).toContainText('fl oz US');
  await app.field('Gun to panel').fill('200 mm');
  await app.field('Gun to panel').press('Tab');
  await page.getByRole('button', { name: 'µm · mm' }).click();
  await expect(app.field('Gun to panel')).toHaveValue('200');
  await expect(app.sentence).toContainText('µm');
});

test('an outline is checked as it is typed, with the place of what is wrong', async ({ app, page }) => {
  await app.stage('Part');
  await page.getByRole('combobox', { name: 'Outline', exact: true }).selectOption({ label: 'Corners' });
  const corners = page.getByRole('textbox', { name: /Outline: corners/ });
  await corners.fill('0, 0\n600, 0\n0, 400\n600, 400');
  await expect(corners).toHaveAttribute('aria-invalid', 'true');
  await expect(page.locator('.field-note.wrong')).toContainText(/cross/);
  await corners.fill('0, 0\n600, 0\n600, 400\n300');
  await expect(page.locator('.field-note.wrong')).toContainText('Line 4');
  await corners.fill('0, 0\n600, 0\n600, 1200\n0, 1200');
  await expect(corners).toHaveAttribute('aria-invalid', 'false');
  await app.settled();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(corners).not.toHaveValue(/1200/);
});
