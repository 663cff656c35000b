import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blendRows, blendText, readBlend, rowsOf, type BlendRow } from '../../../src/app/blendText.ts';
import { demoJob } from '../../../sim/job/demo.ts';
import { parseJob } from '../../../sim/job/parse.ts';
import type { MixSpec } from '../../../sim/job/schema.ts';

const rows = (...shares: string[]): BlendRow[] => shares.map((share, i) => ({ solvent: `solvent-${i}`, share }));

describe('readBlend', () => {
  it('takes shares that add to 100 %', () => {
    expect(readBlend(rows('60', '39.9 %', '.1'))).toEqual({
      parts: [{ solvent: 'solvent-0', percent: 60 }, { solvent: 'solvent-1', percent: 39.9 }, { solvent: 'solvent-2', percent: 0.1 }],
      sum: 100,
    });
  });

  it.each([
    [['60', '30'], 'The shares add to 90 %, which is 10 too little', null, 90],
    [['60', '40.2'], 'The shares add to 100.2 %, which is 0.2 too much', null, 100.2],
    [['60', ''], 'No share is typed; give a number from 0.01 to 100', 1, null],
    [['0', '100'], '"0" is no share', 0, null],
    [['60', 'half'], '"half" is no share', 1, null],
    [['101'], '"101" is no share', 0, null],
    [['NaN', '1'], '"NaN" is no share', 0, null],
  ] as const)('%j: %s', (shares, words, row, sum) => {
    expect(readBlend(rows(...shares))).toMatchObject({ problem: expect.stringContaining(words) as string, row, sum });
  });

  it('takes what the job file takes, and no more', () => {
    const [mix] = demoJob().mixes as [MixSpec];
    const tenths = fc.array(fc.integer({ min: 0, max: 700 }), { minLength: 1, maxLength: 5 });
    // Most sums of that kind miss 100; the last row makes up all but a little, so that both answers are common.
    const shares = fc.tuple(tenths, fc.integer({ min: -3, max: 3 })).map(([some, off]) => [...some, 1000 - some.reduce((a, b) => a + b, 0) + off].map((each) => each / 10));
    fc.assert(
      fc.property(shares, (percents) => {
        const read = readBlend(rows(...percents.map(String)));
        const thinner = percents.map((percent, i) => ({ solvent: `solvent-${i}`, percent }));
        const job = { ...demoJob(), mixes: [{ ...mix, thinner }], schemes: [] };
        let taken = true;
        try {
          parseJob(job);
        } catch {
          taken = false;
        }
        return 'parts' in read === taken;
      }),
      { numRuns: 300 },
    );
  });
});

describe('the text of a blend', () => {
  it('gives its rows back, whatever stands in a share', () => {
    for (const each of [rows('26', ''), rows('1 2', 'x'), rowsOf(demoJob().mixes[0]!.thinner)]) expect(blendRows(blendText(each))).toEqual(each);
  });
});
