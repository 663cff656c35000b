import { describe, expect, it } from 'vitest';
import { CrosscoatError } from '../../../sim/base/errors.ts';

describe('CrosscoatError', () => {
  it('writes out letters that nobody sees, and leaves line breaks and tabs', () => {
    const { message } = new CrosscoatError('schema', 'a\u0000b\u001b[2Jc\u202ed\re\n\tf');
    expect(message).toBe('a\\u0000b\\u001b[2Jc\\u202ed\\u000de\n\tf');
  });

  it('leaves out the middle of a message that a file made long, and keeps its head and its advice', () => {
    const { message } = new CrosscoatError('columns', `strokes.csv: column ${'['.repeat(10_000)} is not known; understood are t_s, t_ms`);
    expect(message.length).toBeLessThan(5010);
    expect(message.startsWith('strokes.csv: column [[')).toBe(true);
    expect(message).toContain(' … ');
    expect(message.endsWith('understood are t_s, t_ms')).toBe(true);
  });

  it('keeps a message of 5000 letters as it is', () => {
    expect(new CrosscoatError('range', 'x'.repeat(5000)).message).toBe('x'.repeat(5000));
  });
});
