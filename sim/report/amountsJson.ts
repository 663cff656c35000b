import type { LiquidParts } from '../scheme/amounts.ts';
import type { AmountsAnswer, PanelBalance } from '../scheme/amountsAnswer.ts';
import type { PanelWeight, StepWeight } from '../scheme/addedWeight.ts';
import type { Spread } from '../scheme/planned.ts';
import type { ProductPurchase } from '../scheme/purchase.ts';
import type { TinChoice } from '../scheme/tins.ts';
import { amountsLimits, BALANCE_REMINDER, BAND_DOUBT, missingText } from './amountsWords.ts';
import { ESTIMATE_STATEMENT } from './cautions.ts';
import { jsonNumber, type JsonValue } from './jsonValue.ts';
import { RESULT_VERSION, warningJson } from './reportJson.ts';
import { MOMENT_UNITS } from './momentWords.ts';
import { shownUnit, type Quantity } from './units.ts';

type JsonRecord = { readonly [key: string]: JsonValue };

/** Quantities in JSON: by the names of their units in keys, metric then US. */
const KEYS = {
  liquid: ['L', 'USgal'],
  'part-weight': ['kg', 'lb'],
  'areal-weight': ['g_m2', 'oz_yd2'],
  'panel-area': ['m2', 'ft2'],
  length: ['mm', 'in'],
} as const satisfies Partial<Record<Quantity, readonly [metric: string, us: string]>>;
type JsonQuantity = keyof typeof KEYS;

/** Quantities, weight, time and money of a scheme as one JSON object, each figure in both unit systems; a spread is value, low, high. */
export function amountsJson(answer: AmountsAnswer): JsonRecord {
  const { plan, amounts, purchase, weight, band, balances, labour, doubts } = answer;
  return {
    schemaVersion: RESULT_VERSION,
    estimate: ESTIMATE_STATEMENT,
    limits: amountsLimits(answer, 'metric'),
    scheme: plan.scheme.id,
    schemeName: plan.scheme.name,
    ...plain('area', weight.area_m2, 'panel-area'),
    products: purchase.products.map(productJson),
    cost: purchase.total.cost,
    costHigh: purchase.total.high,
    currency: purchase.total.currency,
    costMissing: purchase.total.missing.map((each) => missingText(each, 'metric')),
    liquidWet: { ...liquidJson(amounts.total), coats: amounts.coats.map(({ step, liquid, paste_kg }) => ({ step: step.spec.id, name: step.spec.name, ...liquidJson(liquid), paste_g: jsonNumber(paste_kg.value, 1e-3) })) },
    paste_g: jsonNumber(amounts.paste_kg.value, 1e-3),
    weightDry: {
      ...spread('added', weight.total_kg, 'part-weight'),
      ...spread('film', weight.film_kg, 'part-weight'),
      ...spread('mean', weight.mean_kg_m2, 'areal-weight'),
      ...(weight.cloth_kg_m2 === null ? {} : plain('cloth', weight.cloth_kg, 'part-weight')),
      steps: weight.steps.map(stepJson),
      panels: weight.panels.map(panelJson),
      heaviestSteps: weight.heaviest.map((i) => weight.steps[i]?.stepId ?? null),
    },
    publishedBand: band === null ? null : { ...plain('low', band.low_kg_m2, 'areal-weight'), ...plain('high', band.high_kg_m2, 'areal-weight'), coats: band.coats, source: band.source, doubt: BAND_DOUBT },
    balance: balances?.map(balanceJson) ?? null,
    balanceReminder: BALANCE_REMINDER,
    labour: {
      work_h: jsonNumber(labour.work_s, 3600),
      waits_h: jsonNumber(labour.wait_s, 3600),
      kinds: labour.kinds.map(({ kind, steps, stated, work_s }) => ({ kind, steps, stated, work_h: jsonNumber(work_s, 3600) })),
    },
    warnings: doubts.map(warningJson),
  };
}

/** `name_L` and `name_USgal`. */
function plain(name: string, value: number, quantity: JsonQuantity): JsonRecord {
  const [metric, us] = KEYS[quantity];
  return { [`${name}_${metric}`]: jsonNumber(value, shownUnit(quantity, 'metric').size), [`${name}_${us}`]: jsonNumber(value, shownUnit(quantity, 'us').size) };
}

/** The same, each with its ends. */
function spread(name: string, { value, low, high }: Spread, quantity: JsonQuantity): JsonRecord {
  const in_ = (size: number): JsonRecord => ({ value: jsonNumber(value, size), low: jsonNumber(low, size), high: jsonNumber(high, size) });
  const [metric, us] = KEYS[quantity];
  return { [`${name}_${metric}`]: in_(shownUnit(quantity, 'metric').size), [`${name}_${us}`]: in_(shownUnit(quantity, 'us').size) };
}

function liquidJson({ mixed_m3, net_m3, missed_m3, left_m3 }: LiquidParts): JsonRecord {
  return { ...spread('mixed', mixed_m3, 'liquid'), ...spread('onPart', net_m3, 'liquid'), ...spread('missed', missed_m3, 'liquid'), ...spread('left', left_m3, 'liquid') };
}

function productJson({ amount, usual, high, currency, missing }: ProductPurchase): JsonRecord {
  return {
    product: amount.product.supply,
    key: amount.product.key,
    name: amount.product.name,
    steps: amount.steps,
    ...spread('needed', amount.volume_m3, 'liquid'),
    tins: usual === null ? null : tinsJson(usual),
    tinsHigh: high === null ? null : tinsJson(high),
    currency,
    missing: missing.map((each) => missingText(each, 'metric')),
  };
}

function tinsJson({ tins, over_m3, cost, rule }: TinChoice): JsonRecord {
  return { rule, tins: tins.map(({ size_m3, price, count }) => ({ size_mL: jsonNumber(size_m3, 1e-6), price, count })), ...plain('over', over_m3, 'liquid'), cost };
}

function stepJson({ stepId, name, kind, added_kg, where_kg_m2 }: StepWeight): JsonRecord {
  return { step: stepId, name, kind, ...spread('added', added_kg, 'part-weight'), ...spread('where', where_kg_m2, 'areal-weight') };
}

function panelJson({ panelId, name, area_m2, added_kg, cloth_kg }: PanelWeight): JsonRecord {
  return { panel: panelId, name, ...plain('area', area_m2, 'panel-area'), ...spread('added', added_kg, 'part-weight'), ...plain('cloth', cloth_kg, 'part-weight') };
}

function balanceJson({ panel, balance, mappedCoats, evenCoats }: PanelBalance): JsonRecord {
  const { weight_kg, centre_m, arm_m, moment_kg_m, side } = balance;
  const moment = (unit: keyof typeof MOMENT_UNITS): JsonRecord => ({ value: jsonNumber(moment_kg_m.value, MOMENT_UNITS[unit]), low: jsonNumber(moment_kg_m.low, MOMENT_UNITS[unit]), high: jsonNumber(moment_kg_m.high, MOMENT_UNITS[unit]) });
  return {
    panel: panel.id,
    name: panel.name,
    ...spread('added', weight_kg, 'part-weight'),
    centre_mm: [jsonNumber(centre_m[0], 1e-3), jsonNumber(centre_m[1], 1e-3)],
    ...plain('arm', arm_m, 'length'),
    side,
    moment_g_mm: moment('g_mm'),
    moment_in_lb: moment('in_lb'),
    moment_N_m: moment('N_m'),
    mappedCoats,
    evenCoats,
  };
}
