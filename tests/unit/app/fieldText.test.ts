import { describe, expect, it } from 'vitest';
import { demoJob } from '../../../sim/index.ts';
import { fieldText, readNumber } from '../../../src/app/fieldText.ts';

describe('fieldText', () => {
  it('finds the unit of a number in a list of a list', () => {
    const path = ['part', 'panels', 0, 'hinge_mm', 1, 1] as const;
    expect(fieldText(demoJob(), path, 'metric', undefined)).toMatchObject({ text: '1250', unit: 'mm' });
    expect(fieldText(demoJob(), path, 'us', undefined)).toMatchObject({ text: '49.213', unit: 'in' });
    expect(readNumber(demoJob(), path, '50 in', 'metric')).toEqual({ value: 1270 });
  });
});
