import { CrosscoatError } from '../../../sim/base/errors.ts';
import { seededRandom } from '../../../sim/base/noise.ts';
import { mutatedBytes, mutatedJson, mutatedText, type Random } from './mutate.ts';

/** A reader of files from outside, with good files to spoil. */
export type FuzzedReader =
  | { readonly name: string; readonly kind: 'text' | 'json'; readonly corpus: readonly string[]; readonly read: (text: string) => unknown }
  | { readonly name: string; readonly kind: 'bytes'; readonly corpus: readonly Uint8Array[]; readonly read: (bytes: Uint8Array) => unknown };

/** What became of the spoiled files of one reader. */
export interface FuzzFigures {
  readonly name: string;
  readonly inputs: number;
  /** Read in spite of it, some with warnings. */
  readonly read: number;
  /** Refused with a clear error. */
  readonly refused: number;
  readonly slowest_ms: number;
  /** What must not be: another error, an unclear one, a hang, a prototype touched, script that ran. */
  readonly defects: readonly string[];
}

/** No reader of files of this size has a right to more; a machine at a quarter of the speed would still be far below. */
const HANG_MS = 5000;
const MOST_DEFECTS = 10;

/** Reads so many spoiled files; the same seed spoils them in the same way. */
export async function fuzzReader(reader: FuzzedReader, count: number, seed: number): Promise<FuzzFigures> {
  const defects: string[] = [];
  let [read, refused, slowest_ms] = [0, 0, 0];
  for (let i = 0; i < count; i++) {
    const random = seededRandom((seed + i * 2654435761) >>> 0);
    const start_ms = performance.now();
    const told = await outcome(reader, random);
    const took_ms = performance.now() - start_ms;
    slowest_ms = Math.max(slowest_ms, took_ms);
    if (told === 'read') read++;
    else if (told === 'refused') refused++;
    const defect = told === 'read' || told === 'refused' ? (took_ms > HANG_MS ? `took ${Math.round(took_ms)} ms` : traces()) : told;
    if (defect !== null && defects.length < MOST_DEFECTS) defects.push(`${reader.name}, seed ${seed}, input ${i}: ${defect}`);
  }
  return { name: reader.name, inputs: count, read, refused, slowest_ms, defects };
}

/** `read`, `refused`, or what is wrong with the answer. */
async function outcome(reader: FuzzedReader, random: Random): Promise<string> {
  try {
    if (reader.kind === 'bytes') await reader.read(mutatedBytes(oneOf(reader.corpus, random), random));
    else {
      const good = oneOf(reader.corpus, random);
      await reader.read(reader.kind === 'json' && random() < 0.6 ? mutatedJson(good, random) : mutatedText(good, reader.corpus, random));
    }
    return 'read';
  } catch (thrown) {
    if (!(thrown instanceof CrosscoatError)) return `threw ${thrown instanceof Error ? thrown.stack ?? thrown.message : String(thrown)}`;
    return unclear(thrown) ?? 'refused';
  }
}

/** Why an error does not help whoever gave the file. */
function unclear({ code, message }: CrosscoatError): string | null {
  if (code === 'internal') return `called it a fault of ours: ${message}`;
  if (message.length < 20 || !/[;,:] ?\S/.test(message)) return `says too little: "${message}"`;
  if (message.length > 6000) return `says ${message.length} letters`;
  if (/[\u0000-\u0008\u000b-\u001f]/.test(message.replaceAll('\t', ' '))) return `has control letters: ${JSON.stringify(message.slice(0, 300))}`;
  return null;
}

/** What a reader must never leave behind. */
function traces(): string | null {
  if ((globalThis as { ranScript?: unknown }).ranScript !== undefined) return 'ran script from the file';
  for (const key in {}) return `left "${key}" on every object`;
  return null;
}

function oneOf<T>(list: readonly T[], random: Random): T {
  return list[Math.floor(random() * list.length)] as T;
}
