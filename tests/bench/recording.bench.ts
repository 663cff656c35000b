/** A recorded path read, segmented and measured: cost against rows. `npx tsx tests/bench/recording.bench.ts`. */
import { measureStrokes } from '../../sim/stroke/measure.ts';
import { planStrokes } from '../../sim/stroke/planStrokes.ts';
import { createRecordingReader } from '../../sim/stroke/recordingReader.ts';
import { segmentPath } from '../../sim/stroke/segment.ts';
import { writeRecording } from '../../sim/stroke/writeRecording.ts';
import { makeSession } from '../helpers/session.ts';
import { rectangle } from '../unit/stroke/panels.ts';
import { measure, printTable } from './measure.ts';

const RATE_HZ = 100;
const CHUNK = 65_536;
const FAN_M = 0.25;
const plan = { overlapFraction: 0.5, speed_m_s: 0.3, distance_m: 0.2, direction_rad: 0, order: 'one-way', lead_m: 0.05, lag_m: 0.05, firstStroke_m: 0, cross: false } as const;

/** One-way strokes of 1.1 m and the way back: fluid on half of the time. Height sets the length of the session. */
function recordedText(rows: number): { text: string; height_m: number } {
  const secondsPerLine = 2 * (1.1 / 0.3 + 0.2);
  const height_m = (rows / RATE_HZ / secondsPerLine) * 0.125;
  const planned = planStrokes(rectangle(1, height_m), plan, FAN_M, 0.05);
  const path = makeSession({ planned, seed: 1, rate_Hz: RATE_HZ });
  return { text: [...writeRecording(path)].join(''), height_m };
}

function read(text: string) {
  const reader = createRecordingReader({ fileName: 'bench.csv' });
  for (let i = 0; i < text.length; i += CHUNK) reader.push(text.slice(i, i + CHUNK));
  return reader.end().path;
}

const rows = [90_000, 180_000, 360_000].map((wanted) => {
  const { text, height_m } = recordedText(wanted);
  const path = read(text);
  const { strokes } = segmentPath(path);
  const panel = rectangle(1, height_m);
  const session = { path, strokes, panel, fanWidthPerDistance: FAN_M / 0.2, triggerLag_s: 0.05 };
  const reading = measure(() => read(text).count, 3, 0);
  const segmenting = measure(() => segmentPath(path).strokes.length, 3, 0);
  const measuring = measure(() => measureStrokes(session).reduce((sum, stroke) => sum + stroke.length_m, 0), 3, 0);
  const total_ms = reading.median_ms + segmenting.median_ms + measuring.median_ms;
  return {
    rows: path.count,
    strokes: strokes.length,
    'read ms': reading.median_ms.toFixed(0),
    'segment ms': segmenting.median_ms.toFixed(0),
    'measure ms': measuring.median_ms.toFixed(0),
    'µs a row': ((1000 * total_ms) / path.count).toFixed(2),
    'memory MB': (process.memoryUsage().rss / 1e6).toFixed(0),
  };
});
printTable('recorded strokes at 100 Hz, median of 3', rows);
