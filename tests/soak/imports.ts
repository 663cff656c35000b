/** Reads spoiled files by every reader: `npm run soak:imports -- --count 100000 --seed 1`. Exits 1 where one crashed, hung, or told nothing useful. */
import { parseArgs } from 'node:util';
import { fuzzReader } from './fuzz/fuzzReader.ts';
import { fuzzedReaders } from './fuzz/readers.ts';

const { values } = parseArgs({ options: { count: { type: 'string', default: '100000' }, seed: { type: 'string', default: '1' }, reader: { type: 'string' } } });
const [count, seed] = [Number(values.count), Number(values.seed)];
if (!(Number.isInteger(count) && count > 0) || !Number.isInteger(seed)) throw new Error('give --count as a whole number above 0, and --seed as a whole number');

const readers = fuzzedReaders().filter(({ name }) => values.reader === undefined || name === values.reader);
const each = Math.ceil(count / readers.length);
const rows = [];
let defects: string[] = [];
for (const reader of readers) {
  const start_ms = performance.now();
  const figures = await fuzzReader(reader, each, seed);
  rows.push({ reader: figures.name, inputs: figures.inputs, read: figures.read, refused: figures.refused, 'slowest, ms': Math.round(figures.slowest_ms), 's in all': Math.round((performance.now() - start_ms) / 1000), defects: figures.defects.length });
  defects = [...defects, ...figures.defects];
}
console.table(rows);
for (const defect of defects) console.log(defect);
console.log(`${each * readers.length} spoiled files, ${defects.length === 0 ? 'no crash, hang or script run' : `${defects.length} defects (at most ten a reader are told)`}`);
process.exitCode = defects.length === 0 ? 0 : 1;
