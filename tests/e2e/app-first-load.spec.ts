import { readFileSync } from 'node:fs';
import { expect, test } from './appPage.ts';

/** Chunks that the size check leaves out, by the start of their names. */
function leftOut(): string[] {
  const { 'size-limit': checks } = JSON.parse(readFileSync('package.json', 'utf8')) as { 'size-limit': { path: string[] }[] };
  return checks.flatMap(({ path }) => path.filter((one) => one.startsWith('!dist/assets/')).map((one) => one.slice('!dist/assets/'.length, -'*.js'.length)));
}

test('a first load fetches none of the chunks that the size check leaves out', async ({ page }) => {
  const fetched: string[] = [];
  page.on('request', (request) => fetched.push(new URL(request.url()).pathname.split('/').pop() ?? ''));
  await page.goto('/');
  await expect(page.getByTestId('sentence')).toContainText('inside the limits', { timeout: 60_000 });
  const names = leftOut();
  expect(names.length).toBeGreaterThan(10);
  expect(fetched.filter((name) => name.endsWith('.js') && names.some((start) => name.startsWith(start)))).toEqual([]);
  // The page did load its script: the list above is not empty for want of requests.
  expect(fetched.some((name) => name.startsWith('index-') && name.endsWith('.js'))).toBe(true);
  // The schema is left out since it comes only after the film; come it does.
  await expect.poll(() => fetched.some((name) => name.startsWith('readNumber-')), { timeout: 60_000 }).toBe(true);
});
