import { describe, expect, it } from 'vitest';
import { demoJob, type CardSpec, type SetUpSpec } from '../../../sim/index.ts';
import { EXAMPLE_READINGS } from '../../../src/app/setups/cardReadings.ts';
import { makeCardHandlers } from '../../../src/worker/cardHandlers.ts';
import type { CardReply } from '../../../src/worker/cardMessages.ts';

const setUp = (card?: CardSpec): SetUpSpec => ({ ...(demoJob().setUps[0] as SetUpSpec), ...(card === undefined ? {} : { card }) });
const fitted = async (card?: CardSpec, family: 'gaussian' | null = null): Promise<CardReply> =>
  (await makeCardHandlers().cardFit({ setUp: setUp(card), family, seed: 7 })).reply;

describe('the worker at a test card', () => {
  it('fits the example of the form, a fan about 250 mm wide', async () => {
    const { fit } = await fitted({ readings: EXAMPLE_READINGS });
    if (fit === null || 'problem' in fit) throw new Error('no fit');
    const { chosen, fits, fitted: curve } = fit.answer;
    expect(chosen).toBe(fits.fits[0]);
    expect(Math.abs(chosen.width_m - 0.25)).toBeLessThan(0.025);
    expect(curve).toHaveLength(fits.readings.film.length);
  });

  it('draws the family asked for', async () => {
    const { fit } = await fitted({ readings: EXAMPLE_READINGS }, 'gaussian');
    expect(fit !== null && 'answer' in fit ? fit.answer.chosen.family : null).toBe('gaussian');
  });

  it('can send its answer', async () => {
    const reply = await fitted({ readings: EXAMPLE_READINGS });
    expect(structuredClone(reply)).toEqual(reply);
  });

  it('tells what is wrong with a part and has nothing for one that is not there', async () => {
    expect((await fitted()).fit).toBeNull();
    const { fit } = await fitted({ readings: 'x_mm,film_um\n0,1\n' });
    expect(fit !== null && 'problem' in fit ? fit.problem.text : '').toContain('readings');
  });
});
