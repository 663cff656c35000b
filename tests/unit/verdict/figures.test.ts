import { describe, expect, it } from 'vitest';
import { filmFigures, inTargetFraction } from '../../../sim/verdict/figures.ts';
import { drawnFilm, TARGET } from './handFilm.ts';

describe('filmFigures', () => {
  it('weights mean and deviation by cover and takes the extremes over half-covered cells', () => {
    const { panelGrid } = drawnFilm(['....'], 0.01);
    panelGrid.cover.set([1, 1, 0.5, 0.25]);
    const figures = filmFigures(Float32Array.from([1, 3, 5, 100]), panelGrid);
    const mean = (1 + 3 + 2.5 + 25) / 2.75;
    const variance = ((1 - mean) ** 2 + (3 - mean) ** 2 + 0.5 * (5 - mean) ** 2 + 0.25 * (100 - mean) ** 2) / 2.75;
    expect(figures.mean_m).toBeCloseTo(mean, 12);
    expect(figures.cv).toBeCloseTo(Math.sqrt(variance) / mean, 12);
    expect([figures.min_m, figures.max_m]).toEqual([1, 5]);
  });

  it('gives an even film a deviation of exactly nothing beside rounding', () => {
    const { film, panelGrid } = drawnFilm(Array.from({ length: 300 }, () => '.'.repeat(300)), 0.002);
    // 90 000 equal float32 values: the compensated mean is right to 2 ulp of a double.
    expect(filmFigures(film.wet_m, panelGrid).cv).toBeLessThan(1e-15);
  });

  it('has zeros for a panel without film or without area', () => {
    const { panelGrid } = drawnFilm(['..'], 0.01);
    expect(filmFigures(new Float32Array(2), panelGrid)).toEqual({ mean_m: 0, min_m: 0, max_m: 0, cv: 0 });
    panelGrid.cover.fill(0);
    expect(filmFigures(new Float32Array(2).fill(1), panelGrid)).toEqual({ mean_m: 0, min_m: 0, max_m: 0, cv: 0 });
  });
});

describe('inTargetFraction', () => {
  it('counts neither thin, heavy nor dry-sprayed area', () => {
    const { film, panelGrid } = drawnFilm(['.tH.', '....'], 0.01);
    film.arrivedDry_m[0] = 0.2 * 50e-6;
    expect(inTargetFraction(film, panelGrid, TARGET)).toBeCloseTo(5 / 8, 12);
  });
});
