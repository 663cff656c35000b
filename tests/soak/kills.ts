/**
 * Kills the browser at random moments while somebody types or sprays, and looks each time what is there afterwards:
 * `npm run soak:kills -- --count 200 --seed 1 --lanes 2`. Builds the app unless `--dist` names a built one. Exits 1 where more than the
 * promise was lost, or something could not be opened.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { build, preview } from 'vite';
import { seededRandom } from '../../sim/base/noise.ts';
import { killLane, type Kill } from './kills/killLane.ts';

const { values } = parseArgs({
  options: { count: { type: 'string', default: '200' }, seed: { type: 'string', default: '1' }, lanes: { type: 'string', default: '2' }, port: { type: 'string', default: '4195' }, dist: { type: 'string' } },
});
const [count, seed, lanes, port] = [values.count, values.seed, values.lanes, values.port].map(Number) as [number, number, number, number];
if (![count, seed, lanes, port].every(Number.isInteger) || count < 1 || lanes < 1) throw new Error('give --count, --seed, --lanes and --port as whole numbers');

const outDir = values.dist ?? mkdtempSync(join(tmpdir(), 'crosscoat-dist-'));
if (values.dist === undefined) await build({ logLevel: 'error', build: { outDir, emptyOutDir: true } });
const server = await preview({ logLevel: 'error', build: { outDir }, preview: { port, strictPort: true } });
let done = 0;
const tell = ({ doing, lost_ms, fault }: Kill): void => console.log(`${++done}/${count} ${doing}: ${Math.round(lost_ms)} ms lost${fault === null ? '' : `; FAULT: ${fault}`}`);
const began_ms = performance.now();
const kills = (
  await Promise.all(
    Array.from({ length: lanes }, (_, lane) => killLane(`http://localhost:${port}/`, Math.floor((count + lane) / lanes), seededRandom(seed * 1000 + lane), tell)),
  )
).flat();
await server.close();
if (values.dist === undefined) rmSync(outDir, { recursive: true, force: true });

const faults = kills.filter(({ fault }) => fault !== null);
console.table(['typing', 'spraying'].map((doing) => figures(doing, kills.filter((kill) => kill.doing === doing))));
console.log(`${kills.length} kills in ${Math.round((performance.now() - began_ms) / 1000)} s, ${kills.length - faults.length} opened with what was promised, ${faults.length} faults`);
process.exit(faults.length === 0 ? 0 : 1);

function figures(doing: string, of: readonly Kill[]): Readonly<Record<string, string | number>> {
  const losses = of.map(({ lost_ms }) => lost_ms).sort((a, b) => a - b);
  return { doing, kills: of.length, 'median lost, ms': Math.round(losses[Math.floor(losses.length / 2)] ?? 0), 'worst lost, ms': Math.round(losses.at(-1) ?? 0) };
}
