import { describe, expect, it } from 'vitest';
import { USUAL_RUBRIC } from '../../../../sim/job/rubric.ts';
import { withRecording } from '../../../../sim/job/demo.ts';
import { drillById } from '../../../../sim/run/drills/drills.ts';
import { taskOf } from '../../../../sim/run/drills/drill.ts';
import { debriefSession } from '../../../../sim/run/practice/debrief.ts';
import { whatIf, WHAT_IFS } from '../../../../sim/run/practice/whatIf.ts';
import { runJob } from '../../../../sim/run/runJob.ts';

/** Bursts of a gun that stands, at three places, and trembles across the planned lines: no speed that anyone could have meant. */
const STANDING = ['t_s,x_mm,y_mm,trigger', ...[0, 1, 2].flatMap((i) => [0, 0.5, 0.6].map((at_s) => `${2 * i + at_s},${200 + 100 * i},${150 + 0.002 * at_s},${at_s < 0.5 ? 1 : 0}`))].join('\n');

const drill = drillById('square-and-steady');

describe('a session of standing bursts', () => {
  it('is looked through, whatever habit it is asked without', () => {
    const debrief = debriefSession(
      { sessionVersion: 1, id: 'standing', trainee: '', name: 'Standing', sprayedAt: '2026-01-01T00:00:00Z', task: taskOf(drill), job: drill.job(), strokes: STANDING },
      USUAL_RUBRIC,
    );
    expect(debrief.coat.strokes.measures.length).toBeGreaterThan(0);
    // Nobody can say how fast these should have been; that they stood is plain.
    expect([debrief.figures.speed, debrief.figures.stops !== null && debrief.figures.stops > 1]).toEqual([null, true]);
    for (const habit of WHAT_IFS) expect(whatIf(debrief, habit).other.figures.mean_m).toBeGreaterThan(0);
  });

  it('is judged with cures as a coat of a job', () => {
    const job = withRecording(drill.job(), drill.coat, { id: 'standing', name: 'Standing', text: STANDING });
    const [coat] = runJob(job, { coatIds: [drill.coat] });
    expect(coat?.verdict.faults.length).toBeGreaterThan(0);
  });
});
