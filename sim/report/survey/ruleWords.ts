import { counted } from '../../base/counted.ts';
import type { RuleSpec } from '../../job/schema.ts';
import { spotLimits, USUAL_MAXIMUM } from '../../materials/filmRules.ts';
import { roundedText, type UnitSystem } from '../units.ts';
import { limitWords } from './filmWords.ts';

/** A rule spelled out. */
export interface RuleWords {
  /** `Mean and 80 % rule`. */
  readonly name: string;
  /** Whose it is; rules are borrowed, nothing conforms to a standard by them. */
  readonly borrowed: string;
  /** All that it asks, with its figures, a sentence each. */
  readonly asks: readonly string[];
  /** What it was made for and what it does not say. */
  readonly note: string;
}

type OfKind<K extends RuleSpec['kind']> = Extract<RuleSpec, { readonly kind: K }>;

/** Short name of each kind of rule, for lists. */
export const RULE_NAMES: Readonly<Record<RuleSpec['kind'], string>> = {
  'mean-80': 'Mean and 80 % rule',
  'spots-areas': 'Spots and areas rule',
  'ninety-ten': '90/10 rule',
  shop: 'The shop’s own rule',
};

/** A rule in words, with its source and its parameters. */
export function ruleWords(rule: RuleSpec, system: UnitSystem): RuleWords {
  switch (rule.kind) {
    case 'mean-80':
      return meanEightyWords(rule, system);
    case 'spots-areas':
      return spotsAreasWords(rule, system);
    case 'ninety-ten':
      return ninetyTenWords(rule, system);
    case 'shop':
      return shopWords(rule, system);
  }
}

function film(film_um: number, system: UnitSystem): string {
  return limitWords(film_um * 1e-6, system);
}

function meanEightyWords({ nominal_um, maximum_um, low_percent, share_percent, boundary, correction_um }: OfKind<'mean-80'>, system: UnitSystem): RuleWords {
  const floor = film((nominal_um * low_percent) / 100, system);
  const nominal = film(nominal_um, system);
  const most = film(maximum_um ?? USUAL_MAXIMUM * nominal_um, system);
  return {
    name: RULE_NAMES['mean-80'],
    borrowed: 'Rule borrowed from ISO 19840:2012, section 8, from memory: its text was not read.',
    asks: [
      ...(correction_um === 0 ? [] : [`${film(correction_um, system)} is taken off each gauge reading first, for the rough surface beneath.`]),
      `The mean of all readings is ${nominal} or more (the nominal film).`,
      `No reading is below ${floor} (${roundedText(low_percent)} % of it).`,
      `${boundary === 'strict' ? 'Fewer than' : 'At most'} ${roundedText(share_percent)} % of the readings lie from ${floor} to below ${nominal} (${boundary} boundary).`,
      `No reading is above ${most}${maximum_um === undefined ? ' (three times the nominal film, since no maximum is given)' : ''}.`,
    ],
    note: 'It was written for paint on blasted steel and films from 40 µm (1.6 mil) up; on dope it is borrowed beyond that.',
  };
}

function spotsAreasWords(rule: OfKind<'spots-areas'>, system: UnitSystem): RuleWords {
  const { spotMin_m, spotMax_m, areaMin_m, areaMax_m } = spotLimits(rule);
  const range = (low_m: number, high_m: number | null): string => (high_m === null ? `${limitWords(low_m, system)} or more` : `from ${limitWords(low_m, system)} to ${limitWords(high_m, system)}`);
  return {
    name: RULE_NAMES['spots-areas'],
    borrowed: `Rule borrowed from SSPC-PA 2 (2012 on), restriction level ${rule.level}; read in part, its table of levels from memory.`,
    asks: [
      'The mean of at least three readings within 4 cm (1.5 in) makes a spot; the mean of five spots makes an area.',
      `Every area is ${range(areaMin_m, areaMax_m)}.`,
      `Every spot is ${range(spotMin_m, spotMax_m)}.`,
      'A single reading is held to nothing; one that cannot be repeated is left out by the person at the gauge.',
    ],
    note: 'It was written for paint on steel. Where a spot fails, read on round it in eight directions until two spots in a row conform: what lies within does not.',
  };
}

function ninetyTenWords({ nominal_um, low_percent, share_percent }: OfKind<'ninety-ten'>, system: UnitSystem): RuleWords {
  return {
    name: RULE_NAMES['ninety-ten'],
    borrowed: 'Rule borrowed from IMO resolution MSC.215(82), for ships’ ballast tanks, as quoted by others; here for comparison.',
    asks: [
      `No reading is below ${film((nominal_um * low_percent) / 100, system)} (${roundedText(low_percent)} % of the nominal ${film(nominal_um, system)}).`,
      `At most ${roundedText(share_percent)} % of the readings are below ${film(nominal_um, system)}.`,
    ],
    note: 'It asks nothing of the mean and sets no maximum.',
  };
}

function shopWords({ name, meanMin_um, meanMax_um, eachMin_um, eachMax_um, spread_percent }: OfKind<'shop'>, system: UnitSystem): RuleWords {
  const line = (value: number | undefined, words: (text: string) => string): string[] => (value === undefined ? [] : [words(film(value, system))]);
  const asks = [
    ...line(meanMin_um, (limit) => `The mean of all readings is ${limit} or more.`),
    ...line(meanMax_um, (limit) => `The mean of all readings is ${limit} or less.`),
    ...line(eachMin_um, (limit) => `No reading is below ${limit}.`),
    ...line(eachMax_um, (limit) => `No reading is above ${limit}.`),
    ...(spread_percent === undefined ? [] : [`The standard deviation of the readings is at most ${roundedText(spread_percent)} % of their mean.`]),
  ];
  return {
    name: RULE_NAMES.shop,
    borrowed: `Stated by the shop: ${name}.`,
    asks: asks.length === 0 ? ['It states no limit yet, so it judges nothing.'] : asks,
    note: asks.length === 0 ? 'State one limit at least: of the mean, of each reading, or of their spread.' : `It has ${counted(asks.length, 'limit')}; a figure exactly at a limit is allowed.`,
  };
}
