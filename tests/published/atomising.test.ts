import { describe } from 'vitest';
import { airblastDrop_m } from '../../sim/gun/atomise.ts';
import { capAirSpeed_m_s, jetSpeed_m_s } from '../../sim/gun/jet.ts';
import { lastDigit, testPublished } from '../helpers/publishedRow.ts';

const PSI = 6894.757;

describe('drops and air', () => {
  testPublished([
    ...([[100, 111.43], [200, 86.2], [300, 76.77]] as const).map(([airSpeed_m_s, expected]) => ({
      source: 'reference computation of N.K. Rizk and A.H. Lefebvre, 1984 (from memory): 200 mL/min, 300 L/min of air, 1.4 mm, ρ 900, σ 0.026, µ 0.03, air to liquid 2.0067',
      quantity: `Sauter mean drop at ${airSpeed_m_s} m/s, µm`,
      expected,
      tolerance: lastDigit(2),
      why: 'two printed decimals',
      ours: () => 1e6 * airblastDrop_m({ airSpeed_m_s, airLiquidRatio: 2.0067, nozzle_m: 1.4e-3, density_kg_m3: 900, surfaceTension_N_m: 0.026, viscosity_Pa_s: 0.03 }),
    })),
    ...([[3, 174.49], [5, 217.44], [8, 262.27], [10, 284.94], [20, 313.33]] as const).map(([psi, expected]) => ({
      source: 'isentropic nozzle, T0 293.15 K, 101325 Pa (identity)',
      quantity: `air speed at ${psi} psi, m/s`,
      expected,
      tolerance: lastDigit(2),
      why: 'two printed decimals',
      ours: () => capAirSpeed_m_s(psi * PSI),
    })),
    ...([[0.1, 46.5], [0.15, 31], [0.2, 23.25], [0.3, 15.5]] as const).map(([distance_m, expected]) => ({
      source: 'round turbulent jet, 6.2 U0 d/x (N. Rajaratnam, Turbulent Jets, 1976, from memory), U0 250 m/s, d 3 mm',
      quantity: `jet at ${distance_m} m, m/s`,
      expected,
      tolerance: lastDigit(2),
      why: 'two printed decimals',
      ours: () => jetSpeed_m_s(250, distance_m),
    })),
  ]);
});
