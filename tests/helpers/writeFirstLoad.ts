import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { chromium } from '@playwright/test';
import { serveSite } from '../e2e/staticSite.ts';
import { findBrowser } from './findBrowser.ts';

/**
 * Writes into package.json which chunks of the build in `dist` a first load does not fetch, for the size check
 * (`npx tsx tests/helpers/writeFirstLoad.ts` after `npm run build`): all whose name no fetched one has.
 */

const FOLDER = 'dist/assets/';

/** A chunk's name without its hash. */
function stem(name: string): string {
  return name.replace(/-[\w-]{8}\.js$/, '');
}

async function fetchedChunks(): Promise<string[]> {
  const site = await serveSite('dist');
  const browser = await chromium.launch({ executablePath: findBrowser(), args: ['--no-sandbox', '--use-angle=swiftshader', '--enable-unsafe-swiftshader', '--ignore-gpu-blocklist'] });
  const page = await browser.newPage({ serviceWorkers: 'block' });
  const fetched: string[] = [];
  page.on('request', (request) => fetched.push(new URL(request.url()).pathname.split('/').pop() ?? ''));
  await page.goto(site.address);
  await page.getByTestId('sentence').filter({ hasText: 'of the panel' }).waitFor({ timeout: 90_000 });
  await page.locator('.working').filter({ hasNotText: /./ }).waitFor({ state: 'attached', timeout: 90_000 });
  const seen = [...fetched];
  await browser.close();
  await site.close();
  return seen.filter((name) => name.endsWith('.js'));
}

const first = new Set((await fetchedChunks()).map(stem));
const others = new Set(readdirSync(FOLDER).filter((name) => name.endsWith('.js')).map(stem).filter((name) => !first.has(name)));
const manifest = JSON.parse(readFileSync('package.json', 'utf8')) as { 'size-limit': { path: string[] }[] };
const [check] = manifest['size-limit'];
if (check === undefined) throw new Error('writeFirstLoad: package.json has no size check');
check.path = [`${FOLDER}*.js`, ...[...others].sort().map((name) => `!${FOLDER}${name}-*.js`)];
writeFileSync('package.json', `${JSON.stringify(manifest, null, 2)}\n`);
console.log(`${first.size} names in the first load, ${others.size} left out`);
