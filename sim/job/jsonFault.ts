/** Where a text stops being JSON. Rows and columns count from 1. */
export interface JsonFault {
  readonly row: number;
  readonly column: number;
  /** What stands there and what was expected. */
  readonly text: string;
}

/** Tokens of RFC 8259, each tried at one place. */
const SPACE = /[ \t\n\r]*/y;
const STRING = /"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/y;
const NUMBER = /-?(?:0|[1-9][0-9]*)(?:\.[0-9]+)?(?:[eE][+-]?[0-9]+)?/y;
const WORD = /true|false|null/y;

/** Numbers of JavaScript that RFC 8259 has not. */
const NOT_JSON_NUMBER = /^[+-]?(?:NaN|Infinity)/;

/** What may come next. */
type Expected = 'value' | 'value or ]' | 'key' | 'key or }' | ':' | ', or ]' | ', or }' | 'end';

const EXPECTED_WORDS: Readonly<Record<Expected, string>> = {
  'value': 'a value',
  'value or ]': 'a value or ]',
  'key': 'a key in double quotes',
  'key or }': 'a key in double quotes or }',
  ':': 'a colon',
  ', or ]': 'a comma or ]',
  ', or }': 'a comma or }',
  'end': 'the end of the text',
};

/**
 * The first place where a text breaks JSON (RFC 8259), or null where it is well formed. Engines
 * word and place this each in their own way, or not at all; ours is asked once theirs has failed.
 * Works without recursion, so depth costs nothing.
 */
export function findJsonFault(text: string): JsonFault | null {
  const open: ('[' | '{')[] = [];
  let expected: Expected = 'value';
  let at = skip(SPACE, text, 0);
  for (;;) {
    if (at >= text.length) return expected === 'end' ? null : fault(text, at, expected);
    const next = step(text, at, expected, open);
    if (next === null) return fault(text, at, expected);
    expected = next.expected;
    at = skip(SPACE, text, next.at);
  }
}

/** One token on: where it ends and what may follow; null where the token does not fit. */
function step(text: string, at: number, expected: Expected, open: ('[' | '{')[]): { at: number; expected: Expected } | null {
  const sign = text[at] as string;
  const closes = (bracket: '[' | '{'): { at: number; expected: Expected } => {
    if (open.pop() !== bracket) return { at, expected: 'end' };
    return { at: at + 1, expected: after(open) };
  };
  switch (expected) {
    case 'end':
      return null;
    case ':':
      return sign === ':' ? { at: at + 1, expected: 'value' } : null;
    case ', or ]':
      return sign === ',' ? { at: at + 1, expected: 'value' } : sign === ']' ? closes('[') : null;
    case ', or }':
      return sign === ',' ? { at: at + 1, expected: 'key' } : sign === '}' ? closes('{') : null;
    case 'key':
    case 'key or }': {
      if (sign === '}' && expected === 'key or }') return closes('{');
      const end = skip(STRING, text, at);
      return end > at ? { at: end, expected: ':' } : null;
    }
    case 'value':
    case 'value or ]': {
      if (sign === ']' && expected === 'value or ]') return closes('[');
      if (sign === '[' || sign === '{') {
        open.push(sign);
        return { at: at + 1, expected: sign === '[' ? 'value or ]' : 'key or }' };
      }
      const end = Math.max(skip(STRING, text, at), skip(NUMBER, text, at), skip(WORD, text, at));
      return end > at ? { at: end, expected: after(open) } : null;
    }
  }
}

function after(open: readonly ('[' | '{')[]): Expected {
  const inside = open[open.length - 1];
  return inside === undefined ? 'end' : inside === '[' ? ', or ]' : ', or }';
}

/** Where a token that starts at `at` ends; `at` itself where it does not match. */
function skip(token: RegExp, text: string, at: number): number {
  token.lastIndex = at;
  return token.test(text) ? token.lastIndex : at;
}

function fault(text: string, at: number, expected: Expected): JsonFault {
  const before = text.slice(0, at);
  const row = before.split('\n').length;
  const column = at - (before.lastIndexOf('\n') + 1) + 1;
  const found = at >= text.length ? 'the text ends' : `${JSON.stringify(text[at])} stands`;
  const number = NOT_JSON_NUMBER.exec(text.slice(at, at + 10));
  if (number !== null && expected.startsWith('value')) return { row, column, text: `${number[0]} is no number in JSON; give a finite number there` };
  const half = text[at] === '"' ? ' (or the quoted text there is broken: an end quote missing, a line break inside, or a bad \\ sign)' : '';
  return { row, column, text: `${found} where ${EXPECTED_WORDS[expected]} is expected${half}` };
}
