import type { SamplingPlan } from '../../survey/sampling.ts';
import { numberCell, textCell } from '../csvCell.ts';
import { shownUnit, type UnitSystem } from '../units.ts';

/**
 * The places of a sampling plan as CSV (RFC 4180), one row a reading, with an empty column for what the gauge will say: filled
 * in, it is read back as readings. Places in mm or in, film in µm or mil.
 */
export function placesCsv({ places }: SamplingPlan, system: UnitSystem): string {
  const [length, film] = [shownUnit('length', system), system === 'us' ? 'mil' : 'um'];
  const head = ['area', 'spot', `x_${length.name}`, `y_${length.name}`, `dft_${film}`, 'note'].join(',');
  const rows = places.flatMap(({ area, spot, at_m, readings, why }) => {
    const row = [textCell(area), textCell(spot), ...at_m.map((side) => numberCell(Number((side / length.size).toFixed(system === 'us' ? 2 : 0)))), '', textCell(why)].join(',');
    return Array.from({ length: readings }, () => row);
  });
  return [head, ...rows, ''].join('\r\n');
}
