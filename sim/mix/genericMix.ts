import { checkRange } from '../base/check.ts';
import type { Warning } from '../base/errors.ts';
import { finishById } from '../materials/finishes.ts';
import { thinnerById } from '../materials/thinners.ts';
import { mixedDensity_kg_m3, MOST_THINNER, thinned } from './makeMix.ts';
import type { Mix } from './mix.ts';

/** Solids that round to the unthinned ones are those. */
const SAME = 1e-9;

/**
 * The mix of a coat that names none: clear dope brought to the stated volume solids with the
 * general thinner. Above the solids of the unthinned finish nothing is thinned, the solids are as
 * stated all the same, and a warning says so.
 * @param volumeSolidsFraction of the liquid sprayed, 0.001 to 1.
 * @throws CrosscoatError `range` for solids outside that.
 */
export function genericMix(volumeSolidsFraction: number, pointer = '/setUps'): Mix {
  checkRange({ name: `${pointer}: volume solids`, value: volumeSolidsFraction, low: 0.001, high: 1, advice: 'give the volume solids of what is in the cup, or name a mix', place: { pointer } });
  const finish = finishById('clear-dope');
  const unthinned = finish.volumeSolidsFraction.value;
  const ratio = unthinned / volumeSolidsFraction - 1;
  const name = 'clear dope, general thinner (assumed)';
  // Beyond that the solvents are the thinner's, whatever the ratio.
  const mix = thinned(finish, thinnerById('general').parts, Math.min(MOST_THINNER, Math.max(0, ratio)), 0, pointer);
  const asStated: Mix = {
    ...mix,
    id: 'generic',
    name,
    thinnerRatio: Math.max(0, ratio),
    volumeSolidsFraction,
    density_kg_m3: mixedDensity_kg_m3(finish, mix.solvents, volumeSolidsFraction),
  };
  if (ratio >= -SAME) return asStated;
  const text =
    `The volume solids, ${percent(volumeSolidsFraction)}, are above those of unthinned clear dope, ${percent(unthinned)}, which stands for a coat without a mix: ` +
    'its solvents and viscosity are then a guess; state the mix.';
  const doubt: Warning = { code: 'model-limit', text, place: { pointer } };
  return { ...asStated, warnings: [...mix.warnings, doubt] };
}

function percent(fraction: number): string {
  return `${Number((fraction * 100).toFixed(1))} %`;
}
