import { defineConfig } from '@playwright/test';
import { findBrowser } from './tests/helpers/findBrowser.ts';

const PORT = 4173;

/** Tag of tests of how fast something answers: one at a time, after the others, on a machine with nothing else to do. */
const TIMED = /@timed/;

export default defineConfig({
  testDir: 'tests/e2e',
  outputDir: 'test-results/browser',
  fullyParallel: false,
  workers: 2,
  projects: [
    { name: 'plain', grepInvert: TIMED },
    { name: 'timed', grep: TIMED, dependencies: ['plain'], workers: 1 },
  ],
  retries: 0,
  forbidOnly: true,
  // A machine half as fast, with other work on its two cores, takes over half a minute to show the first film.
  timeout: 150_000,
  reporter: [['list'], ['json', { outputFile: 'test-results/browser.json' }]],
  use: {
    baseURL: `http://localhost:${PORT}/`,
    // Each test has a browser of its own, and would put the whole build aside in it.
    serviceWorkers: 'block',
    viewport: { width: 1280, height: 900 },
    launchOptions: {
      executablePath: findBrowser(),
      args: [
        '--use-angle=swiftshader',
        '--enable-unsafe-swiftshader',
        '--ignore-gpu-blocklist',
        '--no-sandbox',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
        '--no-first-run',
      ],
    },
  },
  webServer: {
    command: `npx vite preview --port ${PORT} --strictPort`,
    url: `http://localhost:${PORT}/`,
    reuseExistingServer: false,
    timeout: 30_000,
  },
});
