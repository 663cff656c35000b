import { DISTANCE_MM, RETARDER, USUAL_AIR, USUAL_BACKING, WAIT_MIN, defaultMix, defaultSetUp } from './defaults.ts';
import { demoPlanning, schemeMixes } from './demoScheme.ts';
import type { CoatSpec, Job, MixSpec, PanelSpec, PlanSpec, RecordingSpec, SetUpSpec, TargetSpec } from './schema.ts';
import { SCHEMA_VERSION } from './schemaFacts.ts';

/** Name of the recorded session that belongs to the demo job, beside this file. */
export const DEMO_SESSION_FILE = 'demo-session.csv';

/** Name of the demo's log and surveys, beside this file: what its invented people wrote down. */
export const DEMO_RECORD_FILE = 'demo-record.json';

/** Ids in the demo job that other parts of the program ask for. */
export const DEMO_PLANNED_COAT = 'planned';
export const DEMO_HAND_COAT = 'by-hand';
export const DEMO_GENERAL_MIX = 'general';
export const DEMO_SECOND_COAT = 'second-coat';
export const DEMO_RECORDING = 'session';

/**
 * The job shown at first start: the fabric-covered rudder of an invented training glider, two
 * mixes, three set-ups, a planned cross coat, the same coat meant for a hand, a single coat that laps
 * too little, and a second cross coat laid over the planned one while that still holds solvent.
 * Everything in it is made up. The recorded session is a file of its own: `withRecording` adds it
 * to the coat `DEMO_HAND_COAT`.
 */
export function demoJob(): Job {
  return {
    schemaVersion: SCHEMA_VERSION,
    name: 'Rudder, first build coat',
    note: 'An invented job of an invented gliding club. Replace the fan by your own test card before you trust a figure.',
    seed: 20,
    cell_mm: 2,
    part: { name: 'Rudder of the club trainer', panels: [rudder()] },
    air: { ...USUAL_AIR },
    mixes: [generalMix(), retardedMix(), ...schemeMixes()],
    setUps: [lowPressure(), conventional(), wornCap()],
    coats: [plannedCoat(), handCoat(), singleCoat(), secondCoat()],
    recordings: [],
    ...demoPlanning(DEMO_PLANNED_COAT, 'left-side'),
  };
}

/** The demo job with the text of its recorded session inside, which lays the coat by hand. */
export function demoJobWithSession(text: string): Job {
  return withRecording(demoJob(), DEMO_HAND_COAT, { id: DEMO_RECORDING, name: 'Session with a hand', text });
}

/** A job with the demo's log and surveys, given as the text of their file, which a first film need not wait for. */
export function withDemoRecord(job: Job, text: string): Job {
  const { log, surveys } = JSON.parse(text) as Pick<Job, 'log' | 'surveys'>;
  return { ...job, log, surveys };
}

/** A job in which a recording lays a coat; both are replaced where they were there before. */
export function withRecording(job: Job, coatId: string, recording: RecordingSpec): Job {
  const others = job.recordings.filter(({ id }) => id !== recording.id);
  return {
    ...job,
    coats: job.coats.map((coat) => (coat.id === coatId ? { ...coat, recording: recording.id } : coat)),
    recordings: [...others, recording],
  };
}

/**
 * Left side, hinge line at the left with two hinge cut-outs, slanted lower edge, rounded trailing
 * edge, one opening for an inspection ring (92 mm, about 3 5/8 in).
 */
function rudder(): PanelSpec {
  return {
    id: 'left-side',
    name: 'Rudder, left side',
    outline: {
      path_mm:
        'M 0 0 L 400 84 C 540 114 620 250 620 420 C 620 700 540 980 452 1136 C 408 1214 340 1250 250 1250 L 0 1250 ' +
        'V 1010 H 42 V 930 H 0 V 350 H 42 V 270 H 0 Z',
    },
    holes: [{ circle_mm: [150, 560, 92] }],
    attitude: { tilt_deg: 90, down_deg: -90 },
    backing: USUAL_BACKING,
    hinge_mm: [[0, 0], [0, 1250]],
  };
}

function generalMix(): MixSpec {
  return defaultMix(DEMO_GENERAL_MIX, 'Clear dope, general thinner');
}

/** For a damp day: what blush asks for. */
function retardedMix(): MixSpec {
  return { ...defaultMix('retarded', 'Clear dope, retarded'), retarder: RETARDER };
}

