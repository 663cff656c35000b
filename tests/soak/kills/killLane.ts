import { readdirSync, readFileSync, rmSync } from 'node:fs';
import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type BrowserContext, type Page } from '@playwright/test';
import { findBrowser } from '../../helpers/findBrowser.ts';
import { sprayUntil, typeUntil, type Act } from './acts.ts';
import { checkDraft, checkTyped, PROMISED_MS } from './checks.ts';

/** What one kill cost. */
export interface Kill {
  readonly doing: 'typing' | 'spraying';
  /** Age, at the kill, of the oldest thing that was not there afterwards, ms; 0 where nothing was lost. */
  readonly lost_ms: number;
  /** What was wrong after opening again; null where nothing was. */
  readonly fault: string | null;
}

const ARGUMENTS = ['--no-sandbox', '--use-angle=swiftshader', '--enable-unsafe-swiftshader', '--ignore-gpu-blocklist', '--disable-background-networking', '--no-first-run'];

/**
 * One browser with a profile of its own, killed `count` times while somebody types or sprays; each time it is opened again and
 * looked through. `random` gives 0 to 1; losing more than `promised_ms` is a fault.
 */
export async function killLane(url: string, count: number, random: () => number, told: (kill: Kill) => void = () => undefined, promised_ms = PROMISED_MS): Promise<readonly Kill[]> {
  const profile = await mkdtemp(join(tmpdir(), 'crosscoat-kills-'));
  const kills: Kill[] = [];
  try {
    for (let i = 0; i < count; i++) {
      const kill = await killOnce(url, profile, random, i, promised_ms);
      kills.push(kill);
      told(kill);
    }
  } finally {
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  }
  return kills;
}

async function killOnce(url: string, profile: string, random: () => number, turn: number, promised_ms: number): Promise<Kill> {
  const doing = random() < 0.75 ? 'typing' : 'spraying';
  const after_ms = doing === 'typing' ? 300 + 2700 * random() : 500 + 5500 * random();
  const first = await open(url, profile);
  let act: Act;
  let killed_ms: number;
  try {
    const acting = doing === 'typing' ? typeUntil(first.page, turn) : sprayUntil(first.page);
    act = await acting.begun;
    await new Promise((resolve) => setTimeout(resolve, after_ms));
    killed_ms = Date.now();
  } finally {
    killBrowser(profile);
    await first.context.close().catch(() => undefined);
  }
  const second = await open(url, profile);
  try {
    const fault = await openingFault(second.page);
    const checked = await (doing === 'typing' ? checkTyped : checkDraft)(second.page, act, killed_ms, promised_ms);
    return { doing, lost_ms: checked.lost_ms, fault: fault ?? checked.fault };
  } finally {
    // Closed in good order, so that each turn begins as a day does.
    await second.context.close();
  }
}

async function open(url: string, profile: string): Promise<{ readonly context: BrowserContext; readonly page: Page }> {
  const context = await chromium.launchPersistentContext(profile, { executablePath: findBrowser(), args: ARGUMENTS, viewport: { width: 1280, height: 900 }, baseURL: url });
  const page = context.pages()[0] ?? (await context.newPage());
  await page.goto('./');
  await page.getByRole('navigation').getByRole('button', { name: /^Part/ }).click({ timeout: 60_000 });
  await page.getByRole('textbox', { name: 'Job', exact: true }).waitFor({ timeout: 60_000 });
  return { context, page };
}

/** Kills every process of the browser that has this profile: found by the profile's own name, so that no other is hit. */
function killBrowser(profile: string): void {
  for (const pid of readdirSync('/proc').filter((name) => /^\d+$/.test(name)).map(Number)) {
    if (!commandOf(pid).includes(profile)) continue;
    try {
      process.kill(pid, 'SIGKILL');
    } catch {
      // It ended with its browser.
    }
  }
}

function commandOf(pid: number): string {
  try {
    return readFileSync(`/proc/${pid}/cmdline`, 'utf8');
  } catch {
    return '';
  }
}

/** A message that something could not be read, or is not kept. */
async function openingFault(page: Page): Promise<string | null> {
  const texts = await page.locator('.notice').allTextContents();
  return texts.find((text) => /could not be read|not being kept|not opened/.test(text)) ?? null;
}
