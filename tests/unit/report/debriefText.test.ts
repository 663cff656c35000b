import { describe, expect, it } from 'vitest';
import { MEASURES, type Measure } from '../../../sim/job/measures.ts';
import { USUAL_RUBRIC } from '../../../sim/job/rubric.ts';
import { chiefSentence, debriefText, markSentence, WHAT_IF_WORDS, whatIfSentence } from '../../../sim/report/debriefText.ts';
import type { ChiefFinding, OtherFilm, ReportedDebrief, ReportedWhatIf } from '../../../sim/report/reportedDebrief.ts';
import { rubricFromSpec, scoreSession, type SessionFigures } from '../../../sim/verdict/score.ts';
import type { Cause, Fault, FaultKind, Zone } from '../../../sim/verdict/verdict.ts';
import { distanceTrace } from '../stroke/handTraces.ts';
import { CAUSE, FAULT, sampleCoats, TARGET, ZONE } from './sampleCoat.ts';

const [SAMPLE] = sampleCoats();
if (SAMPLE === undefined) throw new Error('no coat');
/** A board of 400 × 300 mm, 50 µm meant. */
const COAT = { ...SAMPLE, setting: { ...SAMPLE.setting, target: TARGET } };

const FILM: OtherFilm = {
  film: SAMPLE.laid.film,
  figures: { mean_m: 50e-6, min_m: 40e-6, max_m: 60e-6, cv: 0.08 },
  inTargetFraction: 0.86,
  account: { sprayed_m3: 20e-6, landed_m3: 13e-6, fog_m3: 5e-6, missed_m3: 1e-6, flight_m3: 1e-6 },
  duration_s: 21,
  areas_m2: { 'heavy-spot': 20e-4, run: 5e-4 },
};
const NONE = Object.fromEntries(MEASURES.map((measure) => [measure, null])) as Record<Measure, null>;

interface Parts {
  readonly chief?: ChiefFinding;
  readonly figures?: Partial<SessionFigures>;
  readonly counts?: readonly Measure[];
  readonly strokes?: number;
  readonly strokesAsked?: number;
}

function debriefOf({ chief = { kind: 'met' }, figures = { distance: 0.01 }, counts = ['distance'], strokes = 4, strokesAsked = 4 }: Parts): ReportedDebrief {
  const whole = { ...NONE, ...figures };
  const scored = scoreSession(whole, rubricFromSpec(USUAL_RUBRIC), counts);
  return {
    task: { id: 'own', title: 'Own', coat: 'coat', counts: [...counts], watch_s: 0, wait_s: 0 },
    trainee: 'Trainee A',
    name: 'morning',
    coat: COAT,
    meant: [],
    figures: whole,
    score: { ...scored, isPassed: scored.isPassed && strokes >= strokesAsked },
    chief,
    sprayed: FILM,
    planned: { ...FILM, inTargetFraction: 0.999 },
    strokesAsked,
    traces: Array.from({ length: strokes }, (_, i) => distanceTrace(i, [0])),
  };
}

function faultSentence(cause: Partial<Cause>, { kind = 'heavy-spot', zone = {}, run = null }: { kind?: FaultKind; zone?: Partial<Zone>; run?: Zone | null } = {}, system: 'metric' | 'us' = 'metric'): string {
  const fault: Fault = { ...FAULT, kind, zones: [{ ...ZONE, at_m: [0.38, 0.15], ...zone }], cause: { ...CAUSE, ...cause } };
  return chiefSentence(debriefOf({ chief: { kind: 'fault', fault, run } }), system);
}

const SLOW: Partial<Cause> = { kind: 'speed', strokes: [3, 4, 5, 6, 7, 8], found: 0.18, meant: 0.36, unit: 'm/s' };
const LACK = { kind: 'thin-lap', zone: { worst: 21e-6 } } as const;

