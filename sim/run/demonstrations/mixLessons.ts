import { CELSIUS_0_K } from '../../base/units.ts';
import { THINNER_PER_FINISH, USUAL_AIR } from '../../job/defaults.ts';
import type { AirSpec, Job, MixSpec } from '../../job/schema.ts';
import { heatedAir, makeAir } from '../../air/moistAir.ts';
import { genericMixSpec } from '../../mix/changedMixSpec.ts';
import { SHOWN_COAT, type Demonstration } from './demonstration.ts';
import { pathWithHabits, withAirPasses } from './handPaths.ts';
import { laidByHand, lessonCoat, lessonJob } from './lessonJob.ts';
import { RUN_CAUTION } from './strokeLessons.ts';

/** A warmed room, °C: below the ceiling of the usual air. */
const WARMED_C = 30;
const MIDDLE_STROKE = 2;

/** Thinned one to one with a fast thinner: fine drops that dry on the way. */
function quickMix(): Partial<MixSpec> {
  return { thinner: genericMixSpec('clear-dope', 'fast', 1).thinner, thinnerPerFinish: 1 };
}

const far: Demonstration = {
  id: 'too-far',
  title: 'Too far, with a fast thinner',
  question: 'The gun throws as much as before. Where has the film gone, and what has arrived in its place?',
  caution: 'Transfer and drying in flight rest on model choices; the direction is sure, the figure is not. What does not land is in the air you breathe.',
  knob: { name: 'distance', unit: 'mm', quantity: 'length', low: 150, high: 400, step: 10, wrong: 380, cured: 200, said: 'at #' },
  fault: 'dry-spray',
  watch: 'dry-share',
  tells: ['mean_m', 'dryFraction', 'lost_m3'],
  job: (distance_mm) => lessonJob({ title: 'too far', mix: quickMix(), target: { thickness_um: 41, holiday_percent: 15 }, plan: { distance_mm } }),
  until_s: 120,
};

const thin: Demonstration = {
  id: 'thinned-too-much',
  title: 'Thinned too much',
  question: 'The gun is set as before. Why is the wet film thinner, and the dry film thinner by far?',
  caution: 'Thin by the product data sheet and the cup, never by eye; do not thin to get more flow. The solvent ends in the air.',
  knob: { name: 'thinner to one of dope', unit: '', quantity: 'ratio', low: 0.2, high: 3, step: 0.1, wrong: 2, cured: 0.3, said: 'with # of thinner to one of dope' },
  fault: 'thin-lap',
  watch: 'target',
  tells: ['meanDry_m', 'mean_m', 'lost_m3'],
  // 16 µm is the dry film of this cross coat with the usual mix.
  job: (ratio) => lessonJob({ title: 'thinned too much', mix: { thinnerPerFinish: ratio }, target: { film: 'dry', thickness_um: 16 }, plan: { cross: true } }),
  until_s: 120,
};

const thick: Demonstration = {
  id: 'thinned-too-little',
  title: 'Thinned too little',
  question: 'What keeps the drops from flowing together, and what would more air pressure do?',
  caution: 'The ripple is worked out from drop size and levelling; its limit is a choice of ours. Judge a real film by eye.',
  knob: { name: 'thinner to one of dope', unit: '', quantity: 'ratio', low: 0, high: 1, step: 0.03, wrong: 0, cured: THINNER_PER_FINISH, said: 'with # of thinner to one of dope', saidNone: 'not thinned at all' },
  fault: 'orange-peel',
  watch: 'peel',
  tells: ['peel_m', 'touchDry_s'],
  job: (ratio) => lessonJob({ title: 'thinned too little', mix: { thinnerPerFinish: ratio } }),
  until_s: 420,
};

const damp: Demonstration = {
  id: 'damp-air',
  title: 'Damp air: warm the room, or add retarder',
  question: 'The room is warmer than its dew point. Why can the film still turn white?',
  caution: 'Never warm the room with an open flame or an unvented heater: it can light the vapour. A retarder is added by the product data sheet.',
  knob: { name: 'relative humidity', unit: '%', quantity: 'percent', low: 40, high: 85, step: 1, wrong: 62, cured: 50, said: 'in air of # humidity' },
  fault: 'blush',
  watch: 'dew-margin',
  tells: ['blushMargin_K'],
  job: (humidity_percent) => lessonJob({ title: 'damp air', air: { humidity_percent } }),
  others: [
    { id: 'warmed', title: `Warmed to ${WARMED_C} °C (86 °F), no water added`, job: (humidity_percent) => lessonJob({ title: 'damp air, room warmed', air: warmed(humidity_percent) }) },
    { id: 'retarded', title: 'With retarded thinner', job: (humidity_percent) => lessonJob({ title: 'damp air, retarded thinner', air: { humidity_percent }, mix: { thinner: genericMixSpec('clear-dope', 'retarded', THINNER_PER_FINISH).thinner } }) },
  ],
  until_s: 180,
};

