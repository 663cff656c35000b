import { roundedText, shown, shownPercent, type FanFit, type FitIntervals, type UnitSystem } from '../../../sim/index.ts';
import { boundedBy, boundedIn, type BoundedText } from './bounded.ts';

/** One number of a fit. */
export interface FitRow extends BoundedText {
  readonly name: string;
}

/** The numbers of a fit with their 95 % intervals, in the reader's units. @param filmUnit what the film was read in. */
export function fitRows(fit: FanFit, intervals: FitIntervals, filmUnit: string, system: UnitSystem): readonly FitRow[] {
  const { width_m, beta1, taper_m, offset_m, imbalance, fog } = fit;
  return [
    { name: 'Full width', ...boundedIn(width_m, intervals.width, 'length', system) },
    ...(beta1 === null ? [] : [{ name: 'Exponent across', ...boundedBy(beta1, intervals.beta1) }]),
    ...(taper_m === null ? [] : [{ name: 'Tapered edge', ...boundedIn(taper_m, intervals.taper, 'length', system) }]),
    { name: 'Middle of the fan', ...boundedIn(offset_m, intervals.offset, 'length', system) },
    { name: 'Heavier toward larger places', ...boundedBy(imbalance, intervals.imbalance) },
    { name: 'Film everywhere (fog)', ...boundedBy(fog, intervals.fog, filmUnitWords(filmUnit)) },
  ];
}

/** A unit of readings as people write it: the header has letters only. */
export function filmUnitWords(unit: string): string {
  return unit === 'um' ? 'µm' : unit;
}

/** The drawn curve in a sentence. */
export function fitSentence(words: string, { width_m, rms, peak }: FanFit, system: UnitSystem): string {
  return `${words}: ${shown(width_m, 'length', system)} wide; readings lie ${shownPercent(rms / peak)} of its peak from it (root mean square).`;
}

/** A family's place among the others: how far behind the best, and its share of the evidence. */
export function evidenceText({ aicc, behind, weight }: FanFit): { readonly aicc: string; readonly behind: string; readonly weight: string } {
  return { aicc: roundedText(aicc), behind: roundedText(behind), weight: shownPercent(weight) };
}
