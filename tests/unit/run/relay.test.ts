import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  changedStrokes,
  DEMO_HAND_COAT,
  DEMO_RECORDING,
  demoJob,
  layCoat,
  readRecording,
  settleCoat,
  strokesOf,
  withRecording,
  type TravelChange,
} from '../../../sim/index.ts';
import { relayStrokes } from '../../../sim/run/relay.ts';

const text = readFileSync(new URL('../../../sim/job/demo-session.csv', import.meta.url), 'utf8');
const job = withRecording(demoJob(), DEMO_HAND_COAT, { id: DEMO_RECORDING, name: 'session', text });
const setting = settleCoat(job, DEMO_HAND_COAT);
const strokes = strokesOf(setting, readRecording([text], 'session'));
const { film } = layCoat(setting, strokes);

/** Each of some 40 strokes over a cell rounds by 2^-24 of the film, once on and once off. */
const ROUNDING = 80 * 2 ** -24;

const CHANGES: readonly TravelChange[] = [
  { kind: 'even-speed', strokes: [3, 4], speed_m_s: 0.36 },
  { kind: 'no-stops', strokes: [0, 1, 2, 3, 4, 5] },
  { kind: 'even-distance', strokes: [7], distance_m: 0.2 },
  { kind: 'square-gun', strokes: [2, 9, 11] },
  { kind: 'move-strokes', strokes: [5], overlapFraction: 0.5 },
  { kind: 'trigger-past-edge', strokes: [1, 8], lead_m: 0.25 },
];

describe('relayStrokes', () => {
  it.each(CHANGES)('$kind: exchanged strokes equal the whole coat laid again', (change) => {
    if (change.kind === 'plan' || change.kind === 'add-strokes') throw new Error('not a change of single strokes');
    const travel = changedStrokes(setting, strokes, change);
    const whole = layCoat(setting, travel).film;
    const exchanged = relayStrokes(setting, film, strokes, travel, change.strokes, {});
    const peak = whole.wet_m.reduce((most, wet) => Math.max(most, wet), 0);
    const worst = whole.wet_m.reduce((most, wet, cell) => Math.max(most, Math.abs(wet - (exchanged.wet_m[cell] as number))), 0);
    expect(worst).toBeLessThan(ROUNDING * peak);
    expect(exchanged.wet_m.every((wet) => wet >= 0)).toBe(true);
    expect(exchanged.dry_m.some((dry, cell) => dry !== film.dry_m[cell])).toBe(true);
  });
});
