import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalForm, sha256Of } from '../../sim/log/digest.ts';
import { withChange } from '../../sim/log/history.ts';
import { atPointer } from '../../sim/log/pointer.ts';
import { reopened, signatureState, signed } from '../../sim/log/signing.ts';
import type { LogEntrySpec } from '../../sim/job/schema.ts';
import { ENTRY, NOON } from '../unit/log/logCases.ts';

const word = fc.string({ unit: 'grapheme', maxLength: 20 }).filter((text) => text.isWellFormed());
const entries: fc.Arbitrary<LogEntrySpec> = fc.record({
  name: word, notes: word, seconds: fc.integer({ min: 10, max: 99 }), temperature_C: fc.double({ min: -20, max: 60, noNaN: true }),
  combs: fc.array(fc.record({ low_um: fc.double({ min: 0, max: 100, noNaN: true }), high_um: fc.double({ min: 101, max: 5000, noNaN: true }) }), { maxLength: 4 }),
}).map(({ name, notes, seconds, temperature_C, combs }) => ({ ...ENTRY, name, notes, combs, cup: { kind: 'ford-4', seconds, temperature_C } }));

/** Pointers of all texts, numbers and yes-or-noes. */
function leaves(value: unknown, pointer = ''): string[] {
  if (typeof value !== 'object' || value === null) return [pointer];
  return Object.entries(value).flatMap(([key, held]) => leaves(held, `${pointer}/${key}`));
}

function changedLeaf(value: unknown): unknown {
  if (typeof value === 'number') return value === 0 ? 1 : -value;
  return typeof value === 'boolean' ? !value : `${String(value)}.`;
}

/** The same value with keys turned about at every level. */
function turned(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(turned);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).reverse().map(([key, held]) => [key, turned(held)]));
}

function withLeaf(root: unknown, [key, ...rest]: readonly string[]): unknown {
  if (key === undefined) return changedLeaf(root);
  if (Array.isArray(root)) return root.map((item: unknown, k) => (k === Number(key) ? withLeaf(item, rest) : item));
  return { ...(root as object), [key]: withLeaf((root as Record<string, unknown>)[key], rest) };
}

describe('digest', () => {
  it('any change of any leaf of a signed entry is noticed, the signature’s own leaves too', () => {
    fc.assert(fc.property(entries, fc.nat(), (entry, pick) => {
      const whole = signed(entry, { ...NOON, words: 'Seen.' });
      const pointers = leaves(whole);
      const pointer = pointers[pick % pointers.length]!;
      expect(signatureState(withLeaf(whole, pointer.split('/').slice(1)) as LogEntrySpec, null), pointer).toBe('entry-changed');
    }), { numRuns: 300 });
  });

  it('the order of keys and white space in a file never matter', () => {
    fc.assert(fc.property(entries, (entry) => {
      const whole = signed(entry, NOON);
      const again = JSON.parse(JSON.stringify(turned(whole), null, 3)) as LogEntrySpec;
      expect(canonicalForm(again)).toBe(canonicalForm(whole));
      expect(signatureState(again, null)).toBe('matches');
    }));
  });

  it('the canonical form is JSON of the same value, and its own canonical form', () => {
    fc.assert(fc.property(fc.jsonValue(), (value) => {
      const plain: unknown = JSON.parse(JSON.stringify(value));
      const text = canonicalForm(plain);
      expect(JSON.parse(text)).toEqual(plain);
      expect(canonicalForm(JSON.parse(text))).toBe(text);
      expect(sha256Of(text)).toMatch(/^[0-9a-f]{64}$/);
    }));
  });
});

describe('history', () => {
  const POINTERS = ['/name', '/notes', '/who', '/product/batch'] as const;
  const steps = fc.array(fc.record({ pointer: fc.constantFrom(...POINTERS), text: word, minute: fc.integer({ min: 10, max: 59 }), who: fc.constantFrom('Runa', 'Oskar') }), { maxLength: 12 });

  it('read backwards gives every value that stood before, back to the entry as it was first filled', () => {
    fc.assert(fc.property(entries, steps, (first, changes) => {
      let entry = first;
      for (const { pointer, text, minute, who } of changes) entry = withChange(entry, pointer, text, { at: `2026-05-04T12:${minute}+02:00`, who });
      let back: LogEntrySpec = { ...entry, history: [] };
      for (const { what, before } of [...entry.history].reverse()) back = { ...withChange(back, what, JSON.parse(before) as unknown, NOON), history: [] };
      for (const pointer of POINTERS) {
        // What was empty at first was filled later without a change.
        const was = atPointer(first, pointer);
        if (was !== undefined && was !== '') expect(atPointer(back, pointer)).toEqual(was);
      }
    }));
  });

  it('signing and reopening change nothing that was noted, and lose no signature', () => {
    fc.assert(fc.property(entries, fc.integer({ min: 1, max: 4 }), (entry, times) => {
      let open = entry;
      const digests: string[] = [];
      for (let k = 0; k < times; k++) {
        const whole = signed(open, NOON);
        digests.push(whole.signed!.sha256);
        open = reopened(whole, NOON, 'again');
      }
      expect({ ...open, history: entry.history }).toEqual(entry);
      expect(open.history.map(({ before }) => (JSON.parse(before) as { signed: { sha256: string } }).signed.sha256)).toEqual(digests);
    }));
  });
});
