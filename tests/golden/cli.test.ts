import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { run, scratchFolder } from '../unit/cli/fakeIo.ts';
import { drillById, writeRecording } from '../../sim/index.ts';
import { ready, withHabit } from '../unit/run/drills/sprayed.ts';

/** Has any word or figure of the demo's report moved? Set UPDATE_GOLDEN=1 to take the new one, and say why. */
const UPDATE = process.env['UPDATE_GOLDEN'] === '1';
const folder = scratchFolder();
const job = join(folder, 'demo.json');
const session = join(folder, 'session.csv');
const stopped = join(folder, 'stopped.csv');

beforeAll(async () => {
  writeFileSync(job, (await run(['demo'])).out);
  writeFileSync(session, (await run(['demo', '--strokes'])).out);
  const path = withHabit(ready(drillById('even-speed')), { stop: { share: 0.5, duration_s: 0.6 } }, (stroke) => stroke === 2);
  writeFileSync(stopped, [...writeRecording(path)].join(''));
});

async function checkGolden(name: string, argv: string[]): Promise<void> {
  const { code, out } = await run(argv);
  expect(code).toBe(0);
  const path = join(import.meta.dirname, name);
  const text = out.replaceAll(`${folder}/`, '');
  if (UPDATE) writeFileSync(path, text);
  // A missing file fails here: a golden text is never made by passing.
  expect(text).toBe(readFileSync(path, 'utf8'));
}

describe('the demo on the command line', () => {
  it('as planned', () => checkGolden('cliPlanned.txt', ['spray', job, '--coat', 'planned']));
  it('with too little overlap, in US units', () => checkGolden('cliThinLapsUs.txt', ['spray', job, '--coat', 'thin-laps', '--units', 'us']));
  it('by the recorded session', () => checkGolden('cliSession.txt', ['spray', job, '--strokes', session, '--coat', 'by-hand']));
  it('its plan', () => checkGolden('cliPlan.txt', ['plan', job, '--coat', 'planned']));
});

describe('practice on the command line', () => {
  it('a drill', () => checkGolden('cliDrill.txt', ['drill', 'even-speed']));
  it('its debrief, after a stop', () => checkGolden('cliDebrief.txt', ['debrief', '--strokes', stopped, '--drill', 'even-speed']));
});
