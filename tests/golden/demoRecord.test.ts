import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { DEMO_HAND_COAT, demoJobWithSession, withDemoRecord } from '../../sim/job/demo.ts';
import { parseJob } from '../../sim/job/parse.ts';
import { serialiseJob } from '../../sim/job/serialise.ts';
import { signatureState } from '../../sim/log/signing.ts';
import { layCoat } from '../../sim/run/lay.ts';
import { recordingOf } from '../../sim/run/recordingOf.ts';
import { settleCoat } from '../../sim/run/settle.ts';
import { strokesOf } from '../../sim/run/strokes.ts';
import { DEMO_BIAS, DEMO_RECORD_PATH, demoRecordText } from '../helpers/recordDemo.ts';
import { demoSessionText } from '../helpers/sessionDemo.ts';

const text = readFileSync(new URL(`../../${DEMO_RECORD_PATH}`, import.meta.url), 'utf8');
const job = withDemoRecord(demoJobWithSession(demoSessionText()), text);

describe('the demo record', () => {
  it('is what its generator writes (run tests/helpers/writeDemoSession.ts after a wanted change)', () => {
    expect(text).toBe(demoRecordText());
  });

  it('is read back key for key, without a warning', () => {
    const read = parseJob(serialiseJob(job));
    expect(read.warnings).toEqual([]);
    expect(JSON.stringify(read.job)).toBe(JSON.stringify(job));
  });

  it('has signatures that match, and entries that nobody signed', () => {
    const states = job.log!.map((entry) => signatureState(entry, entry.recording === undefined ? null : demoSessionText()));
    expect(states).toEqual(['matches', 'matches', 'unsigned', 'matches', 'unsigned']);
    expect(job.surveys!.map((survey) => signatureState(survey, null))).toEqual(['matches', 'unsigned']);
    expect(signatureState({ ...job.log![0]!, notes: 'later' } as never, null)).toBe('entry-changed');
  });

  it('falls in the days and on the steps of the demo’s scheme, one change kept', () => {
    const steps = job.schemes![0]!.steps.map(({ id }) => id);
    for (const entry of job.log!) {
      if (entry.step !== undefined) expect(steps).toContain(entry.step);
      expect(entry.started).toMatch(/^2026-05-0[4-8]T.*\+02:00$/);
    }
    expect(job.log!.flatMap(({ history }) => history)).toHaveLength(1);
  });

  it('has tabs that read the model’s film less the invented bias', () => {
    const setting = settleCoat(job, DEMO_HAND_COAT, { cell_mm: 5 });
    const { film } = layCoat(setting, strokesOf(setting, recordingOf(job, setting.coat)));
    const ratios = job.surveys![0]!.readings.map((reading) => {
      const [x, y] = [reading.x_mm! / 5, reading.y_mm! / 5].map(Math.floor) as [number, number];
      return (reading as { dry_um: number }).dry_um / (film.dry_m[y * film.grid.columns + x]! * 1e6);
    });
    // The errors of single readings are up to 3.5 % and their mean is nought; a 5 mm cell is no point.
    expect(ratios).toHaveLength(20);
    expect(Math.abs(ratios.reduce((sum, ratio) => sum + ratio, 0) / 20 / DEMO_BIAS - 1)).toBeLessThan(0.02);
  });
});
