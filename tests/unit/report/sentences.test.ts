import { describe, expect, it } from 'vitest';
import { causeText } from '../../../sim/report/causeText.ts';
import { NO_CURE, NO_CURE_TRIED, changeText, cureText } from '../../../sim/report/cureText.ts';
import { faultSentences, verdictSentence } from '../../../sim/report/sentences.ts';
import type { Cause, Change, FaultKind } from '../../../sim/verdict/verdict.ts';
import { CAUSE, CURE, FAULT, TARGET, ZONE, sampleCoats } from './sampleCoat.ts';

describe('faultSentences', () => {
  it('says what, why and what to do, strokes numbered from 1', () => {
    expect(faultSentences(FAULT, TARGET, 'metric')).toEqual({
      what: 'Heavy spot at x 410, y 620 mm: 88 µm wet, 46.7 % over the upper limit of 60 µm; 12.4 cm².',
      cause: 'Stroke 5 stood still for 0.7 s with the fluid on.',
      cure:
        'With no stop in stroke 5: 46 µm wet there, inside the limits. ' +
        'Heavy spots go from 12.4 cm² to 0 cm² in all, the share of the panel inside the limits from 90 % to 95 %.',
    });
  });

  it('says it in mil and in', () => {
    const { what } = faultSentences(FAULT, TARGET, 'us');
    expect(what).toBe('Heavy spot at x 16.1, y 24.4 in: 3.46 mil wet, 46.7 % over the upper limit of 2.36 mil; 1.92 in².');
  });

  it.each<[FaultKind, number, number, string]>([
    ['holiday', 5e-6, 12.5e-6, 'Holiday at x 410, y 620 mm: 5 µm wet, 60 % under the holiday limit of 12.5 µm; 12.4 cm² in 2 zones.'],
    ['thin-lap', 30e-6, 40e-6, 'Thin lap at x 410, y 620 mm: 30 µm wet, 25 % under the lower limit of 40 µm; 12.4 cm² in 2 zones.'],
    ['dry-spray', 0.34, 0.1, 'Dry spray at x 410, y 620 mm: 34 % arrived dry, the limit is 10 %; 12.4 cm² in 2 zones.'],
    ['run', 0.043, 3e-3, 'Run at x 410, y 620 mm: film that ran 43 mm, the limit is 3 mm; 12.4 cm² in 2 zones.'],
    ['orange-peel', 2.4e-6, 1.2e-6, 'Orange peel at x 410, y 620 mm: ripple of 2.4 µm left, the limit is 1.2 µm; 12.4 cm² in 2 zones.'],
    ['dry-lap', 0.31, 0.2, 'Dry lap at x 410, y 620 mm: 31 % of the coat laid on or under film that had set, the limit is 20 %; 12.4 cm² in 2 zones.'],
    ['blush', -1.2, 0, 'Blush at x 410, y 620 mm: film 1.2 °C below the dew point, water can fall into it below the dew point; 12.4 cm² in 2 zones.'],
    ['blister', 30e-6, 22e-6, 'Blister risk at x 410, y 620 mm: fresh film times the solvent share beneath comes to 30 µm, the limit is 22 µm; 12.4 cm² in 2 zones.'],
    ['pinhole', 4.5, 3, 'Pinhole risk at x 410, y 620 mm: evaporation 4.5 times diffusion as it skinned over, the limit is 3; 12.4 cm² in 2 zones.'],
    ['over-thick', 52e-6, 37e-6, 'Over-thick film at x 410, y 620 mm: 52 µm dry, the limit is 37 µm; 12.4 cm² in 2 zones.'],
  ])('speaks of a %s by its own limit', (kind, worst, limit, what) => {
    const zone = { ...ZONE, kind, worst, limit };
    expect(faultSentences({ ...FAULT, kind, zones: [zone, zone] }, TARGET, 'metric').what).toBe(what);
  });
});

