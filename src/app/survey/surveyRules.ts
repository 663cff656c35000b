import { singleValueRange, type RuleSpec } from '../../../sim/index.ts';

export type RuleKind = RuleSpec['kind'];

/** The rules, in the order in which they are offered. */
export const RULE_KINDS: readonly RuleKind[] = ['mean-80', 'spots-areas', 'ninety-ten', 'shop'];

/** The film that a rule asks for, µm; null where the shop's own names none. */
export function nominalOf(rule: RuleSpec): number | null {
  switch (rule.kind) {
    case 'mean-80':
    case 'ninety-ten':
      return rule.nominal_um;
    case 'spots-areas':
      return rule.max_um === undefined ? rule.min_um : tidy((rule.min_um + rule.max_um) / 2);
    case 'shop':
      return rule.meanMin_um ?? rule.eachMin_um ?? null;
  }
}

/** A rule of another kind that asks for the same film, its other figures the usual ones. */
export function ruleOfKind(kind: RuleKind, from: RuleSpec): RuleSpec {
  if (from.kind === kind) return from;
  const nominal_um = nominalOf(from) ?? 50;
  switch (kind) {
    case 'mean-80':
      return { kind, nominal_um, low_percent: 80, share_percent: 20, boundary: 'strict', correction_um: 0 };
    case 'ninety-ten':
      return { kind, nominal_um, low_percent: 90, share_percent: 10 };
    case 'spots-areas':
      return { kind, min_um: tidy(singleValueRange(nominal_um).min_um), max_um: tidy(singleValueRange(nominal_um).max_um), level: 3 };
    case 'shop':
      return { kind, name: 'Our own rule', meanMin_um: nominal_um };
  }
}

function tidy(value: number): number {
  return Number(value.toPrecision(6));
}
