import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { canonicalForm, sha256Of } from '../../sim/log/digest.ts';

/**
 * NIST, Secure Hash Standard, FIPS 180-4 (2015), example values of SHA-256: the one-block and the two-block message, and a million
 * letters a; the empty text as in NIST's further examples. Not read there: read as php-src (ext/hash/tests/sha256.phpt) and other
 * public test files quote them.
 */
const DIGESTS: readonly (readonly [name: string, text: string, digest: string])[] = [
  ['the empty text', '', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
  ['abc', 'abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
  ['two blocks', 'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq', '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1'],
  ['a million letters a', 'a'.repeat(1_000_000), 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0'],
];

describe('SHA-256 of FIPS 180-4', () => {
  it.each(DIGESTS)('%s', (name, text, digest) => {
    const ours = sha256Of(text);
    console.log(`${name}: ours ${ours.slice(0, 16)}…, published ${digest.slice(0, 16)}…`);
    expect(ours).toBe(digest);
  });

  it('is what two general-purpose tools find: Node’s crypto and sha256sum of GNU coreutils', () => {
    for (const text of ['Crosscoat', 'µm, °C, ½', '€ 😀', '\u0000', 'x'.repeat(55), 'x'.repeat(56), 'x'.repeat(64), 'x'.repeat(119)]) {
      expect(sha256Of(text)).toBe(createHash('sha256').update(text, 'utf8').digest('hex'));
      expect(execFileSync('sha256sum', { input: text, encoding: 'utf8' }).slice(0, 64)).toBe(sha256Of(text));
    }
  });
});

/** A double by the hexadecimal digits of its 64 bits. */
function double(bits: string): number {
  const view = new DataView(new ArrayBuffer(8));
  view.setBigUint64(0, BigInt(`0x${bits}`));
  return view.getFloat64(0);
}

/** RFC 8785 (Rundgren, Jordan, Erdtman 2020), appendix B, some of its rows, and the reference's own tests: read as public test files quote them. */
const NUMBERS: readonly (readonly [bits: string, text: string])[] = [
  ['0000000000000000', '0'], ['8000000000000000', '0'], ['4340000000000001', '9007199254740994'], ['4340000000000002', '9007199254740996'],
  ['444b1ae4d6e2ef50', '1e+21'], ['3eb0c6f7a0b5ed8d', '0.000001'], ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
];

describe('canonical form of RFC 8785', () => {
  it.each(NUMBERS)('the double %s is written %s', (bits, text) => {
    expect(canonicalForm(double(bits))).toBe(text);
  });

  it('refuses NaN and infinities, as appendix B asks', () => {
    for (const bits of ['7fffffffffffffff', '7ff0000000000000', 'fff0000000000000']) expect(() => canonicalForm(double(bits))).toThrow(/only what JSON can say/);
  });

  it('section 3.2.2: numbers, a string with escapes, literals', () => {
    const value: unknown = JSON.parse(String.raw`{
      "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
      "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
      "literals": [null, true, false]
    }`);
    expect(canonicalForm(value)).toBe(String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`);
  });

  it('section 3.2.3: keys in the order of their UTF-16 units', () => {
    const value: unknown = JSON.parse(String.raw`{"\u20ac":"Euro Sign","\r":"Carriage Return","\ufb33":"Hebrew Letter Dalet With Dagesh","1":"One","\ud83d\ude00":"Emoji: Grinning Face","\u0080":"Control","\u00f6":"Latin Small Letter O With Diaeresis"}`);
    expect([...canonicalForm(value).matchAll(/:"([^"]*)"/g)].map(([, word]) => word)).toEqual([
      'Carriage Return', 'One', 'Control', 'Latin Small Letter O With Diaeresis', 'Euro Sign', 'Emoji: Grinning Face', 'Hebrew Letter Dalet With Dagesh',
    ]);
  });
});