describe('causeText', () => {
  const text = (cause: Partial<Cause>, kind: FaultKind = 'thin-lap') => causeText({ kind, cause: { ...CAUSE, ...cause } }, 'metric');

  it.each<[string, Partial<Cause>, FaultKind]>([
    ['Stroke 5 went too fast here: 0.5 m/s, 0.3 m/s was meant.', { kind: 'speed', found: 0.5, meant: 0.3, unit: 'm/s' }, 'thin-lap'],
    ['Stroke 5 went too slow here: 0.2 m/s, 0.3 m/s was meant.', { kind: 'speed', found: 0.2, meant: 0.3, unit: 'm/s' }, 'heavy-spot'],
    ['The gun was too far off in strokes 4 and 5: 310 mm, 200 mm was meant; that explains about 60 % of it.', { kind: 'distance', strokes: [4, 3], found: 0.31, meant: 0.2, unit: 'm', explains: 0.6 }, 'dry-spray'],
    ['The gun was not square to the panel in stroke 5: 25° off square, 0° was meant.', { kind: 'angle', found: (25 * Math.PI) / 180, meant: 0, unit: 'rad' }, 'thin-lap'],
    ["The lap at stroke 5 is too narrow here: 22 % of the fan's width, 50 % was meant.", { kind: 'overlap', found: 0.22, meant: 0.5, unit: 'fraction' }, 'thin-lap'],
    ["The lap at stroke 5 is too wide here: 70 % of the fan's width, 50 % was meant.", { kind: 'overlap', found: 0.7, meant: 0.5, unit: 'fraction' }, 'heavy-spot'],
    ['The trigger of stroke 5 worked 40 mm inside the edge, 60 mm outside was meant.', { kind: 'trigger', found: -0.04, meant: 0.06, unit: 'm' }, 'thin-lap'],
    ['The edge is not filled by stroke 5: its line runs 40 mm inside it, on the edge was meant.', { kind: 'edge', found: 0.04, meant: 0, unit: 'm' }, 'thin-lap'],
    ['The plan itself: the fluid comes on and goes off 5 mm past the edge; 30 mm does better.', { kind: 'plan-lead', strokes: [], found: 0.005, meant: 0.03, unit: 'm' }, 'thin-lap'],
    ['The plan itself: strokes at 30 % overlap do not lay an even film with this fan; 50 % does better.', { kind: 'plan-overlap', strokes: [], found: 0.3, meant: 0.5, unit: 'fraction' }, 'thin-lap'],
    ["The plan itself: its mean film is not the target's: 88 µm, 50 µm was meant.", { kind: 'plan-film', strokes: [], found: 88e-6, meant: 50e-6, unit: 'm' }, 'heavy-spot'],
    ['The plan itself: a gun at 310 mm lets the drops dry too far; 200 mm does better.', { kind: 'plan-distance', strokes: [], found: 0.31, meant: 0.2, unit: 'm' }, 'dry-spray'],
    ['The gun set-up: no way of moving this fan keeps the film inside the limits.', { kind: 'set-up', strokes: [], found: NaN, meant: NaN, unit: '' }, 'dry-spray'],
    ['No single cause is found; strokes 1, 2 and 3 reach it.', { kind: 'unknown', strokes: [0, 1, 2], found: NaN, meant: NaN, unit: '', explains: 0 }, 'thin-lap'],
    ['No stroke laid film there.', { kind: 'unknown', strokes: [], found: NaN, meant: NaN, unit: '', explains: 0 }, 'holiday'],
    ['No cause was sought: worse zones went before it.', { kind: 'unknown', strokes: [], found: NaN, meant: NaN, unit: '', explains: NaN }, 'thin-lap'],
    ['Stroke 3 of the plan was not sprayed.', { kind: 'missing-stroke', strokes: [2], found: 0, meant: 1, unit: 'fraction' }, 'holiday'],
    ['Strokes 3 and 4 of the plan were not sprayed all along.', { kind: 'missing-stroke', strokes: [3, 2], found: 0.6, meant: 1, unit: 'fraction' }, 'holiday'],
    ['The edge is not filled by stroke 5: its line runs 140 mm inside it, 100 mm inside it was meant.', { kind: 'edge', found: 0.14, meant: 0.1, unit: 'm' }, 'thin-lap'],
    ['The plan itself: the edge is not filled, its first line runs 100 mm inside it; on the edge does better.', { kind: 'plan-edge', strokes: [], found: 0.1, meant: 0, unit: 'm' }, 'thin-lap'],
    ['The plan itself: at 0.2 m/s it lays more than this film can bear; 0.3 m/s does better.', { kind: 'plan-speed', strokes: [], found: 0.2, meant: 0.3, unit: 'm/s' }, 'run'],
    ['More liquid leaves the gun than this film can hold; 180 mL/min does better.', { kind: 'fluid', strokes: [], found: 4e-6, meant: 3e-6, unit: 'm3/s' }, 'run'],
    ['The mix is thinned too much: 0.33 of thinner to one of finish; 0.2 does better.', { kind: 'thinner', strokes: [], found: 0.33, meant: 0.2, unit: 'ratio' }, 'run'],
    ['The thinner leaves too fast; with 10 % of it retarder it does not.', { kind: 'solvent', strokes: [], found: 0, meant: 0.1, unit: 'fraction' }, 'blush'],
    ['The air of the room, at 17.0 °C; 25.0 °C does better.', { kind: 'air', strokes: [], found: 290.15, meant: 298.15, unit: 'K' }, 'blush'],
    ['The coat beneath had stood for only 10 min; 40 min does better.', { kind: 'wait', strokes: [], found: 600, meant: 2400, unit: 's' }, 'blister'],
  ])('%s', (expected, cause, kind) => {
    expect(text(cause, kind)).toBe(expected);
  });

  it('leaves out figures that there are not', () => {
    expect(text({ found: NaN, meant: NaN })).toBe('Stroke 5 stood still with the fluid on.');
    expect(text({ kind: 'trigger', found: NaN, unit: 'm', meant: NaN })).toBe('The trigger of stroke 5 worked too late or too early at the edge.');
    expect(text({ kind: 'speed', found: NaN, meant: 0.3, unit: 'm/s' })).toBe('Stroke 5 went unevenly here: 0.3 m/s was meant.');
    expect(text({ kind: 'distance', found: NaN, meant: NaN, unit: 'm' })).toBe('The gun was at the wrong distance in stroke 5.');
  });

  it('counts many strokes instead of listing them', () => {
    const strokes = Array.from({ length: 21 }, (_, i) => i);
    expect(text({ kind: 'unknown', strokes, found: NaN, meant: NaN, unit: '', explains: 0 })).toContain('21 strokes from 1 to 21');
  });
});