describe('the chief sentence of a fault', () => {
  it('has the strokes, the figure, the place and the cost, and when a run began', () => {
    const run: Zone = { ...ZONE, kind: 'run', run: { start_m: [0.38, 0.15], started_s: 41.2, length_m: 0.03 } };
    expect(faultSentence(SLOW, { run })).toBe('Your strokes 4 to 9 slowed to 0.18 m/s (0.36 m/s was meant) at the right edge: 76 % too much film there, over 12.4 cm², and a run began at 41.2 s.');
    expect(faultSentence(SLOW)).toBe('Your strokes 4 to 9 slowed to 0.18 m/s (0.36 m/s was meant) at the right edge: 76 % too much film there, over 12.4 cm².');
  });

  it('reads in the other units', () => {
    expect(faultSentence(SLOW, {}, 'us')).toBe('Your strokes 4 to 9 slowed to 35.4 ft/min (70.9 ft/min was meant) at the right edge: 76 % too much film there, over 1.92 in².');
  });

  it.each([
    [[4], 'Your stroke 5 '],
    [[4, 3], 'Your strokes 4 and 5 '],
    [[5, 3, 4], 'Your strokes 4 to 6 '],
    [[8, 3, 7, 4, 6, 5], 'Your strokes 4 to 9 '],
    [[0, 2, 4], 'Your strokes 1, 3 and 5 '],
    [[0, 1, 2, 4], 'Your strokes 1, 2, 3 and 5 '],
    [[0, 1, 2, 3, 4, 5, 6, 9], 'Your 8 strokes from 1 to 10 '],
  ])('numbers strokes %j as people do', (strokes, words) => {
    expect(faultSentence({ ...SLOW, strokes }).startsWith(words)).toBe(true);
  });

  it.each<readonly [string, Partial<Cause>, Parameters<typeof faultSentence>[1], string]>([
    ['a stop', {}, {}, 'Your stroke 5 stood still for 0.7 s with the fluid on at the right edge: 76 % too much film there, over 12.4 cm².'],
    ['too fast', { kind: 'speed', found: 0.6, meant: 0.36 }, LACK, 'Your stroke 5 sped up to 0.6 m/s (0.36 m/s was meant) at the right edge: only 42 % of the film there, over 12.4 cm².'],
    ['too near', { kind: 'distance', found: 0.12, meant: 0.2 }, {}, 'Your stroke 5 came in to 120 mm (200 mm was meant) at the right edge: 76 % too much film there, over 12.4 cm².'],
    ['too far', { kind: 'distance', found: 0.3, meant: 0.2 }, LACK, 'Your stroke 5 drifted out to 300 mm (200 mm was meant) at the right edge: only 42 % of the film there, over 12.4 cm².'],
    ['an arc', { kind: 'angle', found: Math.PI / 6, meant: 0 }, LACK, 'Your stroke 5 swung to 30° off square at the right edge: only 42 % of the film there, over 12.4 cm².'],
    ['an overlap', { kind: 'overlap', found: 0.2, meant: 0.5 }, LACK, 'Your stroke 5 lapped the one beside by 20 % (50 % was meant) at the right edge: only 42 % of the film there, over 12.4 cm².'],
    ['an overlap that nobody stated', { kind: 'overlap', found: 0.2, meant: NaN }, LACK, 'Your stroke 5 lapped the one beside by 20 % at the right edge: only 42 % of the film there, over 12.4 cm².'],
    ['a trigger inside', { kind: 'trigger', found: -0.08, meant: 0.06 }, LACK, 'Your stroke 5 worked the trigger 80 mm inside the edge at the right edge: only 42 % of the film there, over 12.4 cm².'],
    ['a trigger outside', { kind: 'trigger', found: 0.02, meant: 0.06 }, LACK, 'Your stroke 5 worked the trigger 20 mm outside the edge at the right edge: only 42 % of the film there, over 12.4 cm².'],
    ['an edge', { kind: 'edge' }, { kind: 'holiday', zone: { worst: 0 } }, 'Your stroke 5 left the line along the edge at the right edge: only 0 % of the film there, over 12.4 cm².'],
    ['a stroke left out', { kind: 'missing-stroke', found: 0 }, { kind: 'holiday', zone: { worst: 5e-6 } }, 'Stroke 5 of the plan was not sprayed at the right edge: only 10 % of the film there, over 12.4 cm².'],
    ['strokes broken off', { kind: 'missing-stroke', found: 0.4, strokes: [1, 2] }, LACK, 'Strokes 2 and 3 of the plan were not sprayed all along at the right edge: only 42 % of the film there, over 12.4 cm².'],
    ['dust', { kind: 'distance', found: 0.4, meant: 0.2 }, { kind: 'dry-spray', zone: { worst: 0.25 } }, 'Your stroke 5 drifted out to 400 mm (200 mm was meant) at the right edge: 25 % of the film arrived dry, over 12.4 cm².'],
    ['a run alone', {}, { kind: 'run', zone: { worst: 0.03 } }, 'Your stroke 5 stood still for 0.7 s with the fluid on at the right edge: run over 12.4 cm².'],
  ])('%s', (_, cause, fault, sentence) => {
    expect(faultSentence(cause, fault)).toBe(sentence);
  });
});

