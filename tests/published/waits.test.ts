import { describe } from 'vitest';
import { CELSIUS_0_K } from '../../sim/base/units.ts';
import { ruleDryingRatio } from '../../sim/air/dryingFactor.ts';
import { driedAt, paceOf, type Pace } from '../../sim/scheme/pace.ts';
import { layTimeline } from '../../sim/scheme/timeline.ts';
import { chainsOf, plainSetting } from '../helpers/daySchemes.ts';
import { testPublished } from '../helpers/publishedRow.ts';

const RULE = 'FAA AC 43.13-1B 2-21a: each 10 °F changes the drying time by a factor of two (printed "by 100 percent"; doubling and halving is our reading)';
const CIRCULAR = 'FAA AC 43.13-1B 2-21b to h: least waits at 70 °F of the natural-fibre sequence; 2 h after the tapes from memory of 2-21c';
const EXACT = 'powers of two, to rounding';
const ratioAt = (fahrenheit: number): number => ruleDryingRatio((fahrenheit - 32) / 1.8 + CELSIUS_0_K);
const paceAt = (fahrenheit: number): Pace => paceOf([0], [1 / ratioAt(fahrenheit)]);

/** Stated waits of the circular: between the brushed coats; tapes; after the clear over them; after the heavy clear; between the aluminium coats; before sanding. */
const CIRCULAR_WAITS_H = [1, 2, 2, 2, 1, 4];

describe('waits by the rule of 10 °F', () => {
  testPublished([
    ...([[50, 4], [60, 2], [70, 1], [80, 0.5], [90, 0.25]] as const).map(([fahrenheit, expected]) => ({
      source: RULE, quantity: `factor at ${fahrenheit} °F`, expected, tolerance: 1e-12, why: EXACT, ours: () => ratioAt(fahrenheit),
    })),
    { source: RULE, quantity: 'a 2 h wait at 60 °F, h', expected: 4, tolerance: 1e-9, why: EXACT, ours: () => driedAt(paceAt(60), 0, 120) / 60 },
    { source: RULE, quantity: 'the 4 h sanding wait at 80 °F, h', expected: 2, tolerance: 1e-9, why: EXACT, ours: () => driedAt(paceAt(80), 0, 240) / 60 },
    ...([[70, 12], [60, 24], [80, 6]] as const).map(([fahrenheit, expected]) => ({
      source: CIRCULAR, quantity: `stated waits of the circular laid at ${fahrenheit} °F, h`, expected, tolerance: 1e-9, why: 'a sum of whole hours, scaled by a power of two',
      ours: () => {
        const chains = chainsOf(CIRCULAR_WAITS_H.map((wait_h) => ({ work_min: 20, wait_h })));
        const { chains: [laid] } = layTimeline(chains, plainSetting({ rulePace: paceAt(fahrenheit) }));
        return laid!.laid.reduce((sum, { wait }) => sum + (wait === null ? 0 : wait.until - wait.from), 0) / 60;
      },
    })),
  ]);
});