function lowPressure(): SetUpSpec {
  return withNote(
    defaultSetUp('low-pressure', 'low-pressure', 'Low-pressure gun, 200 mm fan'),
    'Usual values for such a gun at 200 mm (8 in); no test card yet.',
  );
}

function conventional(): SetUpSpec {
  return withNote(
    defaultSetUp('conventional', 'conventional', 'Conventional gun, wide fan'),
    'Wider fan and more liquid, but less of it lands.',
  );
}

/** Film of one stroke read every 20 mm across masking paper, µm. */
const WORN_CARD: readonly (readonly [place_mm: number, film_um: number])[] = [[-100, 0], [-80, 6], [-60, 14], [-40, 22], [-20, 29], [0, 34], [20, 40], [40, 47], [60, 45], [80, 22], [100, 0]];

/** A measured stroke, one-sided: what a worn or dirty cap leaves on masking paper. */
function wornCap(): SetUpSpec {
  const setUp = withNote(
    defaultSetUp('low-pressure', 'worn-cap', 'Low-pressure gun, worn cap'),
    'From a test card: heavy at one end. Half a turn of the cap turned the heavy end with it, so the cap is at fault.',
  );
  return {
    ...setUp,
    fan: {
      ...setUp.fan,
      profile: {
        family: 'table',
        place_mm: WORN_CARD.map(([place]) => place),
        film: WORN_CARD.map(([, film]) => film),
      },
    },
    card: { distance_mm: DISTANCE_MM, readings: `x_mm,film_um\n${WORN_CARD.map((row) => row.join(',')).join('\n')}\n` },
  };
}

/** Keys stay in the schema's order, so that the job is written as it would be read back. */
function withNote({ id, name, ...rest }: SetUpSpec, note: string): SetUpSpec {
  return { id, name, note, ...rest };
}

/** Half overlap at arm's pace; a cross coat. */
const CROSS_PLAN: PlanSpec = {
  overlap_percent: 50,
  speed_m_s: 0.36,
  distance_mm: DISTANCE_MM,
  direction_deg: 0,
  order: 'serpentine',
  lead_mm: 60,
  lag_mm: 60,
  firstStroke_mm: 0,
  cross: true,
};

/**
 * Two passes of Q·η/(v·W·(1 - o)) = 54.2 µm as it leaves the gun's jet, less the solvent that
 * flies off: about 100 µm wet.
 */
const CROSS_TARGET: TargetSpec = {
  film: 'wet',
  thickness_um: 100,
  min_percent: 80,
  max_percent: 120,
  holiday_percent: 25,
  dry_percent: 10,
};

function plannedCoat(): CoatSpec {
  return {
    id: DEMO_PLANNED_COAT,
    name: 'Cross coat as planned',
    panel: 'left-side',
    setUp: 'low-pressure',
    mix: DEMO_GENERAL_MIX,
    target: CROSS_TARGET,
    plan: CROSS_PLAN,
    hand: { kind: 'steady' },
  };
}

function handCoat(): CoatSpec {
  return { ...plannedCoat(), id: DEMO_HAND_COAT, name: 'Cross coat by hand', hand: { kind: 'practised' } };
}

/** The planned coat once more, before the first has let all its solvent go. */
function secondCoat(): CoatSpec {
  return {
    id: DEMO_SECOND_COAT,
    name: `Second cross coat, ${WAIT_MIN} min after the first`,
    panel: 'left-side',
    setUp: 'low-pressure',
    mix: DEMO_GENERAL_MIX,
    over: { coat: DEMO_PLANNED_COAT, wait_min: WAIT_MIN },
    target: CROSS_TARGET,
    plan: CROSS_PLAN,
    hand: { kind: 'steady' },
  };
}

/** One pass with too little overlap for a fan with thin edges: 47.6 µm less what flies off, in stripes. */
function singleCoat(): CoatSpec {
  return {
    id: 'thin-laps',
    name: 'Single coat, 30 % overlap',
    panel: 'left-side',
    setUp: 'conventional',
    mix: DEMO_GENERAL_MIX,
    target: { ...CROSS_TARGET, thickness_um: 24 },
    plan: { ...CROSS_PLAN, overlap_percent: 30, speed_m_s: 0.3, cross: false },
    hand: { kind: 'steady' },
  };
}
