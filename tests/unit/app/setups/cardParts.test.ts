import { beforeEach, describe, expect, it } from 'vitest';
import { demoJob, parseJob, serialiseJob, type CardSpec } from '../../../../sim/index.ts';
import { closeStep, undo } from '../../../../src/app/document.ts';
import { CAUGHT, clearPart, COMB, isBegun, leavePart, leaveCardNumber, partText, typeCardNumber, typePart, widthRow, withCardValue } from '../../../../src/app/setups/cardParts.ts';
import { state } from '../../../../src/app/state.ts';

beforeEach(() => {
  closeStep();
  state.job.value = demoJob();
  state.past.value = [];
  state.future.value = [];
  state.drafts.value = {};
  state.units.value = 'metric';
});

const card = (): CardSpec | undefined => state.job.value.setUps[0]?.card;
const type = (group: typeof CAUGHT, key: string, text: string): void => typePart(0, group, key, key, text);

describe('a measurement of several numbers', () => {
  it('is on the card as soon as it is whole, with what usually stands in the other boxes', () => {
    type(CAUGHT, 'volume_mL', '90');
    leavePart(0, CAUGHT);
    expect(card()).toBeUndefined();
    expect(partText(0, CAUGHT, 'volume_mL').text).toBe('90');
    expect(isBegun(0, CAUGHT)).toBe(true);
    type(CAUGHT, 'seconds', '30');
    leavePart(0, CAUGHT);
    expect(card()).toEqual({ caught: { volume_mL: 90, seconds: 30, volumeWithin_mL: 2, secondsWithin_s: 0.5 } });
    expect(state.drafts.value).toEqual({});
  });

  it('keeps the last good value while a box is wrong, and says what is wrong', () => {
    type(CAUGHT, 'volume_mL', '90');
    type(CAUGHT, 'seconds', '30');
    type(CAUGHT, 'seconds', 'half a minute');
    leavePart(0, CAUGHT);
    expect(card()?.caught?.seconds).toBe(30);
    expect(partText(0, CAUGHT, 'seconds')).toMatchObject({ text: 'half a minute', problem: expect.stringContaining('half a minute') as string });
  });

  it('is typed in the reader\'s units', () => {
    state.units.value = 'us';
    type(CAUGHT, 'volume_mL', '4');
    type(CAUGHT, 'seconds', '30');
    // A US fluid ounce is 231/128 cubic inches, an inch 25.4 mm, both by definition.
    expect(card()?.caught?.volume_mL).toBeCloseTo(4 * 29.5735295625, 9);
    expect(partText(0, CAUGHT, 'volume_mL').unit).toBe('fl oz US');
  });

  it('makes one step of undo for each box, and a file that opens again', () => {
    type(CAUGHT, 'volume_mL', '90');
    for (const text of ['3', '30']) type(CAUGHT, 'seconds', text);
    leavePart(0, CAUGHT);
    expect(parseJob(serialiseJob(state.job.value)).job.setUps[0]?.card).toEqual(card());
    undo();
    expect(card()).toBeUndefined();
  });

  it('is taken off with what was being typed, and the card with its last part', () => {
    type(CAUGHT, 'volume_mL', '90');
    type(CAUGHT, 'seconds', '30');
    type(COMB, 'low_um', '50');
    clearPart(0, CAUGHT, 'Clear the cup');
    expect('card' in (state.job.value.setUps[0] ?? {})).toBe(false);
    expect(partText(0, COMB, 'low_um').text).toBe('50');
    undo();
    expect(card()?.caught?.volume_mL).toBe(90);
  });
});

describe('rows of widths', () => {
  const row = (at: number, distance: string, width: string): void => {
    type(widthRow(at), 'distance_mm', distance);
    type(widthRow(at), 'width_mm', width);
    leavePart(0, widthRow(at));
  };

  it('are added one by one and move up when one goes', () => {
    row(0, '150', '190');
    row(1, '200', '250');
    row(2, '250', '310');
    clearPart(0, widthRow(1), 'Remove a width');
    expect(card()?.widths).toEqual([{ distance_mm: 150, width_mm: 190 }, { distance_mm: 250, width_mm: 310 }]);
    clearPart(0, widthRow(0), 'Remove a width');
    clearPart(0, widthRow(0), 'Remove a width');
    expect(card()).toBeUndefined();
  });

  it('take what is being typed in a later row with them', () => {
    row(0, '150', '190');
    type(widthRow(1), 'distance_mm', '200');
    clearPart(0, widthRow(0), 'Remove a width');
    expect(partText(0, widthRow(0), 'distance_mm').text).toBe('200');
    type(widthRow(0), 'width_mm', '250');
    expect(card()?.widths).toEqual([{ distance_mm: 200, width_mm: 250 }]);
  });

  it('wait for both numbers', () => {
    type(widthRow(0), 'width_mm', '190');
    leavePart(0, widthRow(0));
    expect(card()).toBeUndefined();
    expect(partText(0, widthRow(0), 'width_mm').text).toBe('190');
  });
});

describe('a number that may be left out', () => {
  it('is left out by an empty box', () => {
    typeCardNumber(0, 'distance_mm', 'Distance', '180');
    leaveCardNumber(0, 'distance_mm');
    expect(card()).toEqual({ distance_mm: 180 });
    typeCardNumber(0, 'distance_mm', 'Distance', ' ');
    leaveCardNumber(0, 'distance_mm');
    expect(card()).toBeUndefined();
    expect(state.drafts.value).toEqual({});
  });
});

it('writes the keys in the file\'s order, whichever came first', () => {
  const job = withCardValue(withCardValue(demoJob(), 0, ['widthWithin_mm'], 5), 0, ['distance_mm'], 200);
  expect(Object.keys(job.setUps[0]?.card ?? {})).toEqual(['distance_mm', 'widthWithin_mm']);
});
