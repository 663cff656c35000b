import { ranged, type Sourced } from './sourced.ts';

/** Mixed liquid that stays in pot, hose and gun at each sprayed coat, m³. */
export const LEFT_IN_POT_M3: Sourced = ranged(100e-6, 50e-6, 300e-6, 'Assumed: a cup gun that is drained; a pressure pot with a long hose keeps more. Measure your own');
/** Share of what leaves the gun that goes on test cards and into the strainer, 0 to 1. */
export const TEST_SHARE: Sourced = ranged(0.05, 0.02, 0.1, 'Assumed: a card before each coat, and the strainer');
