import preact from '@preact/preset-vite';
import { defineConfig } from 'vitest/config';

/** A first start on a desk opens the page by itself; a machine without a terminal does not. */
const opensPage = process.env['CI'] === undefined && process.stdout.isTTY === true;

export default defineConfig({
  base: './',
  plugins: [preact()],
  worker: { format: 'es' },
  server: { port: 5173, open: opensPage },
  build: { target: 'es2022', sourcemap: true, assetsInlineLimit: 0 },
  test: {
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    exclude: ['tests/e2e/**', 'node_modules/**'],
    testTimeout: 30_000,
    // Left to itself it keeps one core free, and takes twice as long on two.
    maxWorkers: 2,
  },
});
