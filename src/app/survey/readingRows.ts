import { filmReadings, shown, shownNumber, shownPlace, shownUnit, type ReadingSpec, type TakenForReadings, type UnitSystem } from '../../../sim/index.ts';
import { typedText, unitOfKey } from '../units.ts';
import { KIND_WORDS } from './readingFigures.ts';

/** Rows of the table shown at once: a survey may hold thousands. */
export const PAGE_ROWS = 100;

/** A reading as a row of the table. */
export interface ReadingRow {
  readonly index: number;
  readonly kind: string;
  /** As read, in the reader's unit, wet or dry said. */
  readonly asRead: string;
  /** The dry film that it says; what is missing where it says none. */
  readonly dry: string;
  readonly place: string;
  readonly group: string;
}

/** The readings of one page in words. @param taken what weights and combs go by. */
export function readingRows(readings: readonly ReadingSpec[], page: number, taken: TakenForReadings, system: UnitSystem): ReadingRow[] {
  const first = page * PAGE_ROWS;
  const count = Math.max(0, Math.min(PAGE_ROWS, readings.length - first));
  return rowsOf(readings, Array.from({ length: count }, (_, k) => first + k), taken, system);
}

/** Some readings in words, by their places in the list. */
export function rowsOf(readings: readonly ReadingSpec[], places: readonly number[], taken: TakenForReadings, system: UnitSystem): ReadingRow[] {
  return places.flatMap((index) => {
    const reading = readings[index];
    return reading === undefined ? [] : [{
      index,
      kind: KIND_WORDS[reading.kind],
      asRead: asRead(reading, system),
      dry: dryWords(reading, taken, system),
      place: reading.x_mm === undefined || reading.y_mm === undefined ? 'not said' : shownPlace([reading.x_mm / 1000, reading.y_mm / 1000], system),
      group: [reading.area === undefined ? null : `area ${reading.area}`, reading.spot === undefined ? null : `spot ${reading.spot}`].filter((part) => part !== null).join(', '),
    }];
  });
}

/** What the gauge, the scale or the comb showed. */
function asRead(reading: ReadingSpec, system: UnitSystem): string {
  const film = (um: number): string => shown(um * 1e-6, 'film', system);
  switch (reading.kind) {
    case 'metal':
      return `${film(reading.dry_um)} dry`;
    case 'coupon':
      return `${reading.before_g} to ${reading.after_g} g, ${typedText(reading.area_cm2, 'area_cm2', system)} ${unitOfKey('area_cm2', system)}`;
    case 'micrometer':
      return `${film(reading.before_um)} to ${film(reading.after_um)}`;
    case 'comb':
      return reading.high_um === undefined ? `over ${film(reading.low_um)} wet, every tooth wetted` : `${shownNumber(reading.low_um * 1e-6, 'film', system)} to ${film(reading.high_um)} wet`;
  }
}

function dryWords(reading: ReadingSpec, taken: TakenForReadings, system: UnitSystem): string {
  if (reading.kind === 'coupon' && taken.dryDensity_kg_m3 === null) return 'density not given';
  if (reading.kind === 'comb' && taken.solidsFraction === null) return 'solids not given';
  const [film] = filmReadings([reading], taken);
  if (film === undefined) return '';
  const { low_m, high_m } = film;
  if (low_m === high_m) return shown(low_m, 'film', system);
  return Number.isFinite(high_m) ? `${shownNumber(low_m, 'film', system)} to ${shown(high_m, 'film', system)}` : `over ${shownNumber(low_m, 'film', system)} ${shownUnit('film', system).name}`;
}