describe('cureText', () => {
  it('says so where none is known', () => {
    expect(cureText({ ...FAULT, cure: null }, TARGET, 'metric')).toBe(NO_CURE);
    const unknown = { ...FAULT.cause, kind: 'unknown' as const };
    expect(cureText({ ...FAULT, cause: unknown, cure: null }, TARGET, 'metric')).toBe(NO_CURE_TRIED);
  });

  it('does not call a film inside the limits that is only no longer this fault', () => {
    expect(cureText({ ...FAULT, cure: { ...CURE, worst: 62e-6 } }, TARGET, 'metric')).toContain('62 µm wet there, still past the limit of 60 µm wet');
    expect(cureText({ ...FAULT, cure: { ...CURE, worst: 30e-6 } }, TARGET, 'metric')).toContain('30 µm wet there, but under the lower limit of 40 µm wet');
  });

  it.each<[FaultKind, number, number, number, string]>([
    ['run', 0.043, 3e-3, 2e-3, 'film that ran 2 mm there, inside the limits'],
    ['run', 0.043, 3e-3, 0.02, 'film that ran 20 mm there, still past the limit'],
    // The one fault whose figure is to be above its limit.
    ['blush', -1.2, 0, 0.5, 'film 0.5 °C above the dew point there, inside the limits'],
    ['blush', -1.2, 0, -0.5, 'film 0.5 °C below the dew point there, so still at fault'],
  ])('judges a %s of the film’s life by its own limit', (kind, worst, limit, cured, outcome) => {
    const fault = { ...FAULT, kind, zones: [{ ...ZONE, kind, worst, limit }], cure: { ...CURE, worst: cured } };
    expect(cureText(fault, TARGET, 'metric')).toContain(outcome);
  });

  it('names what it makes worse', () => {
    expect(cureText({ ...FAULT, cure: { ...CURE, worsens: ['thin-lap', 'holiday'] } }, TARGET, 'metric')).toContain('It makes thin laps and holidays worse.');
  });

  it.each<[string, Change]>([
    ['at an even 0.34 m/s in stroke 1', { kind: 'even-speed', strokes: [0], speed_m_s: 0.34 }],
    ['with the gun held at 200 mm in stroke 1', { kind: 'even-distance', strokes: [0], distance_m: 0.2 }],
    ['with the gun square to the panel in stroke 1', { kind: 'square-gun', strokes: [0] }],
    ['with 50 % overlap at strokes 1 and 2', { kind: 'move-strokes', strokes: [0, 1], overlapFraction: 0.5 }],
    ['with stroke 1 on its planned line', { kind: 'move-strokes', strokes: [0], overlapFraction: 0.5, anchored: [0] }],
    ['with stroke 1 on its planned line and 50 % overlap at strokes 2 and 3', { kind: 'move-strokes', strokes: [0, 1, 2], overlapFraction: 0.5, anchored: [0] }],
    ['with stroke 3 of the plan sprayed', { kind: 'add-strokes', strokes: [2] }],
    ['with the fluid on and off 60 mm past the edge in stroke 1', { kind: 'trigger-past-edge', strokes: [0], lead_m: 0.06 }],
    ['with the plan at 50 % overlap, 0.42 m/s, 200 mm distance, the first stroke 10 mm in from the edge and the fluid on and off 30 mm past the edge',
      { kind: 'plan', overlapFraction: 0.5, speed_m_s: 0.42, distance_m: 0.2, firstStroke_m: 0.01, lead_m: 0.03 }],
    ['with the plan at the first stroke on the edge', { kind: 'plan', firstStroke_m: 0 }],
    ['with the plan at the first stroke 10 mm outside the edge', { kind: 'plan', firstStroke_m: -0.01 }],
    ['with the fluid set to 180 mL/min', { kind: 'fluid-rate', rate_m3_s: 3e-6 }],
    ['with 0.5 of thinner to one of finish', { kind: 'thinner', thinnerPerFinish: 0.5 }],
    ['with retarder as 10 % of the thinner', { kind: 'retarder', retarderFraction: 0.1 }],
    ['in the same air warmed to 25.0 °C', { kind: 'warm-room', temperature_K: 298.15 }],
    ['after a wait of 40 min', { kind: 'wait', wait_s: 2400 }],
  ])('%s', (expected, change) => {
    expect(changeText(change, 'metric')).toBe(expected);
  });
});

describe('verdictSentence', () => {
  const [coat] = sampleCoats();
  if (coat === undefined) throw new Error('the sample job has a coat');

  it('gives the share inside the limits, the count of zones and the worst', () => {
    expect(verdictSentence(coat, 'metric')).toMatch(/^[\d.]+ % of the panel is inside the limits, [\d.]+ µm wet on average against a target of 24 µm; \d+ (thin laps?|heavy spots?) and \d+ (thin laps?|heavy spots?)\. Worst: (thin lap|heavy spot) at x .* µm wet\.$/);
  });

  it('says that there is no fault, and that there is no film', () => {
    const good = { ...coat, verdict: { ...coat.verdict, faults: [], inTargetFraction: 1 } };
    expect(verdictSentence(good, 'metric')).toMatch(/^No fault: 100 % of the panel is inside the limits, /);
    expect(verdictSentence({ ...good, strokes: { ...good.strokes, measures: [] } }, 'metric')).toContain('No stroke was sprayed');
  });
});
