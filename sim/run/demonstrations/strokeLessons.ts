import { laidByHand, lessonJob, type LessonParts } from './lessonJob.ts';
import { pathWithHabits, type StrokeHabit } from './handPaths.ts';
import type { Demonstration } from './demonstration.ts';
import type { Job } from '../../job/schema.ts';

/** The stroke through the middle of the panel. */
const MIDDLE_STROKE = 2;
/** Speed of the usual plan. */
const SPEED_M_S = 0.36;
const RADIANS = Math.PI / 180;

/** What the model leaves out where film runs. */
export const RUN_CAUTION = 'Where a run stops and how it looks depends on the finish: the length is an estimate, its place and its order are the lesson.';

/** A job in which the middle stroke has a habit. */
function oddStroke(parts: LessonParts, habit: StrokeHabit): Job {
  return laidByHand(lessonJob(parts), (planned, lag_s) => pathWithHabits(planned, lag_s, (stroke) => (stroke === MIDDLE_STROKE ? habit : null)));
}

/** A job in which every stroke has a habit. */
function oddHand(parts: LessonParts, habit: StrokeHabit): Job {
  return laidByHand(lessonJob(parts), (planned, lag_s) => pathWithHabits(planned, lag_s, () => habit));
}

const stop: Demonstration = {
  id: 'stop',
  title: 'The gun stops in mid-stroke',
  question: 'How long may the gun stand still with the trigger pulled before the film runs?',
  caution: RUN_CAUTION,
  knob: { name: 'stop', unit: 's', quantity: 'time', low: 0, high: 1, step: 0.05, wrong: 0.6, cured: 0, said: 'with a stop of #', saidNone: 'without a stop' },
  fault: 'run',
  watch: 'wet-now',
  tells: ['heaviest_m', 'longestRun_m'],
  job: (stop_s) => oddStroke({ title: 'the gun stops in mid-stroke' }, { stop: { share: 0.5, duration_s: stop_s } }),
  until_s: 180,
};

const close: Demonstration = {
  id: 'too-close',
  title: 'One stroke too close',
  question: 'The fluid rate is the same on every stroke. Where does the extra film come from, and why is there too little beside it?',
  caution: 'The fan is taken to shrink with the distance, and ripples blown by the air are a rough estimate; prove both on a test card.',
  knob: { name: 'distance of the middle stroke', unit: 'mm', quantity: 'length', low: 60, high: 200, step: 5, wrong: 80, cured: 200, said: 'with the middle stroke at #' },
  fault: 'run',
  watch: 'wet-now',
  tells: ['heaviest_m', 'thinnest_m', 'longestRun_m'],
  job: (distance_mm) => oddStroke({ title: 'one stroke too close' }, { distance_m: distance_mm / 1000 }),
  until_s: 240,
};

const fast: Demonstration = {
  id: 'too-fast',
  title: 'Too fast',
  question: 'The film is even. What is wrong with it, and which figure of the gun would you rather not change to mend it?',
  caution: 'A thin coat is no saving: more coats are then needed, each with its own wait.',
  knob: { name: 'speed', unit: 'm/s', quantity: 'speed', low: 0.2, high: 1.2, step: 0.02, wrong: 0.8, cured: SPEED_M_S, said: 'at #' },
  fault: 'thin-lap',
  watch: 'target',
  tells: ['heaviest_m', 'thinnest_m', 'touchDry_s'],
  job: (speed_m_s) => lessonJob({ title: 'too fast', plan: { speed_m_s } }),
  until_s: 420,
};

const slow: Demonstration = {
  id: 'too-slow',
  title: 'One stroke too slow',
  question: 'Half the speed is twice the film. Why does the run grow so much faster than the film?',
  caution: RUN_CAUTION,
  knob: { name: 'speed of the middle stroke', unit: 'm/s', quantity: 'speed', low: 0.08, high: SPEED_M_S, step: 0.02, wrong: 0.1, cured: SPEED_M_S, said: 'with the middle stroke at #' },
  fault: 'run',
  watch: 'wet-now',
  tells: ['heaviest_m', 'longestRun_m'],
  job: (speed_m_s) => oddStroke({ title: 'one stroke too slow' }, { pace: speed_m_s / SPEED_M_S }),
  until_s: 240,
};

