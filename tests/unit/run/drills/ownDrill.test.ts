import { describe, expect, it } from 'vitest';
import { demoJob, DEMO_HAND_COAT, DEMO_PLANNED_COAT, withRecording } from '../../../../sim/job/demo.ts';
import { MEASURES } from '../../../../sim/job/measures.ts';
import { parseJob } from '../../../../sim/job/parse.ts';
import { serialiseJob } from '../../../../sim/job/serialise.ts';
import { ownDrill } from '../../../../sim/run/drills/ownDrill.ts';

const recorded = withRecording(demoJob(), DEMO_HAND_COAT, { id: 'tape', name: 'Tape', text: 't_s,x_mm\n' });

describe('a drill of one’s own', () => {
  it('is the coat as planned: its name, every measure, no recording', () => {
    const drill = ownDrill(recorded, DEMO_HAND_COAT);
    const job = drill.job();
    const coat = recorded.coats.find(({ id }) => id === DEMO_HAND_COAT);
    expect(drill).toMatchObject({ id: 'own', title: coat?.name, coat: DEMO_HAND_COAT, wait_s: 0 });
    expect(drill.counts).toEqual(MEASURES);
    expect(job.recordings).toEqual([]);
    expect(job.coats.filter((one) => 'recording' in one)).toEqual([]);
    expect(job).toEqual(demoJob());
    expect(parseJob(serialiseJob(job)).job).toEqual(job);
  });

  it('leaves the job that it came from alone', () => {
    const before = serialiseJob(recorded);
    ownDrill(recorded, DEMO_PLANNED_COAT).job();
    expect(serialiseJob(recorded)).toBe(before);
  });

  it('is refused for a coat that the job has not', () => {
    expect(() => ownDrill(recorded, 'nought')).toThrow(expect.objectContaining({ code: 'not-found' }) as Error);
  });
});
