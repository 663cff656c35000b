import type { LiquidParts } from '../scheme/amounts.ts';
import type { AmountsAnswer } from '../scheme/amountsAnswer.ts';
import type { Spread } from '../scheme/planned.ts';
import type { TinChoice } from '../scheme/tins.ts';
import { numberCell, textCell } from './csvCell.ts';
import { shownUnit, type UnitSystem } from './units.ts';

/**
 * The tables of a scheme's amounts as one CSV (RFC 4180): products to buy, then liquid and dry weight by coat. One row a line of the
 * tables, `table` first; the reader's units stand in the header. Texts are safe from being read as formulas.
 */
export function amountsCsv(answer: AmountsAnswer, system: UnitSystem): string {
  const [liquid, weight, areal] = [shownUnit('liquid', system), shownUnit('part-weight', system), shownUnit('areal-weight', system)];
  const head = [
    'table', 'name', `amount (${liquid.name})`, `amount low (${liquid.name})`, `amount high (${liquid.name})`, `on the part, wet (${liquid.name})`, `missed, wet (${liquid.name})`,
    `left in pot, wet (${liquid.name})`, 'tins', 'cost', 'currency', `dry weight (${weight.name})`, `dry weight where it lies (${areal.name})`,
  ];
  const ends = ({ value, low, high }: Spread): string[] => [value, low, high].map((each) => numberCell(each / liquid.size));
  const parts = ({ net_m3, missed_m3, left_m3 }: LiquidParts): string[] => [net_m3, missed_m3, left_m3].map(({ value }) => numberCell(value / liquid.size));
  const steps = answer.weight.steps.filter(({ added_kg }) => added_kg.value !== 0);
  const rows = [
    ...answer.purchase.products.map(({ amount, usual, currency }) => [
      'to buy for all coats', textCell(amount.product.name), ...ends(amount.volume_m3), '', '', '', textCell(tinWords(usual)), costCell(usual), textCell(currency ?? ''), '', '',
    ]),
    ...answer.amounts.coats.map(({ step, liquid: part }) => ['mixed liquid by coat', textCell(step.spec.name), ...ends(part.mixed_m3), ...parts(part), '', '', '', '', '']),
    ['mixed liquid of all coats', '', ...ends(answer.amounts.total.mixed_m3), ...parts(answer.amounts.total), '', '', '', '', ''],
    ...steps.map(({ name, added_kg, where_kg_m2 }) => ['dry weight by step', textCell(name), ...Array<string>(9).fill(''), numberCell(added_kg.value / weight.size), numberCell(where_kg_m2.value / areal.size)]),
    ...answer.weight.panels.map(({ name, added_kg, area_m2 }) => ['dry weight by panel', textCell(name), ...Array<string>(9).fill(''), numberCell(added_kg.value / weight.size), numberCell(added_kg.value / area_m2 / areal.size)]),
  ];
  return [head.map(textCell), ...rows].map((cells) => `${cells.join(',')}\r\n`).join('');
}

function tinWords(choice: TinChoice | null): string {
  if (choice === null) return 'no tins stated';
  return choice.tins.map(({ count, size_m3 }) => `${count} x ${Number((size_m3 * 1e6).toFixed(1))} mL`).join('; ');
}

function costCell(choice: TinChoice | null): string {
  return choice === null || choice.cost === null ? 'not known' : numberCell(choice.cost);
}
