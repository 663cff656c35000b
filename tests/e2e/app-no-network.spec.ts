import { throughAllStages } from './allStages.ts';
import { expect, test } from './appPage.ts';

/** Violations of the page's policy, as the page is told of them; kept from its first line on. */
declare global {
  interface Window {
    violations: string[];
  }
}

test.beforeEach(async ({ page }) => {
  await page.addInitScript(() => {
    window.violations = [];
    document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI, sourceFile }) => window.violations.push(`${violatedDirective} ${blockedURI} ${sourceFile}`));
  });
});

test('every stage and sheet opens without a request to another host, and within the page’s policy', async ({ page, app }) => {
  test.setTimeout(300_000);
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  const policy = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content');
  expect(policy).toContain("default-src 'none'");
  expect(policy).not.toContain('unsafe');
  await throughAllStages(page);
  const here = new URL(page.url()).origin;
  expect(asked.filter((url) => !url.startsWith(here) && !/^(?:blob|data|about):/.test(url))).toEqual([]);
  expect(await page.evaluate(() => window.violations)).toEqual([]);
  expect(app.complaints).toEqual([]);
});

test('the job card in its frame has its own style', async ({ page, app }) => {
  await app.page.getByRole('navigation').getByRole('button', { name: /^Scheme/ }).click();
  const stage = page.getByRole('dialog', { name: 'Scheme' });
  await stage.getByRole('tab', { name: 'Job card' }).click();
  const card = page.frameLocator('iframe[title="Job card as it prints"]');
  await expect(card.locator('h1').first()).toBeVisible({ timeout: 60_000 });
  // Its header is a flexible row by the card's style sheet, and a block without it.
  expect(await card.locator('header').first().evaluate((header) => getComputedStyle(header).display)).toBe('flex');
});

test('the record in its frame has its own style', async ({ page, app }) => {
  await app.page.getByRole('navigation').getByRole('button', { name: /^Log/ }).click();
  const stage = page.getByRole('dialog', { name: 'Log' });
  await stage.getByRole('tab', { name: 'Record' }).click();
  const record = page.frameLocator('iframe[title="Record as it prints"]');
  await expect(record.locator('h1').first()).toBeVisible({ timeout: 60_000 });
  // Ruled off by its style sheet, and bare without it.
  expect(await record.locator('h2').first().evaluate((head) => getComputedStyle(head).borderBottomStyle)).toBe('solid');
});

test('what would leave this computer, or run as script, is stopped', async ({ page }) => {
  await page.goto('./');
  await expect(page.getByRole('heading', { name: 'Crosscoat' })).toBeVisible({ timeout: 90_000 });
  const asked: string[] = [];
  await page.route(/example\.org/, (route) => {
    asked.push(route.request().url());
    return route.fulfill({ status: 200, body: '' });
  });
  const stopped = await page.evaluate(async () => {
    const picture = await new Promise<string>((resolve) => {
      const image = new Image();
      image.onload = () => resolve('loaded');
      image.onerror = () => resolve('stopped');
      image.src = 'https://example.org/a.png';
      document.body.append(image);
    });
    const fetched = await fetch('https://example.org/').then(() => 'fetched', () => 'stopped');
    document.body.append(Object.assign(document.createElement('script'), { textContent: 'document.title = "run"' }));
    document.body.insertAdjacentHTML('beforeend', '<button id="inline" onclick="document.title = \'run\'">x</button>');
    document.querySelector<HTMLButtonElement>('#inline')?.click();
    let made = 'made';
    try {
      // That it is stopped is what is tested.
      // eslint-disable-next-line @typescript-eslint/no-implied-eval, @typescript-eslint/no-unsafe-call
      new Function('document.title = "run"')();
    } catch {
      made = 'stopped';
    }
    return { picture, fetched, made, title: document.title };
  });
  expect(stopped).toEqual({ picture: 'stopped', fetched: 'stopped', made: 'stopped', title: 'Crosscoat' });
  expect(asked).toEqual([]);
  // The test's own listener works: each of these was told to the page.
  expect((await page.evaluate(() => window.violations)).length).toBeGreaterThanOrEqual(4);
});
