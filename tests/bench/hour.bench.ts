/**
 * An hour at 100 Hz, of which about half sprays: read, cut into strokes, sprayed on a panel of
 * 1500 x 750 cells and judged with causes and cures. `npx tsx tests/bench/hour.bench.ts`.
 */
import { demoJob, judgeCoat, layCoat, readRecording, settleCoat, strokesOf, writeRecording, type Job, type Path } from '../../sim/index.ts';
import { PathBuilder } from '../../sim/stroke/pathBuilder.ts';
import { makeSession } from '../helpers/session.ts';
import { printTable } from './measure.ts';

const RATE_HZ = 100;
const COAT = 'planned';
/** The hour goes over the panel about this often, so the target is that many coats. */
const ROUNDS = 11;

function hourJob(): Job {
  const demo = demoJob();
  const panel = { id: 'side', name: 'side', outline: { rectangle_mm: [3000, 1500] as [number, number] }, holes: [], attitude: { tilt_deg: 90, down_deg: -90 }, backing: 'open-cloth' as const };
  return {
    ...demo,
    part: { name: 'side', panels: [panel] },
    coats: demo.coats.slice(0, 1).map((coat) => ({
      ...coat,
      panel: 'side',
      plan: { ...coat.plan, order: 'one-way' as const, cross: false },
      target: { ...coat.target, thickness_um: 50 * ROUNDS },
    })),
  };
}

/** The same hand over the panel again and again, one time after the other. */
function repeated(path: Path, rows: number): Path {
  const builder = new PathBuilder();
  const last = path.count - 1;
  const round_s = (path.t_s[last] as number) - (path.t_s[0] as number) + 1;
  for (let row = 0; row < rows; row++) {
    const from = row % path.count;
    const round = Math.floor(row / path.count);
    builder.addRow(
      (path.t_s[from] as number) + round * round_s,
      path.x_m[from] as number, path.y_m[from] as number, path.z_m[from] as number,
      path.fan_rad[from] as number, path.pitch_rad[from] as number, path.yaw_rad[from] as number,
      path.trigger[from] as number,
    );
  }
  return builder.build();
}

function chunksOf(text: string): string[] {
  const chunks: string[] = [];
  for (let i = 0; i < text.length; i += 65_536) chunks.push(text.slice(i, i + 65_536));
  return chunks;
}

const setting = settleCoat(hourJob(), COAT);
const { path: planned, strokes: plannedStrokes } = strokesOf(setting);
const session = makeSession({ planned: { path: planned, strokes: plannedStrokes, warnings: [] }, seed: 1, rate_Hz: RATE_HZ });

const table = [90_000, 180_000, 360_000].map((rows) => {
  const chunks = chunksOf([...writeRecording(repeated(session, rows))].join(''));
  const start = performance.now();
  const recording = readRecording(chunks, 'hour.csv');
  const read = performance.now();
  const strokes = strokesOf(setting, recording);
  const cut = performance.now();
  const laid = layCoat(setting, strokes);
  const sprayed = performance.now();
  const { verdict } = judgeCoat(setting, strokes, laid, { cures: true });
  const judged = performance.now();
  if (!(verdict.wet.mean_m > 0)) throw new Error('nothing was laid: its time means nothing');
  const spraying = recording.path.trigger.reduce((sum, trigger) => sum + (trigger > 0.5 ? 1 : 0), 0) / recording.path.count;
  return {
    rows: recording.path.count,
    'spraying %': (100 * spraying).toFixed(0),
    strokes: strokes.strokes.length,
    'read s': ((read - start) / 1000).toFixed(2),
    'cut, measured s': ((cut - read) / 1000).toFixed(2),
    'sprayed s': ((sprayed - cut) / 1000).toFixed(2),
    'judged s': ((judged - sprayed) / 1000).toFixed(2),
    'total s': ((judged - start) / 1000).toFixed(2),
    'memory MB': (process.memoryUsage().rss / 1e6).toFixed(0),
  };
});
printTable('a recorded session at 100 Hz, read, cut into strokes, sprayed on 1500 x 750 cells and judged with cures', table);
