/**
 * How long the demo job takes: `npx tsx tests/bench/demo.bench.ts`.
 * Planned coat laid and judged without cures (the figure that a changed number waits for), with
 * cures, and the recorded session. Warmed up; least and median of the runs.
 */
import { existsSync, readFileSync } from 'node:fs';
import {
  DEMO_HAND_COAT,
  DEMO_PLANNED_COAT,
  DEMO_SESSION_FILE,
  demoJob,
  judgeCoat,
  layCoat,
  readRecording,
  settleCoat,
  strokesOf,
  type CoatResult,
} from '../../sim/index.ts';

interface Timing {
  readonly least_ms: number;
  readonly median_ms: number;
}

function timed(runs: number, work: () => CoatResult): Timing {
  for (let i = 0; i < 5; i++) checkFinite(work());
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    const result = work();
    const took = performance.now() - start;
    checkFinite(result);
    return took;
  }).sort((a, b) => a - b);
  return { least_ms: times[0] as number, median_ms: times[Math.floor(runs / 2)] as number };
}

/** A fast wrong answer is no answer. */
function checkFinite({ verdict, laid }: CoatResult): void {
  const figures = [verdict.wet.mean_m, verdict.dry.cv, verdict.inTargetFraction, laid.account.landed_m3];
  if (!figures.every((figure) => Number.isFinite(figure) && figure > 0)) throw new Error(`no result: ${figures.join(', ')}`);
}

function report(name: string, { least_ms, median_ms }: Timing): void {
  console.log(`${name.padEnd(46)} least ${least_ms.toFixed(1).padStart(8)} ms   median ${median_ms.toFixed(1).padStart(8)} ms`);
}

const job = demoJob();

for (const coat of job.coats) {
  const setting = settleCoat(job, coat.id);
  const cells = setting.panelGrid.cover.length;
  const run = (cures: boolean) => () => {
    const strokes = strokesOf(setting);
    return judgeCoat(setting, strokes, layCoat(setting, strokes), { cures });
  };
  report(`${coat.id}: lay and judge (${cells} cells)`, timed(coat.id === DEMO_PLANNED_COAT ? 41 : 11, run(false)));
  report(`${coat.id}: with cures`, timed(7, run(true)));
}
report('planned: from the job (settle, lay, judge)', timed(21, () => {
  const setting = settleCoat(job, DEMO_PLANNED_COAT);
  const strokes = strokesOf(setting);
  return judgeCoat(setting, strokes, layCoat(setting, strokes), { cures: false });
}));

const session = new URL(`../../sim/job/${DEMO_SESSION_FILE}`, import.meta.url);
if (existsSync(session)) {
  const text = readFileSync(session, 'utf8');
  const setting = settleCoat(job, DEMO_HAND_COAT);
  const run = (cures: boolean) => () => {
    const strokes = strokesOf(setting, readRecording([text], DEMO_SESSION_FILE));
    return judgeCoat(setting, strokes, layCoat(setting, strokes), { cures });
  };
  report('session: read, lay and judge', timed(11, run(false)));
  report('session: with cures', timed(5, run(true)));
} else console.log(`no ${DEMO_SESSION_FILE} yet`);
