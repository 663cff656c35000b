import { CrosscoatError } from '../../base/errors.ts';
import type { CardSpec } from '../../job/schema.ts';
import { withinRatio, type Measured } from './measured.ts';

/**
 * Fluid rate by a catch cup: volume over time, m³/s. The half intervals of both add in quadrature. Left out: that
 * a gun that sucks its liquid up feeds less with the air off than on.
 * @throws CrosscoatError `range` for a volume or time that is known to no better than itself.
 */
export function caughtFlow({ volume_mL, seconds, volumeWithin_mL, secondsWithin_s }: NonNullable<CardSpec['caught']>): Measured {
  const volume = { value: volume_mL, within: volumeWithin_mL };
  const time = { value: seconds, within: secondsWithin_s };
  for (const [name, { value, within }, unit] of [['volume_mL', volume, 'mL'], ['seconds', time, 's']] as const) {
    if (within < value && value > 0) continue;
    throw new CrosscoatError('range', `catch cup: ${name} = ${value} ${unit} is known within ${within} ${unit} only, which says nothing; catch for longer, or read finer`);
  }
  const rate_m3_s = (volume_mL * 1e-6) / seconds;
  return { value: rate_m3_s, within: rate_m3_s * withinRatio(volume, time) };
}
