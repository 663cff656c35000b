import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { run, scratchFolder } from '../unit/cli/fakeIo.ts';

const UPDATE = process.env['UPDATE_GOLDEN'] === '1';
/** Two areas, the second short by a spot, one spot low, in mil. */
const READINGS = 'area_id,spot_id,dft_mil\n' + [2.6, 2.5, 2.7, 2.1, 2.0, 2.2, 2.8, 2.9, 2.7, 3.1, 3.0, 3.2, 2.5, 2.6, 2.4].map((mil, i) => `1,${Math.floor(i / 3) + 1},${mil}`).join('\n') + '\n' + [1.9, 1.9, 1.9, 2.6, 2.6, 2.6, 2.6, 2.7, 2.8, 2.7, 2.7, 2.7].map((mil, i) => `2,${Math.floor(i / 3) + 1},${mil}`).join('\n');

it('a survey by spots and areas, in US units', async () => {
  const folder = scratchFolder();
  const file = join(folder, 'readings.csv');
  writeFileSync(file, READINGS);
  const { code, out } = await run(['survey', file, '--rule', 'pa2', '--min', '2.5mil', '--max', '3mil', '--units', 'us']);
  expect(code).toBe(0);
  const path = join(import.meta.dirname, 'cliSurvey.txt');
  const text = out.replaceAll(`${folder}/`, '');
  if (UPDATE) writeFileSync(path, text);
  // A missing file fails here: a golden text is never made by passing.
  expect(text).toBe(readFileSync(path, 'utf8'));
});
