import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CrosscoatError } from '../../sim/base/errors.ts';
import { demoJob } from '../../sim/job/demo.ts';
import { findJsonFault } from '../../sim/job/jsonFault.ts';
import { parseJob } from '../../sim/job/parse.ts';
import type { Job } from '../../sim/job/schema.ts';
import { serialiseJob } from '../../sim/job/serialise.ts';

/** Whether a call ends well or with an error of ours; any other error is a bug. */
function endsAsPromised(call: () => unknown): boolean {
  try {
    call();
  } catch (error) {
    if (!(error instanceof CrosscoatError) || error.code === 'internal') throw error;
    expect(error.message.length).toBeGreaterThan(20);
    expect(error.message.length).toBeLessThan(5000);
  }
  return true;
}

/** The demo job with the value at one place replaced by anything. */
function withValue(path: readonly string[], value: unknown): unknown {
  const job = structuredClone(demoJob()) as unknown as Record<string, unknown>;
  let at = job;
  for (const key of path.slice(0, -1)) at = at[key] as Record<string, unknown>;
  at[path[path.length - 1]!] = value;
  return job;
}

function allPaths(value: unknown, path: readonly string[] = []): string[][] {
  if (typeof value !== 'object' || value === null) return [[...path]];
  const inner = Object.entries(value).flatMap(([key, item]) => allPaths(item, [...path, key]));
  return path.length === 0 ? inner : [[...path], ...inner];
}

const anything = fc.anything({ withBigInt: true, withDate: true, withMap: true, withNullPrototype: true, withSparseArray: true });
const words = fc.string({ unit: 'binary', maxLength: 40 });
/** JSON.stringify writes -0 as 0, which means the same here. */
const finite = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((value) => value + 0);

/** Jobs that differ from the demo in texts, numbers, and how many of each thing they have. */
const jobs: fc.Arbitrary<Job> = fc
  .record({
    name: words,
    note: words,
    seed: fc.integer({ min: 0, max: 4294967295 }),
    cell_mm: finite(1, 10),
    points: fc.array(fc.tuple(finite(-1e5, 1e5), finite(-1e5, 1e5)), { minLength: 3, maxLength: 20 }),
    overlap: finite(0, 95),
    temperature_C: finite(-20, 60),
    share: fc.integer({ min: 1, max: 999 }).map((tenths) => tenths / 10),
    wait_min: finite(0, 20160),
    text: words,
  })
  .map(({ name, note, seed, cell_mm, points, overlap, temperature_C, share, wait_min, text }) => {
    const job = demoJob();
    const [panel] = job.part.panels;
    return {
      ...job,
      name,
      note,
      seed,
      cell_mm,
      part: { ...job.part, panels: [{ ...panel!, outline: { points_mm: points } }] },
      air: { ...job.air, temperature_C },
      mixes: job.mixes.map((mix) => ({
        ...mix,
        thinner: [{ solvent: 'toluene', percent: share }, { solvent: 'acetone', percent: 100 - share }],
      })),
      coats: job.coats.map((coat) => ({
        ...coat,
        ...(coat.over === undefined ? {} : { over: { ...coat.over, wait_min } }),
        plan: { ...coat.plan, overlap_percent: overlap },
      })),
      recordings: [{ id: 'r', name: text, text }],
    };
  });

describe('parseJob', () => {
  it('throws nothing but its own errors on any text', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => endsAsPromised(() => parseJob(text, 'f'))), { numRuns: 500 });
  });

  it('throws nothing but its own errors on any JSON', () => {
    fc.assert(fc.property(fc.json({ maxDepth: 6 }), (text) => endsAsPromised(() => parseJob(text))), { numRuns: 500 });
  });

  it('throws nothing but its own errors on any value', () => {
    fc.assert(fc.property(anything, (value) => endsAsPromised(() => parseJob(value))), { numRuns: 500 });
  });

  it('throws nothing but its own errors on the demo with any value anywhere', () => {
    const paths = fc.constantFrom(...allPaths(demoJob()));
    fc.assert(fc.property(paths, anything, (path, value) => endsAsPromised(() => parseJob(withValue(path, value)))), { numRuns: 1000 });
  });

  it('reads deep nesting without running out of stack', () => {
    expect(endsAsPromised(() => parseJob('['.repeat(200000)))).toBe(true);
    expect(endsAsPromised(() => parseJob(`{"schemaVersion":2,"name":${'['.repeat(50000)}${']'.repeat(50000)}}`))).toBe(true);
  });

  it('gives back any job that was written', () => {
    fc.assert(fc.property(jobs, (job) => {
      expect(parseJob(serialiseJob(job)).job).toEqual(job);
    }), { numRuns: 200 });
  });
});

describe('serialiseJob', () => {
  it('writes the same text again after reading', () => {
    fc.assert(fc.property(jobs, (job) => serialiseJob(parseJob(serialiseJob(job)).job) === serialiseJob(job)), { numRuns: 100 });
  });
});

describe('findJsonFault', () => {
  it('finds a fault exactly where the engine refuses a text', () => {
    const broken = fc.tuple(fc.json(), fc.nat(), fc.constantFrom('', ',', '}', '"', ' ', '\n', '01', '\\', ':')).map(([text, at, inserted]) => {
      const place = at % (text.length + 1);
      return text.slice(0, place) + inserted + text.slice(inserted === '' ? place + 1 : place);
    });
    fc.assert(
      fc.property(fc.oneof(broken, fc.json(), fc.string()), (text) => {
        let refused = false;
        try {
          JSON.parse(text);
        } catch {
          refused = true;
        }
        return (findJsonFault(text) !== null) === refused;
      }),
      { numRuns: 2000 },
    );
  });
});
