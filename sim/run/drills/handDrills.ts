import { criterionOf } from './criteria.ts';
import type { Drill } from './drill.ts';
import { DRILL_COAT, drillJob } from './drillJob.ts';

const VAPOUR_CAUTION = 'On real work: exhaust on before the gun, no ignition source near, a fitting respirator.';
const STATIC_CAUTION = 'On real work: earth the part and bond the vessels; spraying and wiping charge a dry surface.';
const OVERSPRAY_CAUTION = 'What misses the part is still in the air and on the floor; dried lacquer overspray burns fast.';
const SHEET_CAUTION = 'Distance, pressure and film on real work are those of the product data sheet and the approved process.';

/** Topics of hands-on training that US rules name. */
const EPA_TOPICS = 'US 40 CFR 63.11173(f) names it among the topics of a painter’s training';

const steady: Drill = {
  id: 'square-and-steady',
  title: 'Square and steady',
  task: 'Spray four straight strokes along the lines. Keep the gun 200 mm (8 in) off and square to the board. Let the arm travel and the wrist follow.',
  criterion: criterionOf('At 200 mm (8 in) from the board', ['distance', 'angle']),
  evidence: 'Distance and angle along each stroke, over the time with fluid on.',
  source: `Distance: US FED-STD-141D, method 4331.2, 6 to 8 in for quick-drying liquids; square to the surface: US Air Force TO 1-1-8, 4.4.1.2; ${EPA_TOPICS}. How far off: common practice.`,
  caution: SHEET_CAUTION,
  job: () => drillJob({ title: steady.title, panel_mm: [700, 300], plan: { speed_m_s: 0.3 }, target: { thickness_um: 60 } }),
  coat: DRILL_COAT,
  counts: ['distance', 'angle'],
  watch_s: 0,
  wait_s: 0,
  guides: true,
};

const even: Drill = {
  id: 'even-speed',
  title: 'Even speed',
  task: 'Spray along the lines at 0.36 m/s (14 in/s): two seconds from edge to edge. Neither hurry in the middle nor linger at the ends.',
  criterion: criterionOf('At 0.36 m/s (14 in/s)', ['speed', 'stops']),
  evidence: 'Speed along each stroke, and every place where the gun stood still with fluid on.',
  source: 'Speed as one of the five things a sprayer controls: Metal Finishing guidebook, 2012. About 0.3 m/s, and how far off: common practice.',
  caution: VAPOUR_CAUTION,
  job: () => drillJob({ title: even.title, panel_mm: [700, 400] }),
  coat: DRILL_COAT,
  counts: ['speed', 'stops'],
  watch_s: 0,
  wait_s: 0,
  guides: true,
};

const trigger: Drill = {
  id: 'trigger',
  title: 'Trigger on the move',
  task: 'Move first, then pull, off the board. Let go past the far edge while still moving. Do so on every stroke.',
  criterion: criterionOf('Fluid on and off up to 150 mm (6 in) outside the edge', ['trigger', 'stops']),
  evidence: 'Where fluid came on and went off at each stroke’s ends, and how fast the gun then was.',
  source: 'Moving before the trigger, and letting go before the stop: US NAVAIR 01-1A-509-2, A-8.3. How far outside, and nine ends in ten: Assumed.',
  caution: OVERSPRAY_CAUTION,
  job: () => drillJob({ title: trigger.title, panel_mm: [500, 500] }),
  coat: DRILL_COAT,
  counts: ['trigger', 'stops'],
  watch_s: 0,
  wait_s: 0,
  guides: true,
};

const overlap: Drill = {
  id: 'half-overlap',
  title: 'Half overlap',
  task: 'Aim each stroke at the edge of the one before, so that half the fan lies on it. Keep the strokes straight and level from edge to edge.',
  criterion: criterionOf('With an overlap of 50 %', ['overlap', 'evenness']),
  evidence: 'Overlap of each stroke with the one laid beside it, and the film over the whole board.',
  source: `Half overlap: FAA AC 43.13-1B, 2-20, and US Air Force TO 1-1-8, 4.4.1.2; ${EPA_TOPICS}. How far off, and how even: common practice.`,
  caution: 'Half is right for a good fan. A worn cap asks for another overlap: read it from a test card.',
  job: () => drillJob({ title: overlap.title, panel_mm: [600, 500] }),
  coat: DRILL_COAT,
  counts: ['overlap', 'evenness'],
  watch_s: 0,
  wait_s: 0,
  guides: true,
};

const edges: Drill = {
  id: 'edges-first',
  title: 'Edges first',
  task: 'Band the lower and the upper edge first: one stroke along each, the middle of the fan on the edge. Then fill the field between with half overlap. Open and close 40 mm (1 1/2 in) outside.',
  criterion: criterionOf('With both edges banded and then the field filled', ['coverage', 'evenness', 'trigger', 'paint']),
  evidence: 'Film along both edges and over the field, the trigger points, and what was sprayed beside what was planned. The order shows in the replay; no mark is given for it.',
  source: 'Edge before face: US MIL-HDBK-1110; banding with less lead and lag: US 40 CFR 63.11173(f). The limits: common practice for the film, Assumed for trigger and paint.',
  caution: OVERSPRAY_CAUTION,
  job: () => drillJob({ title: edges.title, panel_mm: [600, 400], plan: { lead_mm: 40, lag_mm: 40 } }),
  coat: DRILL_COAT,
  counts: ['coverage', 'evenness', 'trigger', 'paint'],
  watch_s: 0,
  wait_s: 0,
  guides: true,
};

const whole: Drill = {
  id: 'whole-panel',
  title: 'The whole panel in one pass',
  task: 'Spray the whole board in one pass, from the lower edge up, with half overlap. No lines are shown: the film itself is the guide.',
  criterion: criterionOf('At 200 mm (8 in), 0.36 m/s (14 in/s) and half overlap', ['distance', 'speed', 'overlap', 'trigger', 'coverage', 'evenness']),
  evidence: 'The technique of every stroke, and the film over the whole board beside the planned one.',
  source: 'The five things a sprayer controls: Metal Finishing guidebook, 2012. The limits: common practice; for the trigger Assumed.',
  caution: STATIC_CAUTION,
  job: () => drillJob({ title: whole.title, panel_mm: [700, 500] }),
  coat: DRILL_COAT,
  counts: ['distance', 'speed', 'overlap', 'trigger', 'coverage', 'evenness'],
  watch_s: 120,
  wait_s: 0,
  guides: false,
};

/** What the hand learns on a level board, in rising order. */
export const HAND_DRILLS: readonly Drill[] = [steady, even, trigger, overlap, edges, whole];
