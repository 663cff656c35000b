import type { AmountsAnswer } from '../scheme/amountsAnswer.ts';
import {
  amountsLimits, BALANCE_REMINDER, balanceSentence, balanceWorking, bandSentence, buySentence, costSentence, costText, heaviestSentence, labourSentence,
  liquidSentence, liquidText, tinsText, weightSentence, weightText,
} from './amountsWords.ts';
import { ESTIMATE_STATEMENT } from './cautions.ts';
import { spreadWords } from './schemeSections.ts';
import { bulleted, wrapped } from './textLines.ts';
import { textTable } from './textTable.ts';
import { shown, shownLiquid, shownWeight, type UnitSystem } from './units.ts';

/** Quantities, weight, time and money of a scheme as plain text; lines joined, one newline at the end. */
export function amountsText(answer: AmountsAnswer, system: UnitSystem): string {
  const { plan, purchase, amounts, weight, band, labour, doubts } = answer;
  const lines = [
    ...wrapped(`${plan.scheme.name}: what to buy, what it weighs, how long it takes`),
    '',
    ...wrapped(buySentence(purchase, system)),
    ...wrapped(costSentence(purchase.total, system)),
    '',
    ...purchaseTable(answer, system),
    '',
    ...wrapped(liquidSentence(amounts.total, system)),
    '',
    ...liquidTable(answer, system),
    ...pasteLines(answer, system),
    '',
    ...wrapped(weightSentence(weight, system)),
    ...wrapped(heaviestSentence(weight, system)),
    ...(band === null ? [] : wrapped(bandSentence(weight, band, system))),
    '',
    ...weightTable(answer, system),
    '',
    ...panelTable(answer, system),
    '',
    ...balanceLines(answer, system),
    ...wrapped(labourSentence(labour)),
    '',
    ...(doubts.length === 0 ? [] : [...bulleted('Doubts', doubts.map(({ text }) => text)), '']),
    ...wrapped(amountsLimits(answer, system)),
    ...wrapped(ESTIMATE_STATEMENT),
  ];
  return `${lines.join('\n')}\n`;
}

function purchaseTable({ purchase }: AmountsAnswer, system: UnitSystem): string[] {
  const rows = purchase.products.map(({ amount, usual, high, currency }) => [
    amount.product.name,
    liquidText(amount.volume_m3, system),
    usual === null ? 'not stated' : tinsText(usual, system),
    high === null ? '' : tinsText(high, system),
    usual === null ? '' : shownLiquid(usual.over_m3, system),
    usual === null ? 'not known' : costText(usual.cost, currency),
  ]);
  return textTable([['to buy for all coats', 'needed', 'tins', 'for the high end', 'left over', 'cost'], ...rows]);
}

function liquidTable({ amounts }: AmountsAnswer, system: UnitSystem): string[] {
  const row = (name: string, { mixed_m3, net_m3, missed_m3, left_m3 }: typeof amounts.total) => [name, ...[mixed_m3, net_m3, missed_m3, left_m3].map(({ value }) => shownLiquid(value, system))];
  return textTable([
    ['mixed liquid, wet', 'to mix', 'on the part', 'missed', 'left in pot'],
    ...amounts.coats.map(({ step, liquid }) => row(step.spec.name, liquid)),
    row('all coats', amounts.total),
  ]);
}

function pasteLines({ amounts }: AmountsAnswer, system: UnitSystem): string[] {
  return amounts.paste_kg.value > 0 ? wrapped(`Aluminium paste for all coats: ${weightText(amounts.paste_kg, system)}.`) : [];
}

function weightTable({ weight }: AmountsAnswer, system: UnitSystem): string[] {
  const changing = weight.steps.filter(({ added_kg }) => added_kg.value !== 0);
  return textTable([
    ['dry weight by step', 'where it lies', 'on all panels'],
    ...changing.map(({ name, where_kg_m2, added_kg }) => [name, spreadWords(where_kg_m2, 'areal-weight', system), shownWeight(added_kg.value, system)]),
    ['all', spreadWords(weight.mean_kg_m2, 'areal-weight', system), weightText(weight.total_kg, system)],
  ]);
}

function panelTable({ weight }: AmountsAnswer, system: UnitSystem): string[] {
  const withCloth = weight.cloth_kg_m2 !== null;
  return textTable([
    ['dry weight by panel', 'area, all sides', 'added', ...(withCloth ? ['cloth'] : [])],
    ...weight.panels.map(({ name, area_m2, added_kg, cloth_kg }) => [name, shown(area_m2, 'panel-area', system), weightText(added_kg, system), ...(withCloth ? [shownWeight(cloth_kg, system)] : [])]),
  ]);
}

function balanceLines({ balances }: AmountsAnswer, system: UnitSystem): string[] {
  if (balances === null || balances.length === 0) return [];
  return [...balances.flatMap((each) => [...wrapped(balanceSentence(each, system)), ...wrapped(balanceWorking(each))]), ...wrapped(BALANCE_REMINDER), ''];
}
