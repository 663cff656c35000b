import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { DEMO_HAND_COAT, demoJob } from '../../sim/job/demo.ts';
import { readRecording } from '../../sim/run/readRecording.ts';
import { settleCoat } from '../../sim/run/settle.ts';
import { strokesOf } from '../../sim/run/strokes.ts';
import { DEMO_FAULTS, DEMO_SESSION_PATH, demoSessionText } from '../helpers/sessionDemo.ts';

const text = readFileSync(new URL(`../../${DEMO_SESSION_PATH}`, import.meta.url), 'utf8');

describe('the demo session', () => {
  it('is what its generator writes (run tests/helpers/writeDemoSession.ts after a wanted change)', () => {
    expect(demoSessionText() === text).toBe(true);
  });

  it('shows its faults when it is read, segmented and measured', () => {
    const setting = settleCoat(demoJob(), DEMO_HAND_COAT);
    const planned = strokesOf({ ...setting, coat: { ...setting.coat, hand: { kind: 'steady' } } });
    const { measures, strokes, warnings } = strokesOf(setting, readRecording([text], DEMO_SESSION_PATH));
    expect(strokes.length).toBe(planned.strokes.length);
    expect(strokes.map(({ pass }) => pass)).toEqual(planned.strokes.map(({ pass }) => pass));
    expect(warnings.map(({ code }) => code)).toContain('trigger-chatter');
    expect(measures.flatMap(({ stroke, stops }) => stops.map(() => stroke))).toEqual([DEMO_FAULTS.stop!.stroke]);
    for (const index of DEMO_FAULTS.arc!.strokes) expect(measures[index]!.tilt.worst_rad).toBeGreaterThan(0.3);
    const wide = measures[DEMO_FAULTS.wideLap!.stroke]!;
    expect(Math.abs(planned.measures[wide.stroke]!.overlap!.mean_m - wide.overlap!.mean_m - 0.045)).toBeLessThan(0.02);
    expect(measures[DEMO_FAULTS.late!.strokes[0]!]!.triggerOn_m!).toBeLessThan(0);
  });
});
