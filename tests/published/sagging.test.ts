import { describe, expect, it } from 'vitest';
import { dryBlock } from '../../sim/film/dry/dryBlock.ts';
import { flowBlock } from '../../sim/film/flow/flowBlock.ts';
import { NODE_WIDTH, type FilmLaw } from '../../sim/film/law.ts';
import { advanceFilm } from '../../sim/film/life/advance.ts';
import { filmOf, plainEvaporation, plainLaw } from '../helpers/filmCases.ts';
import { lastDigit, testPublished, type PublishedRow } from '../helpers/publishedRow.ts';

/** The rows are for g 9.81, the model has 9.80665: a density raised as much keeps ρ g, all that the flow sees of either. */
const HEAVIER = 9.81 / 9.80665;
const PRINTED = 'half a unit in the last digit printed';

const slope: PublishedRow[] = ([[60, 8.4957], [45, 6.9367], [30, 4.905], [10, 1.7035]] as const).map(([tilt_deg, expected]) => ({
  source: 'g sin α (identity), g 9.81', quantity: `gravity along a panel ${tilt_deg}° from level, m/s²`, expected, tolerance: lastDigit(4), why: PRINTED,
  ours: () => {
    const law = plainLaw({ tilt_rad: (tilt_deg * Math.PI) / 180, down_rad: 0.7 });
    return HEAVIER * Math.hypot(law.gravityX_m_s2, law.gravityY_m_s2);
  },
}));

describe('gravity along a panel', () => {
  testPublished(slope);
});

const ROWS = 60;
/** The lowest cell of a column so long that its head, running empty at three times the film's speed, stays out of sight. */
const LOWEST = 0;
const whole = (rows: number) => ({ lowColumn: 0, highColumn: 1, lowRow: 0, highRow: rows });
/** What a surface runs is 3/2 of the mean, which is what the model keeps (Newtonian film, identity). */
const SURFACE = 1.5;

/** Run of the surface of a film of 100 µm, 0.1 Pa s at first, whose viscosity is `thicker(t)` times that, mm. */
function surfaceRun_mm(thicker: (time_s: number) => number, until_s: number): number {
  const step_s = 0.1;
  const law = plainLaw({ viscosity: () => 0.1, density_kg_m3: 1000 * HEAVIER });
  const film = filmOf(law, 1, ROWS, 2e-3, () => 100e-6);
  for (let step = 0; step < until_s / step_s; step++) {
    // With no yield stress only ρ/µ counts, so a thicker liquid is told to the flow as a lighter one.
    flowBlock(film, { ...law, density_kg_m3: law.density_kg_m3 / thicker((step + 0.5) * step_s) }, whole(ROWS), step_s);
  }
  return SURFACE * 1000 * film.run_m[LOWEST]!;
}

const steady: PublishedRow = {
  source: 'film on a wall, surface speed ρ g h²/(2 µ) (identity)', quantity: 'surface of 100 µm, 0.1 Pa s, ρ 1000 in 60 s, mm', expected: 29.43, tolerance: lastDigit(2), why: PRINTED,
  ours: () => {
    const law = plainLaw({ viscosity: () => 0.1, density_kg_m3: 1000 * HEAVIER });
    const film = filmOf(law, 1, ROWS, 2e-3, () => 100e-6);
    advanceFilm(film, law, 60);
    return SURFACE * 1000 * film.run_m[LOWEST]!;
  },
};

const GROWING = 'film on a wall whose viscosity grows, u0 ∫ µ0/µ dt (identity), u0 0.4905 mm/s, τ 30 s';
const growing: PublishedRow[] = [
  { source: GROWING, quantity: 'surface with µ0 exp(t/τ), in all (20 τ), mm', expected: 14.715, tolerance: lastDigit(3), why: PRINTED, ours: () => surfaceRun_mm((t) => Math.exp(t / 30), 600) },
  { source: GROWING, quantity: 'surface with µ0 exp(t/τ), 60 s, mm', expected: 12.7235, tolerance: lastDigit(4) + 5e-5, why: `${PRINTED}, and single precision of 600 sums`, ours: () => surfaceRun_mm((t) => Math.exp(t / 30), 60) },
  { source: GROWING, quantity: 'surface with µ0 (1 + t/τ), 60 s, mm', expected: 16.1661, tolerance: lastDigit(4) + 5e-5, why: `${PRINTED}, and single precision of 600 sums`, ours: () => surfaceRun_mm((t) => 1 + t / 30, 60) },
];

describe('a film that runs', () => {
  testPublished([steady, ...growing]);
});

/** A film that loses a steady `loss_m_s` whatever its solids: an activity of one, no diffusion in the way, one solvent. */
function steadyLoss(loss_m_s: number): FilmLaw {
  const law = plainLaw({ evaporation: plainEvaporation({ rate_m_s: 1, share: loss_m_s }), fastFraction: 1, density_kg_m3: 900 * HEAVIER, setDiffusivity_m2_s: 1, diffusivityFall: 0 });
  const bySolids = law.bySolids.map((value, i) => (i % NODE_WIDTH === 0 ? 1 : value));
  return { ...law, bySolids };
}

/** Run of a film that dries at a steady rate until it is 60 % solids, by the two kernels in turn, m. */
function dryingRun_m(wet_m: number, loss_m_s: number, steps = 8000): number {
  const law = steadyLoss(loss_m_s);
  const film = filmOf(law, 1, ROWS, 4e-3, () => wet_m);
  // Solids 0.125 h are 60 % of what lies there once (1 - 0.125/0.6) h has gone.
  const step_s = ((1 - 0.125 / 0.6) * wet_m) / (loss_m_s * steps);
  const tally = { fast_m: 0, slow_m: 0, wave_m_s: 0 };
  for (let step = 0; step < steps; step++) {
    flowBlock(film, law, whole(ROWS), step_s);
    dryBlock(film, law, whole(ROWS), step_s, 1, tally);
  }
  return film.run_m[LOWEST]!;
}

describe('a film that dries as it runs, drying and flow in turn', () => {
  const rows: readonly (readonly [number, number, number])[] = [
    [20, 0.12, 1.097], [30, 0.12, 3.703], [40, 0.12, 8.777], [60, 0.12, 29.62],
    [20, 0.066, 1.995], [30, 0.066, 6.733], [40, 0.066, 15.96], [60, 0.066, 53.85],
  ];
  testPublished(
    rows.map(([wet_um, loss_um_s, expected]) => ({
      source: 'reference computation: mean speed ρ g h²/(3 µ(φ)), φ0 0.125, k 20.0375, µ0 0.03 Pa s, ρ 900, steady loss, stopped at φ 0.6',
      quantity: `run of ${wet_um} µm losing ${loss_um_s} µm/s, mm`,
      expected,
      // Four printed figures 0.05 %; first-order steps, eight thousandths of a tenth, 0.05 %; the viscosity's nodes, 0.25 % at worst and both ways, 0.1 %.
      tolerance: 2e-3 * expected,
      why: 'printed figures, 8000 steps of first order, viscosity at the nearest of 4096 nodes',
      ours: () => 1000 * dryingRun_m(wet_um * 1e-6, loss_um_s * 1e-6),
    })),
  );

  it('scales as h³/E, to the last bit for powers of two', () => {
    const one = dryingRun_m(30e-6, 0.12e-6, 500);
    expect(dryingRun_m(60e-6, 0.12e-6, 500)).toBe(8 * one);
    // The share of vapour that makes the loss enters as y + y²/2: 3e-8 of it here.
    expect(dryingRun_m(30e-6, 0.06e-6, 500) / one).toBeCloseTo(2, 6);
  });
});
