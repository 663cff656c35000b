import type { AddedWeight, PublishedBand } from '../scheme/addedWeight.ts';
import type { AmountsAnswer, PanelBalance } from '../scheme/amountsAnswer.ts';
import type { LiquidParts } from '../scheme/amounts.ts';
import type { Labour } from '../scheme/labour.ts';
import type { Spread } from '../scheme/planned.ts';
import type { MissingForCost, ProductPurchase, Purchase, TotalCost } from '../scheme/purchase.ts';
import type { TinChoice } from '../scheme/tins.ts';
import { spanWords } from './clockWords.ts';
import { shownMoment } from './momentWords.ts';
import { spreadWords } from './schemeSections.ts';
import { tinLabel } from './tinLabel.ts';
import { liquidQuantity, shown, shownLiquid, shownNumber, shownPercent, shownTime, shownWeight, weightQuantity, type UnitSystem } from './units.ts';
import { capitalised, listed } from './words.ts';

/** Said wherever the weight of a moving surface is shown. */
export const BALANCE_REMINDER =
  'Check the balance of a moving surface after it is refinished, by its maker’s manual and with what that asks for; this figure is no balance check.';

/** How the band of published weights may be read. */
export const BAND_DOUBT = 'one band from one book, read as quoted; that its figures are of one coat is inferred from its sums. It can show that a plan is not absurd, and no more';

/** What kinds of step are called when their hours are shown. */
export const WORK_WORDS: Readonly<Record<Labour['kinds'][number]['kind'], string>> = {
  brush: 'brushing', spray: 'spraying', fix: 'tapes, patches, rings', sand: 'sanding', mask: 'masking', unmask: 'pulling masks',
};

/** A weight with its ends, all in the unit that fits it. */
export function weightText(weight_kg: Spread, system: UnitSystem): string {
  return spreadWords(weight_kg, weightQuantity(weight_kg.value, system), system);
}

/** A liquid with its ends, all in the unit that fits it. */
export function liquidText(liquid_m3: Spread, system: UnitSystem): string {
  return spreadWords(liquid_m3, liquidQuantity(liquid_m3.value, system), system);
}

/** Tins by the labels that they are sold by: `2 × 1 L and 1 × 5 L`. */
export function tinsText({ tins }: TinChoice, system: UnitSystem): string {
  return tins.length === 0 ? 'none' : listed(tins.map(({ size_m3, count }) => `${count} × ${tinLabel(size_m3, system)}`));
}

/** How the tins of the list are chosen. */
export const TINS_WORKING = [
  'Volumes of finish, thinner and retarder follow from each coat’s mix: 1 part of finish to its thinner, volumes added up.',
  'The same finish, colour, thinner or retarder is one product over all coats.',
  'Where every size of a product has a price, the tins cost the least that holds the amount; else the least is left over.',
  'Exact for the stated sizes; the high end takes all coats to come out high at once.',
].join(' ');

/** A sum of money: `24.50 EUR`; never a 0 in place of one that is not known. */
export function costText(cost: number | null, currency: string | null): string {
  return cost === null ? 'not known' : `${cost.toFixed(2)}${currency === null ? '' : ` ${currency}`}`;
}

/** The first thing that a buyer asks. */
export function buySentence({ products }: Purchase, system: UnitSystem): string {
  if (products.length === 0) return 'Nothing to buy: the scheme has no coat.';
  const stated = products.filter(({ usual }) => usual !== null);
  const others = products.filter(({ usual }) => usual === null);
  const buy = stated.length === 0 ? '' : `Buy ${listed(stated.map((each) => `${tinsText(each.usual as TinChoice, system)} of ${each.amount.product.name}`))}.`;
  const more = stated.flatMap((each) => moreWords(each, system));
  const spare = more.length === 0 ? '' : ` If every coat comes out at its high end: ${listed(more)}.`;
  const open = others.length === 0 ? '' : `${buy === '' ? '' : ' '}No tins are stated for ${listed(others.map(({ amount }) => `${amount.product.name}, of which ${shownLiquid(amount.volume_m3.value, system)} are needed`))}.`;
  return `${buy}${spare}${open}`;
}

function moreWords({ amount, usual, high }: ProductPurchase, system: UnitSystem): string[] {
  if (usual === null || high === null) return [];
  const [before, after] = [tinsText(usual, system), tinsText(high, system)];
  return before === after ? [] : [`${after} of ${amount.product.name}`];
}

/** Wet liquid of all coats together, and where it goes. */
export function liquidSentence({ mixed_m3, net_m3, missed_m3, left_m3 }: LiquidParts, system: UnitSystem): string {
  const part = ({ value }: Spread): string => `${shownLiquid(value, system)} (${shownPercent(value / mixed_m3.value)})`;
  if (!(mixed_m3.value > 0)) return 'No liquid: the scheme lays no coat.';
  return `All coats together take ${liquidText(mixed_m3, system)} of mixed liquid, wet: ${part(net_m3)} stays on the part, ${part(missed_m3)} misses it, ${part(left_m3)} stays in pot, hose and brush.`;
}

/** The cost, or what is missing for it. */
export function costSentence({ cost, high, currency, missing }: TotalCost, system: UnitSystem): string {
  if (cost === null) return `Cost: not known. Missing: ${missing.map((each) => missingText(each, system)).join('; ')}.`;
  const spare = high === null || high === cost ? '' : `; ${costText(high, currency)} for the high end`;
  return `Cost of the tins: ${costText(cost, currency)}${spare}. Tapes, rings, paper and hours are not in it.`;
}

