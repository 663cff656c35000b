import { readdirSync, readFileSync } from 'node:fs';
import { strToU8, zipSync } from 'fflate';
import { PNG } from 'pngjs';
import { readHours } from '../../../sim/air/readHours.ts';
import { parseReadings } from '../../../sim/gun/card/parseReadings.ts';
import { demoJob } from '../../../sim/job/demo.ts';
import { parseJob } from '../../../sim/job/parse.ts';
import { parseRubric, USUAL_RUBRIC } from '../../../sim/job/rubric.ts';
import { serialiseJob } from '../../../sim/job/serialise.ts';
import { parseSession, serialiseSession } from '../../../sim/job/session.ts';
import { makePanel } from '../../../sim/panel/makePanel.ts';
import { taskOf } from '../../../sim/run/drills/drill.ts';
import { drillById } from '../../../sim/run/drills/drills.ts';
import { readRecording } from '../../../sim/run/readRecording.ts';
import { parseSurveyReadings } from '../../../sim/run/survey/readings/parseSurveyReadings.ts';
import { readPng } from '../../../src/cli/pngFile.ts';
import type { Io } from '../../../src/cli/io.ts';
import { readWorkshop } from '../../../src/workshop/readWorkshop.ts';
import type { FuzzedReader } from './fuzzReader.ts';
import { withChecksums } from './pngChecksums.ts';

const fixtures = (folder: string, ending: RegExp): string[] => readdirSync(`tests/fixtures/${folder}`).filter((name) => ending.test(name)).map((name) => readFileSync(`tests/fixtures/${folder}/${name}`, 'utf8'));

/** A job that is read must also be written and read again, and give its panels or say why not. */
function jobThrough(text: string): void {
  const { job } = parseJob(text, 'job.json');
  parseJob(serialiseJob(job), 'again.json');
  for (const [i, panel] of job.part.panels.entries()) makePanel(panel, `/part/panels/${i}`);
}

const PATHS = [
  'M0 0 H300 V200 H0 Z', 'M0,0 L300,0 300,200 C300,260 0,260 0,200 Z', 'm0 0 h100 v100 a50 50 0 0 1 -100 0 z', 'M10 10 Q150 300 290 10 T 300 200 L10 200 Z', 'M0 0 S 100 200 200 0 L 200 -50 L0 -50 Z',
];

/** The outline that a drawing gives, through the same gate as in the app. */
function outlineThrough(path_mm: string): void {
  makePanel({ id: 'p', name: 'p', outline: { path_mm }, holes: [], attitude: { tilt_deg: 90, down_deg: -90 }, backing: 'open-cloth' }, '/part/panels/0');
}

const HOURS = [
  'time,temperature_C,humidity_percent\n2026-05-04T08:00,18.5,62\n2026-05-04T10:00,20,58\n2026-05-04T12:00,22.5,50\n',
  'time;temperature_F;dewpoint_F\n2026-05-04T08:00;65,5;50\n2026-05-04T09:00;66;51\n',
];
const CARDS = ['x_mm,film_um\n-120,0.4\n-80,6\n-40,14\n0,18\n40,15\n80,5.5\n120,0.3\n', 'x_in;mass_mg\n-4;2\n-2;9\n0;14\n2;8\n4;1\n'];
const SURVEYS = [
  'dft_um\n105\n98\n110\n',
  'timestamp,area_id,spot_id,reading_no,dft_mil,x_mm,y_mm,operator,note\n2026-05-06T10:00+02:00,A,1,1,2.5,100,200,Kim,near the tape\n2026-05-06T10:01+02:00,A,1,2,2.1,110,200,Kim,\n',
  'wft_low_um;wft_high_um\n75;100\n100;\n', 'before_g,after_g,area_cm2\n10.00,10.33,100\n', 'before_um\tafter_um\n120,5\t148\n', '105 98 110 120\n101 99\n',
];
const RECORDINGS = [
  't_s,x_mm,y_mm,z_mm,fan_deg,pitch_deg,yaw_deg,trigger\n0,-50,100,200,90,0,0,off\n0.1,-10,100,200,90,0,0,spray\n0.5,200,101,201,90,1,0,1\n0.9,400,100,199,90,0,-1,0\n',
];
const TRAJECTORIES = ['0 -0.05 0.1 0.2 0 0 0.7071 0.7071 0\n0.1 0 0.1 0.2 0 0 0.7071 0.7071 1\n0.5 0.2 0.1 0.2 0 0 0.7071 0.7071 1\n0.6 0.3 0.1 0.2 0 0 0.7071 0.7071 0\n'];