const overlap: Demonstration = {
  id: 'overlap',
  title: 'Overlap 30, 50 or 70 %',
  question: 'Where does the 50 % rule come from, and what do 20 % more cost?',
  caution: 'How much overlap is even depends on the fan: read yours from a test card.',
  knob: { name: 'overlap', unit: '%', quantity: 'percent', low: 20, high: 80, step: 5, wrong: 30, cured: 50, said: 'with an overlap of #' },
  fault: 'thin-lap',
  watch: 'target',
  tells: ['thinnest_m', 'heaviest_m', 'lost_m3'],
  job: (overlap_percent) => lessonJob({ title: 'overlap', plan: { overlap_percent } }),
  others: [{ id: 'seventy', title: 'With an overlap of 70 %', knob: 70, job: () => lessonJob({ title: 'overlap', plan: { overlap_percent: 70 } }) }],
  until_s: 60,
};

const arc: Demonstration = {
  id: 'wrist-arc',
  title: 'The wrist swings instead of the arm',
  question: 'The hand moves evenly. Why is the film heavy in the middle and thin at both ends?',
  caution: 'A wrist 150 mm behind the nozzle is assumed; a longer reach swings less for the same stroke.',
  // Beyond 27° the wrist alone would carry the aim past both ends of the stroke.
  knob: { name: 'swing to each side', unit: '°', quantity: 'angle', low: 0, high: 27, step: 1, wrong: 27, cured: 0, said: 'with a swing of # to each side', saidNone: 'with the gun square' },
  fault: 'thin-lap',
  watch: 'target',
  tells: ['heaviest_m', 'thinnest_m'],
  job: (swing_deg) => oddHand({ title: 'the wrist swings', plan: { lead_mm: 30, lag_mm: 30 } }, { swing_rad: swing_deg * RADIANS }),
  until_s: 60,
};

const trigger: Demonstration = {
  id: 'trigger',
  title: 'Trigger on before moving, off after stopping',
  question: 'What does a tenth of a second at each end of a stroke add up to over a wing?',
  caution: 'Lead and lag move the heavy end off the part; the finish lands on something all the same.',
  knob: { name: 'time at each end', unit: 'ms', quantity: 'time', low: 0, high: 500, step: 20, wrong: 300, cured: 0, said: 'with fluid on for # before moving and after stopping', saidNone: 'triggered on the move' },
  fault: 'heavy-spot',
  watch: 'target',
  tells: ['heaviest_m', 'lost_m3'],
  // Fluid opens 8 mm off the edge: half a fan's depth on the panel, so what is held there lands on it.
  job: (held_ms) => oddHand({ title: 'trigger on before moving', plan: { lead_mm: 8, lag_mm: 8 } }, { held_s: held_ms / 1000 }),
  until_s: 60,
};

const cross: Demonstration = {
  id: 'cross-coat',
  title: 'One pass or a cross coat',
  question: 'The same liquid, the same hand, twice as fast and twice over: what happens to the errors?',
  caution: 'A cross coat evens out what the hand does by chance; it does not mend a wrong overlap or a worn cap.',
  knob: { name: 'passes', unit: '', quantity: 'passes', low: 1, high: 2, step: 1, wrong: 1, cured: 2, said: 'in #' },
  fault: 'heavy-spot',
  watch: 'target',
  tells: ['cv', 'heaviest_m', 'thinnest_m', 'inTargetFraction'],
  job: (passes) => lessonJob({
    title: 'one pass or a cross coat',
    hand: 'practised',
    seed: 3,
    target: { min_percent: 85, max_percent: 115 },
    plan: { cross: passes === 2, speed_m_s: SPEED_M_S * passes },
  }),
  until_s: 60,
};

/** What the hand does wrong, in the order of the lessons. */
export const STROKE_LESSONS: readonly Demonstration[] = [stop, close, fast, slow, overlap, arc, trigger, cross];
