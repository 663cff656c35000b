import type { Warning } from '../../base/errors.ts';
import type { CardSpec, SetUpSpec } from '../../job/schema.ts';
import { makeSetUp } from '../setUpFromSpec.ts';
import type { FanFit, FanFits, FitFamily, FitIntervals } from './fanFit.ts';
import { fanFaults, type FanFault } from './fanFaults.ts';
import { fanOpening, type FanOpening } from './fanOpening.ts';
import type { CardLiquid } from './filmPerStroke.ts';
import { fitFan } from './fitFan.ts';
import { fitIntervals } from './fitIntervals.ts';
import { parseReadings } from './parseReadings.ts';
import { provedChanges } from './provedChanges.ts';
import { withFit, withWidth } from './provedFan.ts';
import { withEfficiency, withFlow, type Proving } from './provedParts.ts';
import type { ProvedNumber } from './provedNumber.ts';

/** How a card is to be read. */
export interface ProveOptions {
  /** Solids of what is in the cup: of the mix, where a mix says it. */
  readonly liquid: CardLiquid;
  /** Which family the set-up takes: the best where not given, 'table' for the readings as they are. */
  readonly family?: FitFamily | 'table';
  /** Of the intervals' draws. */
  readonly seed: number;
}

/** A card's readings, fitted, and the family that the set-up takes. */
export interface ProvedFit extends FanFits {
  readonly chosen: FanFit;
  readonly intervals: FitIntervals;
}

/** What a card makes of a set-up. */
export interface ProvedSetUp {
  /** The set-up with the numbers that the card has proved in place of those stated; the rest is untouched. */
  readonly setUp: SetUpSpec;
  readonly changed: readonly ProvedNumber[];
  /** Null without readings. */
  readonly fit: ProvedFit | null;
  readonly opening: FanOpening | null;
  readonly faults: readonly FanFault[];
  readonly warnings: readonly Warning[];
}

/**
 * Puts what a card has measured in place of what a set-up states, part by part, whichever are there: the catch cup gives the
 * fluid rate; widths at two distances or more the fan's opening and the range in which it is believed; readings the width
 * and profile; widths without readings the width; a foil, or else a comb, the transfer efficiency, by the fluid rate and fan just found.
 * `knownWithin` takes the 95 % half intervals of what was measured and keeps the others. A fan read at one distance is believed
 * from 0.8 to 1.25 of it (assumed).
 *
 * @throws CrosscoatError of the part that is wrong; `makeSetUp`'s where the numbers found do not fit each other.
 */
export function proveSetUp(spec: SetUpSpec, card: CardSpec, options: ProveOptions): ProvedSetUp {
  const distance_m = (card.distance_mm ?? spec.fan.atDistance_mm) / 1000;
  const opening = openingOf(card);
  const fit = card.readings === undefined ? null : fitChosen(card.readings, options);
  const start: Proving = { setUp: spec, within: {}, warnings: [...(opening?.warnings ?? []), ...(fit?.warnings ?? [])] };
  const flowing = withFlow(start, card);
  const opened = fit === null ? withWidth(flowing, card, distance_m, opening) : withFit(flowing, fit, distance_m, opening, options.family === 'table');
  const { setUp, within, warnings } = withEfficiency(opened, card, distance_m, options.liquid);
  makeSetUp(setUp);
  const faults = fit === null ? [] : fanFaults(fit, options.seed);
  return { setUp, changed: provedChanges(spec, setUp, within), fit, opening, faults, warnings };
}

function openingOf({ widths = [], widthWithin_mm }: CardSpec): FanOpening | null {
  if (widths.length < 2) return null;
  const readings = widths.map(({ distance_mm, width_mm }) => ({ distance_m: distance_mm / 1000, width_m: width_mm / 1000 }));
  return fanOpening(readings, widthWithin_mm === undefined ? undefined : widthWithin_mm / 1000);
}

function fitChosen(text: string, { family, seed }: ProveOptions): ProvedFit {
  const fits = fitFan(parseReadings(text));
  const best = fits.fits[0] as FanFit;
  const chosen = fits.fits.find((fit) => fit.family === family) ?? best;
  return { ...fits, chosen, intervals: fitIntervals(fits.readings, chosen.family, seed) };
}
