import preact from '@preact/preset-vite';
import { defineConfig } from 'vitest/config';
import { contentPolicy } from './.build/contentPolicy.ts';
import { installable } from './.build/installable.ts';
import { pureTables } from './.build/pureTables.ts';
import { JOB_CARD_STYLE } from './sim/report/html/jobCardPage.ts';
import { PAGE_STYLE } from './sim/report/html/page.ts';
import { RECORD_STYLE } from './sim/report/html/record/recordStyle.ts';

/** A first start on a desk opens the page by itself; a machine without a terminal does not. */
const opensPage = process.env['CI'] === undefined && process.stdout.isTTY === true;

/** Tests of what keeps state between calls: signals, storage, workers. */
const PAGE_TESTS = 'tests/unit/{app,canvas,charts,storage,worker}/**/*.test.ts';

export default defineConfig({
  base: './',
  // Icons stand beside the page under names of their own; the manifest names them.
  publicDir: 'src/icons',
  plugins: [preact(), pureTables(), contentPolicy([JOB_CARD_STYLE, PAGE_STYLE + RECORD_STYLE]), installable()],
  // Page and worker share modules in chunks of their own each; the size check tells them by name.
  worker: { format: 'es', plugins: () => [pureTables()], rolldownOptions: { output: { chunkFileNames: 'assets/worker-[name]-[hash].js' } } },
  server: { port: 5173, open: opensPage },
  build: { target: 'es2022', sourcemap: true, assetsInlineLimit: 0 },
  test: {
    testTimeout: 30_000,
    pool: 'threads',
    // Left to itself it keeps one core free, and takes twice as long on two.
    maxWorkers: 2,
    projects: [
      // The model keeps no state, so its files may share what they import: a third of the time.
      { extends: true, test: { name: 'model', setupFiles: ['tests/helpers/propertySeed.ts'], include: ['tests/**/*.test.ts'], exclude: [PAGE_TESTS, 'tests/e2e/**'], isolate: false } },
      { extends: true, test: { name: 'page', include: [PAGE_TESTS] } },
    ],
  },
});
