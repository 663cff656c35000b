import { describe, expect, it } from 'vitest';
import { backingById, BACKINGS } from '../../../sim/materials/backings.ts';
import { moleFractions, volumeFractions } from '../../../sim/materials/blend.ts';
import { cupById, CUPS } from '../../../sim/materials/cups.ts';
import { finishById, FINISHES } from '../../../sim/materials/finishes.ts';
import { vapourPressure_Pa } from '../../../sim/materials/solvent.ts';
import { solventById, SOLVENTS } from '../../../sim/materials/solvents.ts';
import type { Sourced } from '../../../sim/materials/sourced.ts';
import { thinnerById, THINNERS } from '../../../sim/materials/thinners.ts';
import { BACKING_WORDS } from '../../../sim/job/schema.ts';

function isSourced(value: unknown): value is Sourced {
  return typeof value === 'object' && value !== null && 'source' in value && 'low' in value;
}

describe('the tables', () => {
  const entries = [...SOLVENTS, ...FINISHES, ...BACKINGS];

  it('give each number a range that holds it, and a source', () => {
    const numbers = entries.flatMap((entry) => Object.entries(entry).flatMap(([key, value]) => (isSourced(value) ? [{ of: `${entry.id} ${key}`, value }] : [])));
    expect(numbers.length).toBeGreaterThan(100);
    for (const { of, value } of numbers) {
      expect(value.low, of).toBeLessThanOrEqual(value.value);
      expect(value.high, of).toBeGreaterThanOrEqual(value.value);
      expect(value.source.length, of).toBeGreaterThan(3);
    }
  });

  it('have no id twice', () => {
    for (const table of [SOLVENTS, FINISHES, BACKINGS, CUPS, THINNERS]) expect(new Set(table.map(({ id }) => id)).size).toBe(table.length);
  });

  it.each([
    ['solvent', () => solventById('tolune', { pointer: '/mixes/0/thinner/1/solvent' }), '/mixes/0/thinner/1/solvent: unknown solvent "tolune"; did you mean "toluene"? known are acetone,'],
    ['finish', () => finishById('clear-dop'), 'unknown finish "clear-dop"; did you mean "clear-dope"?'],
    ['cup', () => cupById('ford4'), 'unknown cup "ford4"; did you mean "ford-4"?'],
    ['thinner', () => thinnerById('quick'), 'unknown thinner "quick"; known are fast, general, retarded'],
    ['backing', () => backingById('open-clothes'), 'did you mean "open-cloth"?'],
  ])('name the near word and the known ones for an unknown %s', (_what, ask, message) => {
    expect(ask).toThrow(message);
  });

  it('know each backing that a job may name', () => {
    expect(BACKINGS.map(({ id }) => id)).toEqual([...BACKING_WORDS]);
  });
});

describe('solvents', () => {
  it('evaporate in the order of their vapour pressure, but for the alcohols, which cool more than their pressure says', () => {
    const plain = SOLVENTS.filter(({ id }) => !/ol$|ethanol|alcohol/.test(id));
    const byRate = [...plain].sort((a, b) => a.relativeEvaporation.value - b.relativeEvaporation.value).map(({ id }) => id);
    const byPressure = [...plain].sort((a, b) => vapourPressure_Pa(a, 293.15) - vapourPressure_Pa(b, 293.15)).map(({ id }) => id);
    // MEK and ethyl acetate lie within 4 % in pressure and 8 % in rate.
    expect(byRate.filter((id) => id !== 'mek')).toEqual(byPressure.filter((id) => id !== 'mek'));
  });

  it('have a vapour pressure that rises at every step from 173 K to 333 K and never turns', () => {
    for (const solvent of SOLVENTS) {
      for (let kelvin = 173; kelvin < 333; kelvin++) {
        const [here, next] = [vapourPressure_Pa(solvent, kelvin), vapourPressure_Pa(solvent, kelvin + 1)];
        expect(next, `${solvent.id} at ${kelvin} K`).toBeGreaterThanOrEqual(here);
        expect(Number.isFinite(next)).toBe(true);
      }
      expect(vapourPressure_Pa(solvent, 293.15)).toBeGreaterThan(0);
    }
  });

  it('agree with their latent heat: the slope of ln P within 8 % of Clausius-Clapeyron', () => {
    for (const solvent of SOLVENTS) {
      const slope = (8.314 * Math.log(vapourPressure_Pa(solvent, 303.15) / vapourPressure_Pa(solvent, 293.15))) / (1 / 293.15 - 1 / 303.15);
      // The latent heats come from another table than the Antoine constants, some of which are extrapolated by 30 K.
      expect(Math.abs(slope / solvent.latentHeat_J_mol.value - 1), solvent.id).toBeLessThan(0.08);
    }
  });
});

describe('blends', () => {
  it('turn volumes into moles and back', () => {
    for (const { parts, moles } of THINNERS) {
      const back = volumeFractions(moleFractions(parts));
      for (const [i, { volumeFraction }] of back.entries()) expect(volumeFraction).toBeCloseTo(parts[i]!.volumeFraction, 14);
      for (const [i, { moleFraction }] of moleFractions(parts).entries()) expect(moleFraction).toBeCloseTo(moles[i]!.moleFraction, 14);
    }
  });

  it('are slower from thinner to thinner', () => {
    const speed = THINNERS.map(({ parts }) => parts.reduce((sum, { solvent, volumeFraction }) => sum + volumeFraction * solvent.relativeEvaporation.value, 0));
    expect(speed).toEqual([...speed].sort((a, b) => b - a));
  });
});
