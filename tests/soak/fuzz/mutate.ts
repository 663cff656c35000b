/** Ways to spoil a good file. Each is a pure function of the input and of `random`, so a seed tells a failing input again. */

export type Random = () => number;

/** What breaks readers: bounds, words of other formats, markup, formulas, names that objects have already. */
const NASTY = [
  '', '0', '-0', '-1', '1e308', '1e309', '-1e-320', '9007199254740993', '0x10', 'NaN', 'Infinity', '-Infinity', 'null', 'true', '1,5', '１２',
  '__proto__', 'constructor', 'toString', 'hasOwnProperty', '\u0000', '\ufeff', '\u202e', '\ud800', 'é\u0301', '\r', '\n', '\t', ';', ',', '"', "'", '""',
  '=1+1', '@SUM(A1)', '+1', '<script>globalThis.ranScript = true</script>', '<img src=x onerror="globalThis.ranScript = true">', 'javascript:alert(1)', '../../etc/passwd',
  '{', '}', '[', ']', ':', '[[[[[[[[', '{"a":'.repeat(50), '['.repeat(5000), '1'.repeat(2000), 'M0 0', 'Z', 'A1 1 0 0 1', '2026-02-30T08:00+02:00', '99999999999999999999',
] as const;

/** Up to four spoilings of a text, one after the other. */
export function mutatedText(text: string, others: readonly string[], random: Random): string {
  let spoiled = text;
  for (let left = 1 + whole(4, random); left > 0; left--) spoiled = pick(TEXT_WAYS, random)(spoiled, others, random);
  return spoiled;
}

/** Up to four spoilings of bytes. */
export function mutatedBytes(bytes: Uint8Array, random: Random): Uint8Array {
  let spoiled = Uint8Array.from(bytes);
  for (let left = 1 + whole(4, random); left > 0; left--) spoiled = pick(BYTE_WAYS, random)(spoiled, random);
  return spoiled;
}

/** A JSON text whose shape holds and whose values do not: leaves swapped for others, keys renamed, parts repeated or left out. */
export function mutatedJson(text: string, random: Random): string {
  const value: unknown = JSON.parse(text);
  const places: { readonly holder: Record<string, unknown>; readonly key: string }[] = [];
  const walk = (holder: unknown): void => {
    if (typeof holder !== 'object' || holder === null) return;
    for (const [key, inner] of Object.entries(holder)) {
      places.push({ holder: holder as Record<string, unknown>, key });
      walk(inner);
    }
  };
  walk(value);
  for (let left = 1 + whole(3, random); left > 0 && places.length > 0; left--) {
    const { holder, key } = pick(places, random);
    pick(JSON_WAYS, random)(holder, key, random, () => { const other = pick(places, random); return other.holder[other.key]; });
  }
  return JSON.stringify(value);
}

type TextWay = (text: string, others: readonly string[], random: Random) => string;
const TEXT_WAYS: readonly TextWay[] = [
  (text, _, random) => text.slice(0, whole(text.length + 1, random)),
  (text, _, random) => text.slice(whole(text.length + 1, random)),
  (text, _, random) => { const [from, to] = span(text.length, random); return text.slice(0, from) + text.slice(to); },
  (text, _, random) => { const [from, to] = span(text.length, random); return text.slice(0, to) + text.slice(from, to).repeat(1 + whole(20, random)) + text.slice(to); },
  (text, _, random) => { const at = whole(text.length + 1, random); return text.slice(0, at) + pick(NASTY, random) + text.slice(at); },
  (text, _, random) => { const [from, to] = span(text.length, random); return text.slice(0, from) + pick(NASTY, random) + text.slice(to); },
  (text, _, random) => { const at = whole(text.length, random); return text.slice(0, at) + String.fromCharCode(whole(0x10000, random)) + text.slice(at + 1); },
  (text, others, random) => { const other = pick(others, random); return text.slice(0, whole(text.length + 1, random)) + other.slice(whole(other.length + 1, random)); },
  (text, _, random) => { const lines = text.split('\n'); const [from, to] = span(lines.length, random); return [...lines.slice(to), ...lines.slice(from, to), ...lines.slice(0, from)].join('\n'); },
  (text, _, random) => text.replaceAll(',', pick([';', '\t', ',,', ' '], random)),
  (text, _, random) => text.replaceAll('\n', pick(['\r\n', '\r', '\n\n', '\u2028'], random)),
  (text, _, random) => { let seen = 0; const wanted = whole(40, random); return text.replace(/-?\d+(\.\d+)?/g, (number) => (seen++ === wanted ? pick(NASTY, random) : number)); },
];

type ByteWay = (bytes: Uint8Array<ArrayBuffer>, random: Random) => Uint8Array<ArrayBuffer>;
const BYTE_WAYS: readonly ByteWay[] = [
  (bytes, random) => bytes.slice(0, whole(bytes.length + 1, random)),
  (bytes, random) => { if (bytes.length > 0) bytes[whole(bytes.length, random)] = whole(256, random); return bytes; },
  (bytes, random) => { for (let k = whole(30, random); k > 0 && bytes.length > 0; k--) { const at = whole(bytes.length, random); bytes[at] = (bytes[at] as number) ^ (1 << whole(8, random)); } return bytes; },
  (bytes, random) => { const [from, to] = span(bytes.length, random); return Uint8Array.from([...bytes.slice(0, from), ...bytes.slice(to)]); },
  (bytes, random) => { const at = whole(Math.max(1, bytes.length - 4), random); bytes.set(pick([[0, 0, 0, 0], [255, 255, 255, 255], [127, 255, 255, 255], [0, 1, 0, 0]], random).slice(0, bytes.length - at), at); return bytes; },
  (bytes, random) => Uint8Array.from([...bytes, ...bytes.slice(0, whole(bytes.length + 1, random))]),
];

type JsonWay = (holder: Record<string, unknown>, key: string, random: Random, other: () => unknown) => void;
const JSON_WAYS: readonly JsonWay[] = [
  (holder, key) => { delete holder[key]; },
  (holder, key, random) => { holder[key] = pick([null, true, -1, 0, 1e308, 1e-320, 12.5, '', [], {}, ...NASTY], random); },
  (holder, key, _, other) => { holder[key] = structuredClone(other()); },
  (holder, key, random) => { holder[pick(NASTY, random)] = holder[key]; },
  (holder, key, random) => { if (typeof holder[key] === 'number') holder[key] = holder[key] * pick([-1, 1e-9, 1e3, 1e9, 1.0000001], random); },
  (holder, key, random) => { const list = holder[key]; if (Array.isArray(list) && list.length > 0) holder[key] = Array.from({ length: whole(300, random) }, () => structuredClone(list[0]) as unknown); },
];

function whole(below: number, random: Random): number {
  return Math.floor(random() * below);
}

function pick<T>(list: readonly T[], random: Random): T {
  return list[whole(list.length, random)] as T;
}

function span(length: number, random: Random): readonly [from: number, to: number] {
  const [a, b] = [whole(length + 1, random), whole(length + 1, random)];
  return a < b ? [a, b] : [b, a];
}