function smallPng(): Uint8Array {
  const png = new PNG({ width: 24, height: 16 });
  for (let i = 0; i < png.data.length; i++) png.data[i] = (i * 37) % 256;
  return PNG.sync.write(png);
}

/** A few dozen bytes that say they are 10 gigabytes of picture. */
function hugePng(): Uint8Array {
  const bytes = Uint8Array.from(smallPng());
  new DataView(bytes.buffer).setUint32(16, 60_000);
  new DataView(bytes.buffer).setUint32(20, 45_000);
  return bytes;
}

function smallZip(level: 0 | 6): Uint8Array {
  return zipSync({ 'a.crosscoat.json': strToU8(fixtures('jobs', /^good\.json/)[0] as string), 'b.crosscoat-session.json': strToU8(smallSession()), 'README.txt': strToU8('Jobs of a workshop.') }, { level });
}

function smallSession(): string {
  const drill = drillById('half-overlap');
  return serialiseSession({
    sessionVersion: 1, id: 's-1', trainee: 'Kim', name: 'Morning', sprayedAt: '2026-03-01T09:30:00Z', task: taskOf(drill), job: drill.job(), strokes: RECORDINGS[0] as string,
  });
}

/** Only what `readPng` asks of the outside. */
function pngFrom(bytes: Uint8Array): Promise<unknown> {
  return readPng({ bytes: () => Promise.resolve(bytes) } as unknown as Io, 'card.png');
}

/** Every reader of files from outside that needs no page. */
export function fuzzedReaders(): readonly FuzzedReader[] {
  const jobs = [...fixtures('jobs', /^(good|version)/), serialiseJob(demoJob())];
  return [
    { name: 'job', kind: 'json', corpus: jobs, read: jobThrough },
    { name: 'session', kind: 'json', corpus: [smallSession()], read: (text) => parseSession(text, 'session.json') },
    { name: 'rubric', kind: 'json', corpus: [JSON.stringify(USUAL_RUBRIC)], read: (text) => parseRubric(text, 'rubric.json') },
    { name: 'recorded strokes', kind: 'text', corpus: [...RECORDINGS, ...fixtures('recordings', /\.csv$/)], read: (text) => readRecording([text], 'strokes.csv') },
    { name: 'trajectory text', kind: 'text', corpus: [...TRAJECTORIES, ...fixtures('recordings', /\.txt$/)], read: (text) => readRecording([text], 'path.txt') },
    { name: 'hours', kind: 'text', corpus: HOURS, read: (text) => readHours(text, 'hours.csv') },
    { name: 'card readings', kind: 'text', corpus: CARDS, read: (text) => parseReadings(text, 'card.csv') },
    { name: 'survey readings', kind: 'text', corpus: SURVEYS, read: (text) => parseSurveyReadings(text, 'readings.csv', { unit: 'um' }) },
    { name: 'outline', kind: 'text', corpus: PATHS, read: outlineThrough },
    { name: 'card photograph', kind: 'bytes', corpus: [smallPng()], read: pngFrom },
    { name: 'card photograph, its checksums right', kind: 'bytes', corpus: [smallPng(), hugePng()], read: (bytes) => pngFrom(withChecksums(bytes)) },
    { name: 'workshop zip', kind: 'bytes', corpus: [smallZip(6), smallZip(0)], read: (bytes) => readWorkshop(bytes, 'workshop.zip') },
  ];
}
