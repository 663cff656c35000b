import type { Job, SupplySpec, UnitSystem } from '../../../sim/index.ts';
import { changeJob, closeStep } from '../document.ts';
import { dropDraft, fieldText, keepDraft, typeNumber, type FieldText } from '../fieldText.ts';
import { pointerOf, withValueAt, type JobPath } from '../path.ts';
import { state } from '../state.ts';

type Tin = SupplySpec['tins'][number];

/** Sizes that a new product begins with, mL. Assumed: usual sizes of tins; the US quart and gallon where the reader reads US units. */
const USUAL_SIZES: Readonly<Record<UnitSystem, readonly number[]>> = { metric: [1000, 5000], us: [946.35, 3785.4] };
const LONGEST_CURRENCY = 10;

/** Says in which tins a product is sold: usual sizes without prices, in the currency of the others where they share one. */
export function addSupply(product: string): void {
  const supplies = suppliesOf(state.job.peek());
  const currencies = new Set(supplies.map(({ currency }) => currency));
  const currency = currencies.size === 1 ? supplies[0]?.currency : undefined;
  const added: SupplySpec = { product, tins: USUAL_SIZES[state.units.peek()].map((size_mL) => ({ size_mL })), ...(currency === undefined ? {} : { currency }) };
  change('Say in which tins it is sold', [...supplies, added]);
}

/** Another size of a product: twice its largest. */
export function addTin(supply: number): void {
  changeSupply('Add a size of tin', supply, (each) => ({ ...each, tins: [...each.tins, { size_mL: Math.min(1e6, 2 * Math.max(...each.tins.map(({ size_mL }) => size_mL))) }] }));
}

/** A size is no longer sold; with its last size the product has no tins. */
export function removeTin(supply: number, tin: number): void {
  const supplies = suppliesOf(state.job.peek());
  // Sizes move up when one goes, so that a draft would stand in another's field.
  state.drafts.value = Object.fromEntries(Object.entries(state.drafts.peek()).filter(([pointer]) => !pointer.startsWith('/supplies/')));
  const left = supplies[supply]?.tins.filter((_, i) => i !== tin) ?? [];
  if (left.length === 0) change('Remove a size of tin', supplies.filter((_, i) => i !== supply));
  else changeSupply('Remove a size of tin', supply, (each) => ({ ...each, tins: left }));
}

/** The price of a tin as it stands in its box. */
export function priceText(supply: number, tin: number): FieldText {
  const path = pricePath(supply, tin);
  return fieldText(state.job.value, path, state.units.value, state.drafts.value[pointerOf(path)]);
}

/** Takes a price as typed; an empty box is a price that is not known, which is not a price of 0. */
export function typePrice(supply: number, tin: number, text: string): void {
  const path = pricePath(supply, tin);
  if (text.trim() !== '') {
    typeNumber(path, 'Price of a tin', text);
    return;
  }
  keepDraft(pointerOf(path), { text, problem: null });
  changeSupply('Price of a tin', supply, (each) => ({ ...each, tins: each.tins.map((own, i) => (i === tin ? unpriced(own) : own)) }), pointerOf(path));
}

/** Sets the currency of all prices at once: nothing is exchanged here. */
export function typeCurrency(text: string): void {
  const currency = text.trim().slice(0, LONGEST_CURRENCY);
  const supplies = suppliesOf(state.job.peek()).map(({ product, tins }) => ({ product, tins, ...(currency === '' ? {} : { currency }) }));
  change('Currency', supplies, 'supplies-currency');
}

/** The reader has left a field of a price. */
export function leavePrice(supply: number, tin: number): void {
  closeStep();
  const pointer = pointerOf(pricePath(supply, tin));
  if (state.drafts.peek()[pointer]?.problem === null) dropDraft(pointer);
}

function pricePath(supply: number, tin: number): JobPath {
  return ['supplies', supply, 'tins', tin, 'price'];
}

function unpriced({ size_mL }: Tin): Tin {
  return { size_mL };
}

function suppliesOf({ supplies = [] }: Job): readonly SupplySpec[] {
  return supplies;
}

function change(label: string, supplies: readonly SupplySpec[], key: string | null = null): void {
  changeJob(label, withValueAt(state.job.peek(), ['supplies'], supplies), key);
}

function changeSupply(label: string, supply: number, to: (each: SupplySpec) => SupplySpec, key: string | null = null): void {
  change(label, suppliesOf(state.job.peek()).map((each, i) => (i === supply ? to(each) : each)), key);
}
