import { beforeEach, describe, expect, it } from 'vitest';
import { demoJob, type SurveySpec } from '../../../../sim/index.ts';
import { coat } from '../../../../src/app/document.ts';
import { state } from '../../../../src/app/state.ts';
import { couponWorking } from '../../../../src/app/survey/couponWorking.ts';
import { figurePointer, setEntry, takeReading, typeFigure } from '../../../../src/app/survey/readingEntry.ts';
import { addPasted, PASTE_POINTER, pasted } from '../../../../src/app/survey/readingFiles.ts';
import { readingRows } from '../../../../src/app/survey/readingRows.ts';
import { nextArea, nextSpot } from '../../../../src/app/survey/spotNames.ts';
import { shownSurvey } from '../../../../src/app/survey/survey.ts';
import { chooseRule, newSurvey } from '../../../../src/app/survey/surveyCommands.ts';
import { USUAL_SURVEY } from '../../../../src/app/survey/surveyPrefs.ts';

function shown(): SurveySpec {
  const survey = shownSurvey.peek();
  if (survey === null) throw new Error('no survey is shown');
  return survey;
}

beforeEach(() => {
  state.job.value = demoJob();
  state.past.value = [];
  state.drafts.value = {};
  state.units.value = 'metric';
  state.survey.value = USUAL_SURVEY;
  newSurvey(coat.peek(), 50);
});

describe('takeReading', () => {
  it('adds what was typed at its place and is ready for the next', () => {
    setEntry({ x_mm: 120, y_mm: 80, area: 'tip' });
    typeFigure('metal', 'dry_um', '2 mil');
    expect(takeReading()).toEqual({ done: true });
    expect(shown().readings).toEqual([{ kind: 'metal', dry_um: 50.8, x_mm: 120, y_mm: 80, area: 'tip' }]);
    expect(state.drafts.peek()).toEqual({});
    expect(state.survey.peek().entry).toMatchObject({ kind: 'metal', area: 'tip', x_mm: null, y_mm: null });
  });

  it('tells the figure that is missing or wrong and loses nothing that was typed', () => {
    setEntry({ kind: 'comb' });
    typeFigure('comb', 'low_um', '75');
    expect(takeReading()).toEqual({ wanting: 'high_um' });
    typeFigure('comb', 'high_um', '50');
    expect(takeReading()).toEqual({ wanting: 'high_um' });
    expect(state.drafts.peek()[figurePointer('comb', 'high_um')]).toMatchObject({ text: '50', problem: expect.stringMatching(/next dry tooth/) as string });
    expect(state.drafts.peek()[figurePointer('comb', 'low_um')]?.text).toBe('75');
    expect(shown().readings).toEqual([]);
  });

  it('leaves the upper tooth out where every tooth was wetted', () => {
    setEntry({ kind: 'comb', allWetted: true });
    typeFigure('comb', 'low_um', '200');
    expect(takeReading()).toEqual({ done: true });
    expect(shown().readings).toEqual([{ kind: 'comb', low_um: 200 }]);
    expect(readingRows(shown().readings, 0, { dryDensity_kg_m3: null, solidsFraction: 0.1 }, 'metric')[0]).toMatchObject({ asRead: 'over 200 µm wet, every tooth wetted', dry: 'over 20 µm' });
  });

  it('numbers spots of three by itself and keeps the place within one', () => {
    chooseRule('spots-areas');
    for (let k = 0; k < 4; k++) {
      if (k === 0) setEntry({ x_mm: 10, y_mm: 20 });
      typeFigure('metal', 'dry_um', String(50 + k));
      takeReading();
    }
    expect(shown().readings.map(({ spot }) => spot)).toEqual(['1', '1', '1', '2']);
    expect(shown().readings.map(({ x_mm }) => x_mm)).toEqual([10, 10, 10, undefined]);
  });

  it('keeps a coupon’s area from one to the next', () => {
    setEntry({ kind: 'coupon' });
    for (const [key, text] of [['before_g', '4.40'], ['after_g', '4.64'], ['area_cm2', '400']] as const) typeFigure('coupon', key, text);
    takeReading();
    expect(Object.keys(state.drafts.peek())).toEqual([figurePointer('coupon', 'area_cm2')]);
    expect(shown().readings).toEqual([{ kind: 'coupon', before_g: 4.4, after_g: 4.64, area_cm2: 400 }]);
  });
});

describe('couponWorking', () => {
  it('gives film and weight per area at once: 0.24 g over 400 cm² is 6 g/m², 5 µm at 1200 kg/m³', () => {
    setEntry({ kind: 'coupon' });
    const survey = { ...shown(), dryDensity_kg_m3: 1200 };
    expect(couponWorking(survey)).toBeNull();
    for (const [key, text] of [['before_g', '4.40'], ['after_g', '4.64'], ['area_cm2', '400']] as const) typeFigure('coupon', key, text);
    const told = couponWorking(survey);
    expect(told?.answer).toBe('5 µm dry film, 6 g/m² dry');
    expect(told?.working).toMatch(/1200 kg\/m³/);
    expect(couponWorking({ ...shown(), coats: [] })?.answer).toBe('6 g/m² dry');
  });
});

describe('pasted readings', () => {
  const paste = (text: string): void => {
    state.drafts.value = { [PASTE_POINTER]: { text, problem: null } };
  };

  it('are said with their number and unit, and added as one step', () => {
    paste('DFT (mil)\n2.0\n2.2\n1.9\n');
    expect(pasted.value).toMatchObject({ said: expect.stringMatching(/^3 readings understood: gauge on metal 3, dry film 48\.3 to 55\.9 µm, in the units of the first line/) as string });
    addPasted();
    expect(shown().readings.map((reading) => (reading.kind === 'metal' ? reading.dry_um : NaN))).toEqual([50.8, 55.88, 48.26].map((um) => expect.closeTo(um, 9) as number));
    expect(state.drafts.peek()).toEqual({});
  });

  it('without a header go by the unit chosen', () => {
    paste('2.0\n2.2\n');
    expect(pasted.value).toMatchObject({ readings: [{ dry_um: 2 }, { dry_um: 2.2 }] });
    state.survey.value = { ...state.survey.peek(), pasteUnit: 'mil' };
    expect(pasted.value).toMatchObject({ said: expect.stringMatching(/read as mil/) as string });
  });

  it('that are bad tell row and column and stay in the box', () => {
    paste('x_mm,y_mm,dft_um\n10,20,50\n10,20,fifty\n');
    expect(pasted.value).toMatchObject({ problem: { place: { row: 3, column: 'dft_um' } } });
    addPasted();
    expect(shown().readings).toEqual([]);
    expect(state.drafts.peek()[PASTE_POINTER]?.text).toMatch(/fifty/);
  });
});

describe('names of spots and areas', () => {
  it('go on from the last, an area by itself', () => {
    expect(nextSpot([], '')).toEqual({ spot: '1', taken: 0, whole: 0 });
    const three = [1, 2, 3].map(() => ({ kind: 'metal', dry_um: 1, area: 'A1', spot: '1' }) as const);
    expect(nextSpot(three, 'A1')).toEqual({ spot: '2', taken: 0, whole: 1 });
    expect(nextSpot(three, 'A2')).toEqual({ spot: '1', taken: 0, whole: 0 });
    expect([nextArea('A1'), nextArea(''), nextArea('fin'), nextArea('9')]).toEqual(['A2', '1', 'fin 2', '10']);
  });
});