/** The same air with its moisture, warmed. */
function warmed(humidity_percent: number): Partial<AirSpec> {
  const room = makeAir({ ...USUAL_AIR, humidity_percent }, '/air');
  const { relativeHumidityFraction } = heatedAir(room, CELSIUS_0_K + WARMED_C);
  return { temperature_C: WARMED_C, humidity_percent: Number((relativeHumidityFraction * 100).toFixed(2)) };
}

const soon: Demonstration = {
  id: 'second-coat-too-soon',
  title: 'The second coat too soon',
  question: 'The first coat is dry to touch. What is still in it, and where can it go when another coat lies on top?',
  caution: 'The wait is that of the product data sheet and of the approved process; AC 43.13-1B asks one to two hours at 70 °F for dope.',
  knob: { name: 'wait', unit: 'min', quantity: 'wait', low: 10, high: 120, step: 5, wrong: 15, cured: 60, said: 'after #' },
  fault: 'blister',
  watch: 'trapped',
  tells: ['trappedFraction', 'touchDry_s'],
  job: secondCoat,
  until_s: 60,
};

function secondCoat(wait_min: number): Job {
  const parts = { title: 'second coat too soon', plan: { cross: true }, target: { thickness_um: 100 } };
  const second = lessonCoat(SHOWN_COAT, parts);
  return { ...lessonJob(parts), coats: [{ ...second, id: 'first', name: 'first coat' }, { ...second, name: 'second coat', over: { coat: 'first', wait_min } }] };
}

const tilt: Demonstration = {
  id: 'tilt',
  title: 'Upright or level',
  question: 'The same stop, the same film. Why does a level panel forgive it, and what does it not forgive?',
  caution: RUN_CAUTION,
  knob: { name: 'tilt from level', unit: '°', quantity: 'angle', low: 0, high: 90, step: 5, wrong: 90, cured: 0, said: 'tilted by #', saidNone: 'lying level' },
  fault: 'run',
  watch: 'wet-now',
  tells: ['longestRun_m', 'heaviest_m'],
  job: (tilt_deg) => laidByHand(lessonJob({ title: 'upright or level', tilt_deg }), (planned, lag_s) =>
    pathWithHabits(planned, lag_s, (stroke) => (stroke === MIDDLE_STROKE ? { stop: { share: 0.5, duration_s: 0.4 } } : null))),
  until_s: 180,
};

/** A stop short enough that air can still save it, on the last stroke but one, and air blown down over it. */
const AIR_STROKE = 3;
const AIR_STOP_S = 0.11;
const AIR_LINE = { from_m: [0.15, 0.32], to_m: [0.15, 0.15], speed_m_s: 0.2, count: 30 } as const;

const airOnly: Demonstration = {
  id: 'air-only',
  title: 'Air alone over a film that is about to run',
  question: 'Air dries the film and air drags it along. At which distance does which of them win?',
  caution: 'How hard air drags a film is a rough choice of the model: read the direction only. On real work, wipe a run or leave it.',
  knob: { name: 'distance of the gun, air only', unit: 'mm', quantity: 'length', low: 60, high: 300, step: 10, wrong: 60, cured: 140, said: 'with air alone from #' },
  fault: 'run',
  watch: 'wet-now',
  tells: ['longestRun_m', 'peel_m'],
  job: (distance_mm) => airJob(distance_mm),
  others: [{ id: 'no-air', title: 'Without air', knob: null, job: () => airJob(null) }],
  until_s: 120,
};

/** @param distance_mm of the air; null for none. */
function airJob(distance_mm: number | null): Job {
  return laidByHand(lessonJob({ title: 'air alone over a film' }), (planned, lag_s) => {
    const path = pathWithHabits(planned, lag_s, (stroke) => (stroke === AIR_STROKE ? { stop: { share: 0.5, duration_s: AIR_STOP_S } } : null));
    return distance_mm === null ? path : withAirPasses(path, { ...AIR_LINE, distance_m: distance_mm / 1000 });
  });
}

/** What the mix, the air, the wait and the attitude do wrong, in the order of the lessons. */
export const MIX_LESSONS: readonly Demonstration[] = [far, thin, thick, damp, soon, tilt, airOnly];
