import type { Warning } from '../base/errors.ts';
import type { FanFault } from '../gun/card/fanFaults.ts';
import type { FanFit, FanFits, FitIntervals, Interval } from '../gun/card/fanFit.ts';
import type { PhotoSpot } from '../gun/card/photo/cardPhoto.ts';
import { fanFaultSentences } from './fanFaultWords.ts';
import { bulleted, wrapped } from './textLines.ts';
import { textTable } from './textTable.ts';
import { roundedText, shown, shownPercent, type UnitSystem } from './units.ts';
import { capitalised } from './words.ts';

/** A test card, read and fitted. */
export interface ReportedCard {
  readonly fits: FanFits;
  readonly chosen: FanFit;
  readonly intervals: FitIntervals;
  /** Of a photograph only. */
  readonly spot: PhotoSpot | null;
  /** What is wrong with the fan. */
  readonly faults: readonly FanFault[];
  readonly warnings: readonly Warning[];
}

/** What a card shows and what it does not. */
export const CARD_NOTE =
  'Intervals are for readings that scatter alike, of a fan of this family; they say nothing of whether the next card looks the same. Spray and read a second card. ' +
  'Before any burst: exhaust fan on, no ignition source, gun and card earthed, respirator on.';

/** A test card as plain text; lines joined, one newline at the end. */
export function cardText(card: ReportedCard, system: UnitSystem): string {
  const { fits, chosen, faults, warnings, spot } = card;
  const lines = [
    ...wrapped(`${capitalised(chosen.family)} fits ${fits.readings.film.length} readings best${fits.tied.length === 0 ? '' : `; they cannot tell it from ${fits.tied.join(', ')}`}.`),
    '',
    ...textTable([['', 'fitted', '95 % from', 'to'], ...numberRows(card, system)]),
    '',
    ...textTable([['family', 'AICc', 'behind', 'weight'], ...fits.fits.map(({ family, aicc, behind, weight }) => [family, roundedText(aicc), roundedText(behind), shownPercent(weight)])]),
    '',
    ...(spot === null ? [] : [...wrapped(spotSentence(spot, system)), '']),
    ...(faults.length === 0 ? ['No fault of the fan shows.', ''] : [...bulleted('Faults of the fan', faults.flatMap(fanFaultSentences)), '']),
    ...(warnings.length === 0 ? [] : [...bulleted('Warnings', warnings.map(({ text }) => text)), '']),
    ...wrapped(CARD_NOTE),
  ];
  return `${lines.join('\n')}\n`;
}

function numberRows({ chosen, intervals, fits }: ReportedCard, system: UnitSystem): string[][] {
  const { width_m, beta1, taper_m, offset_m, imbalance, fog } = chosen;
  const length = (value: number): string => shown(value, 'length', system);
  const plain = (value: number): string => `${roundedText(value)}${fits.readings.unit === '' ? '' : ` ${fits.readings.unit}`}`;
  const row = (name: string, value: number | null, interval: Interval | null, words: (value: number) => string): string[][] =>
    value === null ? [] : [[name, words(value), interval === null ? '-' : words(interval.low), interval === null ? '-' : words(interval.high)]];
  return [
    ...row('full width', width_m, intervals.width, length),
    ...row('exponent across (beta1)', beta1, intervals.beta1, roundedText),
    ...row('tapered edge', taper_m, intervals.taper, length),
    ...row('middle of the fan', offset_m, intervals.offset, length),
    ...row('heavier toward larger places', imbalance, intervals.imbalance, roundedText),
    ...row('film everywhere (fog)', fog, intervals.fog, plain),
  ];
}

function spotSentence({ width_m, depth_m, angle_rad, bendFraction, widthVariationFraction }: PhotoSpot, system: UnitSystem): string {
  return [
    `On the photograph the fan is ${shown(width_m, 'length', system)} wide`,
    depth_m === null ? '' : ` and ${shown(depth_m, 'length', system)} deep`,
    `, its long axis at ${roundedText((angle_rad * 180) / Math.PI)}° from the card's lower edge`,
    bendFraction === null ? '' : `; its middle line bends by ${shownPercent(Math.abs(bendFraction))} of the depth`,
    widthVariationFraction === null ? '' : `; its width varies along the stroke by ${shownPercent(widthVariationFraction)}`,
    '.',
  ].join('');
}
