import { describe } from 'vitest';
import { parseQuantity, type QuantityName } from '../../sim/base/units.ts';
import { testPublished, type PublishedRow } from '../helpers/publishedRow.ts';

const NIST = 'NIST Special Publication 811 (A. Thompson and B. N. Taylor, 2008), appendix B.8';

/** A factor printed to seven significant figures. */
function factor(text: string, quantity: QuantityName, expected: number): PublishedRow {
  const lastFigure = 10 ** (Math.floor(Math.log10(expected)) - 6);
  return { source: NIST, quantity: `${text} in SI`, expected, tolerance: 0.5000001 * lastFigure, why: 'half the last of seven printed figures', ours: () => parseQuantity(text, quantity, '') };
}

describe('unit factors against the published table', () => {
  testPublished([
    factor('1 in', 'length', 2.54e-2),
    factor('1 ft', 'length', 3.048e-1),
    factor('1 mil', 'length', 2.54e-5),
    factor('1 ft²', 'area', 9.290304e-2),
    factor('1 in²', 'area', 6.4516e-4),
    factor('1 US gal', 'volume', 3.785412e-3),
    factor('1 US qt', 'volume', 9.463529e-4),
    factor('1 US pt', 'volume', 4.731765e-4),
    factor('1 imp gal', 'volume', 4.54609e-3),
    factor('1 US fl oz', 'volume', 2.957353e-5),
    factor('1 imp fl oz', 'volume', 2.841306e-5),
    factor('1 ft/s', 'speed', 3.048e-1),
    factor('1 ft/min', 'speed', 5.08e-3),
    factor('1 in/s', 'speed', 2.54e-2),
    factor('1 deg', 'angle', 1.745329e-2),
    { source: `${NIST}: t/°C = (t/°F - 32)/1.8`, quantity: '68 °F in K', expected: 293.15, tolerance: 1e-10, why: 'exact, to rounding', ours: () => parseQuantity('68 °F', 'temperature', '') },
  ]);
});
