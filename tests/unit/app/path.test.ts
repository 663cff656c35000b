import { describe, expect, it } from 'vitest';
import { pathOf, pointerOf, valueAt, withValueAt } from '../../../src/app/path.ts';

const root = { list: [{ a: 1 }, { a: 2 }], other: { 'x/y': 3 } };

describe('a path into the job', () => {
  it('reads a value, and undefined beyond the end', () => {
    expect(valueAt(root, ['list', 1, 'a'])).toBe(2);
    expect(valueAt(root, ['list', 5, 'a'])).toBeUndefined();
    expect(valueAt(root, ['other', 'none', 'deep'])).toBeUndefined();
  });

  it('changes one value and shares everything beside it', () => {
    const next = withValueAt(root, ['list', 0, 'a'], 9);
    expect(next.list).toEqual([{ a: 9 }, { a: 2 }]);
    expect(next.list[1]).toBe(root.list[1]);
    expect(next.other).toBe(root.other);
    expect(root.list[0]?.a).toBe(1);
    expect(Array.isArray(next.list)).toBe(true);
  });

  it('is the same object where the value is the same', () => {
    expect(withValueAt(root, ['list', 0, 'a'], 1)).toBe(root);
  });

  it('writes and reads a JSON pointer, slashes and tildes escaped', () => {
    expect(pointerOf(['other', 'x/y', '~'])).toBe('/other/x~1y/~0');
    expect(pathOf('/other/x~1y/~0')).toEqual(['other', 'x/y', '~']);
    expect(valueAt(root, pathOf('/list/1/a'))).toBe(2);
  });
});
