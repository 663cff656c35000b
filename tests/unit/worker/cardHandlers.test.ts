import { describe, expect, it } from 'vitest';
import { caughtFlow, demoJob, fanFaults, type CardPhoto, type CardSpec, type SetUpSpec } from '../../../sim/index.ts';
import { EXAMPLE_READINGS } from '../../../src/app/setups/cardReadings.ts';
import { photoReadingsText } from '../../../src/app/setups/photoReadings.ts';
import { makeCardHandlers } from '../../../src/worker/cardHandlers.ts';
import type { CardReply, CardRequest, Told } from '../../../src/worker/cardMessages.ts';

const SET_UP = demoJob().setUps[0] as SetUpSpec;
/** 240 mL/min; the demo's set-up states another rate. */
const CAUGHT = { volume_mL: 120, seconds: 30, volumeWithin_mL: 2, secondsWithin_s: 0.5 };
const FOIL = { gain_g: 0.8, gainWithin_g: 0.02, length_mm: 600, strokes: 4, speed_m_s: 0.4, speedWithin_percent: 10 };

async function ask(card?: CardSpec, asked: Partial<CardRequest> = {}): Promise<CardReply> {
  const setUp = { ...SET_UP, ...(card === undefined ? {} : { card }) };
  return (await makeCardHandlers().cardFit({ setUp, mix: null, family: null, spot: null, seed: 7, ...asked })).reply;
}

function answerOf<T>(told: Told<T>): T {
  if (told === null || 'problem' in told) throw new Error(told?.problem.text ?? 'no such part');
  return told.answer;
}

function problemIn(told: Told<unknown>): string {
  return told !== null && 'problem' in told ? told.problem.text : '';
}

describe('the worker at a test card', () => {
  it('fits the example of the form, a fan about 250 mm wide, and can send its answer', async () => {
    const reply = await ask({ readings: EXAMPLE_READINGS });
    const { fit, fitted } = answerOf(reply.fit);
    expect(fit.chosen).toBe(fit.fits[0]);
    expect(Math.abs(fit.chosen.width_m - 0.25)).toBeLessThan(0.025);
    expect(fitted).toHaveLength(fit.readings.film.length);
    expect(structuredClone(reply)).toEqual(reply);
  });

  it('draws and uses the family asked for, or the readings as they are', async () => {
    const bell = await ask({ readings: EXAMPLE_READINGS }, { family: 'gaussian' });
    expect(answerOf(bell.fit).fit.chosen.family).toBe('gaussian');
    expect(answerOf(bell.proved).setUp.fan.profile.family).toBe('gaussian');
    const measured = await ask({ readings: EXAMPLE_READINGS }, { family: 'table' });
    expect(answerOf(measured.proved).setUp.fan.profile.family).toBe('table');
  });

  it('names a fault that only a photograph shows', async () => {
    const spot = { bendFraction: 0.4, widthVariationFraction: null };
    const { fit, faults } = answerOf((await ask({ readings: EXAMPLE_READINGS }, { spot })).fit);
    expect(faults).toEqual(fanFaults(fit, 7, spot));
    expect(faults.map(({ kind }) => kind)).toContain('crescent');
  });

  it('has nothing for parts that are not there', async () => {
    const reply = await ask();
    expect(reply).toMatchObject({ fit: null, caught: null, widths: null, foil: null, comb: null });
    expect(answerOf(reply.proved).changed).toEqual([]);
  });

  it('answers each part where another is wrong, and then proves nothing', async () => {
    const reply = await ask({ readings: 'x_mm,film_um\n0,1\n', caught: CAUGHT, foil: FOIL });
    expect(problemIn(reply.fit)).toContain('readings');
    expect(problemIn(reply.proved)).toBe(problemIn(reply.fit));
    expect(answerOf(reply.caught)).toEqual(caughtFlow(CAUGHT));
    expect(answerOf(reply.foil)).toEqual(answerOf((await ask({ caught: CAUGHT, foil: FOIL })).foil));
  });

  it('takes the foil by the flow that was caught, and puts both in place as one change of the set-up', async () => {
    const stated = answerOf((await ask({ foil: FOIL })).foil);
    const reply = await ask({ caught: CAUGHT, foil: FOIL });
    const found = answerOf(reply.foil);
    // The solids that leave the gun go as the fluid rate: 240 mL/min caught. A percentage is kept to a tenth.
    expect(Math.abs(found.value - (stated.value * SET_UP.fluidRate_mL_min) / 240)).toBeLessThan(0.0011);
    const { setUp, changed } = answerOf(reply.proved);
    expect(SET_UP.fluidRate_mL_min).not.toBe(240);
    expect(setUp.fluidRate_mL_min).toBe(240);
    expect(setUp.transfer.efficiency_percent).toBeCloseTo(100 * found.value, 9);
    expect(new Set(changed.map(({ key }) => key)).size).toBe(changed.length);
  });

  it('holds foil and comb apart: each answers where the other cannot be', async () => {
    const comb = { low_um: 100, high_um: 50, strokes: 1, speed_m_s: 0.4, speedWithin_percent: 10 };
    const reply = await ask({ foil: FOIL, comb });
    expect(problemIn(reply.comb)).toContain('comb');
    expect(answerOf(reply.foil).value).toBeGreaterThan(0);
    expect(problemIn(reply.proved)).toBe(problemIn(reply.comb));
  });

  it('says of one width that a second is wanted, and of two how the fan opens', async () => {
    const widths = [{ distance_mm: 150, width_mm: 190 }, { distance_mm: 250, width_mm: 310 }];
    expect(answerOf((await ask({ widths: widths.slice(0, 1) })).widths)).toBeNull();
    // A line through both: 120 mm in 100 mm.
    expect(answerOf((await ask({ widths })).widths)?.slope.value).toBeCloseTo(1.2, 12);
  });
});

/** Film of a burst whose stroke profile is a parabola, on grey-white paper: 400 × 300 mm at 2 px a mm, darkness by Beer and Lambert. */
function burstPhoto(width_m: number): CardPhoto {
  const [width, height] = [800, 600];
  const rgba = new Uint8ClampedArray(width * height * 4);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const u = (x + 0.5 - width / 2) / 2 / (500 * width_m);
      const v = (y + 0.5 - height / 2) / 2 / 25;
      // Across the short axis (1-v²-u²)^½ sums to a multiple of 1-u².
      const film = Math.sqrt(Math.max(0, 1 - u * u - v * v));
      const light = 0.75 * 10 ** (-0.6 * film);
      const code = light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055;
      rgba.fill(Math.round(255 * code), (y * width + x) * 4, (y * width + x) * 4 + 3);
      rgba[(y * width + x) * 4 + 3] = 255;
    }
  }
  return { width, height, rgba };
}

it('reads a photograph, whose readings the card takes: width as it was drawn', async () => {
  const { reply, transfer } = await makeCardHandlers().cardPhoto({ photo: burstPhoto(0.24), task: { size_m: [0.4, 0.3], kind: 'burst' } });
  expect(transfer).toEqual([reply.map.film.buffer]);
  const { fit } = answerOf((await ask({ readings: photoReadingsText(reply) })).fit);
  // What issue 5 asks of the photo path: width within 2 %.
  expect(Math.abs(fit.chosen.width_m / 0.24 - 1)).toBeLessThan(0.02);
});