/** What must be stated before a cost is known. */
export function missingText(missing: MissingForCost, system: UnitSystem): string {
  switch (missing.kind) {
    case 'tins':
      return `the tins in which ${missing.product} is sold`;
    case 'price':
      return `the price of ${missing.product}, ${listed(missing.sizes_m3.map((size_m3) => tinLabel(size_m3, system)))}`;
    case 'one-currency':
      return `one currency for all prices; they are in ${missing.currencies.map((name) => (name === '' ? 'no stated one' : name)).join(' and ')}, and nothing is exchanged here`;
    case 'coat':
      return 'a coat; the scheme has none';
  }
}

/** Dry weight in all, on the part and by area, and the coats that hold most. */
export function weightSentence(weight: AddedWeight, system: UnitSystem): string {
  const { total_kg, mean_kg_m2, area_m2, cloth_kg } = weight;
  const cloth = cloth_kg > 0 ? ` With the cloth, ${shownWeight(cloth_kg + total_kg.value, system)}.` : '';
  const head = `The scheme adds ${weightText(total_kg, system)} dry, ${spreadWords(mean_kg_m2, 'areal-weight', system)} over ${shown(area_m2, 'panel-area', system)} of all panels and sides, tapes and patches included.`;
  return `${head}${cloth}`;
}

/** Which coats hold most of the film's weight, two of them. */
export function heaviestSentence({ steps, heaviest, film_kg }: AddedWeight, system: UnitSystem): string {
  const most = heaviest.slice(0, 2).flatMap((i) => steps[i] ?? []);
  if (most.length === 0 || !(film_kg.value > 0)) return 'No coat adds weight.';
  return `Most of the film’s weight is in ${listed(most.map(({ name, added_kg }) => `“${name}” (${shownWeight(added_kg.value, system)}, ${shownPercent(added_kg.value / film_kg.value)})`))}.`;
}

/** The film beside published weights. */
export function bandSentence(weight: AddedWeight, band: PublishedBand, system: UnitSystem): string {
  const film = weight.film_kg.value / weight.area_m2;
  const [low, high] = [weight.film_kg.low / weight.area_m2, weight.film_kg.high / weight.area_m2];
  const stands = film < band.low_kg_m2 ? `below${high > band.low_kg_m2 ? ', though its high end reaches into,' : ''}` : film > band.high_kg_m2 ? `above${low < band.high_kg_m2 ? ', though its low end reaches into,' : ''}` : 'within';
  const range = `${shownNumber(band.low_kg_m2, 'areal-weight', system)} to ${shown(band.high_kg_m2, 'areal-weight', system)}`;
  return `The film alone, without tapes, is ${spreadWords({ value: film, low, high }, 'areal-weight', system)}: ${stands} the ${range} that published weights come to for these ${band.coats} coats, each by the area that it covers (${band.source}). Doubt: ${BAND_DOUBT}.`;
}

/** Where the added weight acts on a moving surface. */
export function balanceSentence({ panel, balance }: PanelBalance, system: UnitSystem): string {
  const { weight_kg, arm_m, moment_kg_m, side } = balance;
  if (side === 'on the line') return `${panel.name}: the ${shownWeight(weight_kg.value, system)} added acts on the hinge line; it has no moment about it.`;
  return `${panel.name}: the ${shownWeight(weight_kg.value, system)} added acts ${shown(Math.abs(arm_m), 'length', system)} to the ${side} of the hinge line, seen from its first point to its second: ${shownMoment(moment_kg_m, system)}.`;
}

/** How the centre was found, and what is left out. */
export function balanceWorking({ mappedCoats, evenCoats }: PanelBalance): string {
  return `Weight times its distance from the hinge line, square to it, in the panel’s plane. ${mappedCoats} sprayed coats lie as their laid film does; ${evenCoats} coats and the tapes are taken to lie evenly, also a coat on a part of the area, as its place is not stated. The part’s own weight, its thickness and curve are left out.`;
}

/** A time at work as the sheet Days writes it: `4 h 56 min`; seconds below two minutes. */
export function workTimeWords(work_s: number): string {
  return work_s < 120 ? shownTime(work_s) : spanWords(work_s / 60);
}

/** Hours at work, and waits apart. */
export function labourSentence({ kinds, work_s, wait_s }: Labour): string {
  const parts = kinds.filter((kind) => kind.work_s > 0).map((kind) => `${WORK_WORDS[kind.kind]} ${workTimeWords(kind.work_s)}`);
  return `${capitalised(workTimeWords(work_s))} at work: ${listed(parts)}. Least waits as stated for 70 °F (21.1 °C) come to ${workTimeWords(wait_s)} one after another, and are no time at work.`;
}

/** What the figures leave out. */
export function amountsLimits({ amounts }: AmountsAnswer, system: UnitSystem): string {
  const { left_m3, leftFraction } = amounts.options;
  return `Assumed for each sprayed coat: ${shownLiquid(left_m3, system)} and ${shownPercent(leftFraction)} of what leaves the gun stay in cup, hose and strainer; of a brushed coat, its stated loss. Low and high ends take all coats to be off the same way at once. Left out: dope that tapes, patches and rings are set in, thinner for washing, coats done again, liquid that spoils.`;
}
