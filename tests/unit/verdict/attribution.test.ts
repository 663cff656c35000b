import { describe, expect, it } from 'vitest';
import { bestExplanation, explainedShare, LEAST_EXPLAINED } from '../../../sim/verdict/attribution.ts';
import { TARGET } from './handFilm.ts';

const um = (...values: number[]) => Float64Array.from(values, (v) => v * 1e-6);

describe('explainedShare', () => {
  it('is the share of the excess that goes', () => {
    expect(explainedShare('heavy-spot', um(90), um(60), TARGET)).toBeCloseTo(0.75, 12);
    expect(explainedShare('thin-lap', um(30), um(45), TARGET)).toBeCloseTo(0.75, 12);
  });

  it('weighs places by how far off they are', () => {
    // 40 µm and 10 µm off before, 0 and 10 after: 40 of 50 explained.
    expect(explainedShare('heavy-spot', um(90, 60), um(50, 60), TARGET)).toBeCloseTo(0.8, 12);
  });

  it('is nothing for a film that goes as far past the target on the other side, never negative', () => {
    expect(explainedShare('heavy-spot', um(70), um(30), TARGET)).toBe(0);
    expect(explainedShare('heavy-spot', um(70), um(90), TARGET)).toBe(0);
  });

  it('asks of dry spray only to be well inside the limit', () => {
    const share = (found: number, corrected: number) =>
      explainedShare('dry-spray', Float64Array.of(found), Float64Array.of(corrected), TARGET);
    expect(share(0.25, 0.01)).toBe(1);
    expect(share(0.25, 0.15)).toBeCloseTo(0.5, 12);
  });
});

describe('bestExplanation', () => {
  const found = um(100);
  const best = (...films: [string, number][]) =>
    bestExplanation('heavy-spot', found, films.map(([name, film]) => ({ name, values: um(film) })), TARGET);

  it('names the correction that explains most', () => {
    expect(best(['stop', 90], ['speed', 60])).toEqual({ name: 'speed', explains: expect.closeTo(0.8, 9) as unknown });
  });

  it('keeps the more particular one where a later one explains little more', () => {
    expect(best(['stop', 58], ['speed', 54])?.name).toBe('stop');
  });

  it(`names none below ${LEAST_EXPLAINED}`, () => {
    expect(best(['stop', 83], ['speed', 95])).toBeNull();
    expect(best(['stop', 82])?.name).toBe('stop');
  });
});