describe('the chief sentence where no fault is to blame', () => {
  it('nothing sprayed', () => {
    expect(chiefSentence(debriefOf({ chief: { kind: 'nothing' }, strokes: 0 }), 'metric')).toBe('The trigger was never held for long enough to lay a stroke: there is nothing to judge yet.');
  });

  it('all met', () => {
    expect(chiefSentence(debriefOf({ counts: ['coverage'], figures: { coverage: 0.99 } }), 'metric')).toBe('All that this task asks for is met. 86 % of the panel is inside the limits, >99.9 % as planned.');
    // Of a task about the hand alone the film says nothing.
    expect(chiefSentence(debriefOf({}), 'metric')).toBe('All that this task asks for is met.');
  });

  it.each([[1, 'Only 1 of the 4 strokes that this task asks for was sprayed.'], [3, 'Only 3 of the 4 strokes that this task asks for were sprayed.']])('%i strokes of four', (strokes, words) => {
    const debrief = debriefOf({ strokes });
    expect(chiefSentence(debrief, 'metric')).toBe(words);
    expect(markSentence(debrief, 'metric')).toBe(`100 of 100: not yet. ${words}`);
  });

  it('a rubric that leaves out what is asked for', () => {
    const debrief = debriefOf({});
    expect(chiefSentence({ ...debrief, score: { ...debrief.score, isPassed: false } }, 'metric')).toMatch(/^All that is marked is met, but the rubric leaves out some of what this task asks for\.$/);
  });

  it('a measure, with the stroke that shows it most or without', () => {
    const figures = { distance: 0.031 };
    const row = debriefOf({ figures }).score.rows[0]!;
    const sentence = (stroke: number | null) => chiefSentence(debriefOf({ figures, chief: { kind: 'measure', row, stroke } }), 'metric');
    expect(sentence(3)).toBe('Gun distance first: 31 mm against a limit of 12.5 mm, most in stroke 4 (gun distance off what was meant: root mean square over the time with fluid on).');
    expect(sentence(null)).toMatch(/^Gun distance first: 31 mm against a limit of 12\.5 mm \(gun distance off/);
  });

  it('a measure that nothing shows', () => {
    const row = debriefOf({ figures: {} }).score.rows[3]!;
    expect(chiefSentence(debriefOf({ figures: {}, chief: { kind: 'measure', row, stroke: null } }), 'metric')).toMatch(/^Overlap cannot be judged: nothing that was sprayed shows it \(overlap off what was meant/);
  });
});

describe('the mark', () => {
  it('passed, or what is outside its limits and by how much', () => {
    expect(markSentence(debriefOf({}), 'metric')).toBe('100 of 100: passed.');
    const debrief = debriefOf({ figures: { distance: 0.03125, angle: 0.35, runs: 0.01 }, counts: ['distance', 'angle', 'runs', 'overlap'] });
    // 10 × 0.5 + 10 × (30° - 20.05°) / 20° + 8 × 0.5 + 0, over 38.
    expect(markSentence(debrief, 'metric')).toBe('37 of 100: not yet. Outside the limits: gun distance (31.3 mm, limit 12.5 mm), gun square (20.1°, limit 10°), overlap (not shown, limit 10 %) and runs (1 %, limit 0 %).');
  });

  it('none where what is asked for weighs nothing', () => {
    const debrief = debriefOf({});
    expect(markSentence({ ...debrief, score: { ...debrief.score, total: NaN } }, 'metric')).toBe('no mark: passed.');
  });
});

describe('what if', () => {
  const debrief = debriefOf({});
  const sentence = (over: Partial<OtherFilm>, strokes = 3) => {
    const one: ReportedWhatIf = { habit: 'even-speed', strokes, other: { ...FILM, ...over } };
    return whatIfSentence(one, debrief, 'metric');
  };

  it('has what the habit costs: share inside, evenness, faults that go or come', () => {
    expect(sentence({ inTargetFraction: 0.97, figures: { ...FILM.figures, cv: 0.03 }, areas_m2: { 'heavy-spot': 4e-4, 'thin-lap': 3e-4 } })).toBe(
      'At an even speed, without stops: 97 % of the panel inside the limits in place of 86 %, film varies by 3 % in place of 8 %; heavy spot over 4 cm² in place of 20 cm², no run and thin lap over 3 cm² in place of 0 cm² (this habit costs you film).',
    );
  });

  it('says where it would make hardly a difference, or alone not help', () => {
    expect(sentence({ inTargetFraction: 0.864 })).toBe('At an even speed, without stops: hardly a difference.');
    expect(sentence({ inTargetFraction: 0.864, figures: { ...FILM.figures, cv: 0.03 } })).toMatch(/ in place of 8 % \(hardly a difference\)\.$/);
    expect(sentence({ inTargetFraction: 0.8 })).toMatch(/\(alone it would not help\)\.$/);
    expect(sentence({}, 0)).toBe('At an even speed, without stops: your strokes are so already.');
  });

  it('leaves out a fault that moved by less than a tenth, or a square centimetre', () => {
    expect(sentence({ areas_m2: { 'heavy-spot': 18.2e-4, run: 5.9e-4 } })).not.toMatch(/in place of \d+ cm²/);
    expect(sentence({ areas_m2: { 'heavy-spot': 17.8e-4, run: 6.1e-4 } })).toMatch(/; heavy spot over 17\.8 cm² in place of 20 cm² and run over 6\.1 cm² in place of 5 cm² \(/);
  });
});

describe('a debrief for a terminal', () => {
  const run: ReportedWhatIf = { habit: 'no-arc', strokes: 2, other: FILM };
  const text = debriefText(debriefOf({ figures: { distance: 0.031, coverage: 0.99 }, counts: ['distance', 'coverage'] }), [run], 'metric');

  it('has a row a measure: value, limit, mark, weight, and whether it is met', () => {
    const rows = text.split('\n').map((line) => line.trim().split(/ {2,}/));
    expect(rows).toContainEqual(['Gun distance', '31 mm', '12.5 mm', '51', '10', 'NOT MET']);
    expect(rows).toContainEqual(['Coverage', '99 %', '98 %', '100', '12', 'met']);
    expect(rows).toContainEqual(['Overlap', 'not shown', '10 %', '0', '10', '-']);
    expect(rows.filter((row) => row.length === 6 && ['met', 'NOT MET', '-'].includes(row[5]!))).toHaveLength(MEASURES.length);
  });

  it('has the film beside the planned one, the questions, every stroke, and short lines', () => {
    const rows = text.split('\n').map((line) => line.trim().split(/ {2,}/));
    expect(rows).toContainEqual(['sprayed', '50 µm', '8 %', '86 %', '20 mL', '21 s']);
    expect(rows).toContainEqual(['planned', '50 µm', '8 %', '>99.9 %', '20 mL', '21 s']);
    expect(text.replace(/\s+/g, ' ')).toContain(`What if ${WHAT_IF_WORDS['no-arc']}: hardly a difference.`);
    expect(rows.filter(([first]) => /^\d+$/.test(first ?? ''))).toHaveLength(COAT.strokes.measures.length);
    expect(text.endsWith('\n')).toBe(true);
    expect(debriefText(debriefOf({}), [], 'metric')).not.toContain('What if');
  });
});
