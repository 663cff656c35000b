import { checkRule, CrosscoatError, singleValueRange, type RuleInput, type RuleSpec } from '../../sim/index.ts';
import { wholeNumber, type TypedQuantity } from './optionValues.ts';
import { statedQuantity } from './surveyQuantity.ts';

/** Names of the rules on the command line, and the kind that each is. */
export const RULE_CHOICES = {
  iso19840: 'mean-80',
  'iso19840-lenient': 'mean-80',
  pa2: 'spots-areas',
  '90-10': 'ninety-ten',
  shop: 'shop',
} as const satisfies Readonly<Record<string, RuleSpec['kind']>>;

/** Options that make a rule, as commander gives them. */
export interface RuleOptions {
  readonly rule?: keyof typeof RULE_CHOICES;
  readonly nominal?: string;
  readonly min?: string;
  readonly max?: string;
  readonly level?: string;
  readonly low?: string;
  readonly share?: string;
  readonly correction?: string;
  readonly meanMin?: string;
  readonly meanMax?: string;
  readonly spread?: string;
}

type Key = Exclude<keyof RuleOptions, 'rule'>;

/** Which options each rule takes. */
const TAKES: Readonly<Record<RuleSpec['kind'], readonly Key[]>> = {
  'mean-80': ['nominal', 'max', 'low', 'share', 'correction'],
  'spots-areas': ['min', 'max', 'nominal', 'level'],
  'ninety-ten': ['nominal', 'low', 'share'],
  shop: ['min', 'max', 'meanMin', 'meanMax', 'spread'],
};
const KEYS: readonly Key[] = ['nominal', 'min', 'max', 'level', 'low', 'share', 'correction', 'meanMin', 'meanMax', 'spread'];
const FILM: TypedQuantity = ['length', 'µm', '100um or 4mil'];
const SHARE: TypedQuantity = ['ratio', '%', '20%'];

/** The rule asked for; null without `--rule`. @throws `not-found` for what it needs and has not, `unit`, `schema` for what does not fit. */
export function ruleAsked(options: RuleOptions): RuleSpec | null {
  const { rule } = options;
  if (rule === undefined) {
    const stray = KEYS.find((key) => options[key] !== undefined);
    if (stray !== undefined) throw new CrosscoatError('not-found', `${flag(stray)} belongs to a rule; say which with --rule ${Object.keys(RULE_CHOICES).join('|')}`);
    return null;
  }
  const kind = RULE_CHOICES[rule];
  const stray = KEYS.find((key) => options[key] !== undefined && !TAKES[kind].includes(key));
  if (stray !== undefined) throw new CrosscoatError('not-found', `--rule ${rule} has no ${flag(stray)}; it takes ${TAKES[kind].map(flag).join(', ')}`);
  if (kind === 'shop' && TAKES.shop.every((key) => options[key] === undefined)) throw new CrosscoatError('not-found', `--rule shop states no limit, so it judges nothing; give one at least of ${TAKES.shop.map(flag).join(', ')}`);
  return checkRule(stated(kind, rule, options), `--rule ${rule}`, typedNames(kind, options));
}

/** Keys of a rule that an option fills in under another name, by kind. */
const KEY_NAMES: Readonly<Record<RuleSpec['kind'], Readonly<Record<string, Key>>>> = {
  'mean-80': { nominal_um: 'nominal', maximum_um: 'max', low_percent: 'low', share_percent: 'share', correction_um: 'correction' },
  'spots-areas': { min_um: 'min', max_um: 'max', level: 'level' },
  'ninety-ten': { nominal_um: 'nominal', low_percent: 'low', share_percent: 'share' },
  shop: { eachMin_um: 'min', eachMax_um: 'max', meanMin_um: 'meanMin', meanMax_um: 'meanMax', spread_percent: 'spread' },
};

/** Each key of the rule as its option was typed, for messages; a range that a single value stands for is told by that value. */
function typedNames(kind: RuleSpec['kind'], options: RuleOptions): Record<string, string> {
  return Object.fromEntries(Object.entries(KEY_NAMES[kind]).flatMap(([key, own]) => {
    const option = options[own] === undefined && kind === 'spots-areas' ? 'nominal' : own;
    const text = options[option];
    return text === undefined ? [] : [[key, `${flag(option)} = "${text.slice(0, 40)}"`]];
  }));
}

function stated(kind: RuleSpec['kind'], name: string, options: RuleOptions): RuleInput {
  const film = (key: Key): number | undefined => maybe(options[key], (text) => micrometres(flag(key), text));
  const percent = (key: Key): number | undefined => maybe(options[key], (text) => tidy(statedQuantity(flag(key), text, SHARE) * 100));
  const nominal_um = film('nominal');
  const shares = given({ low_percent: percent('low'), share_percent: percent('share') });
  switch (kind) {
    case 'mean-80':
      return { kind, nominal_um: needed(nominal_um, name), ...given({ maximum_um: film('max'), correction_um: film('correction') }), ...shares, boundary: name === 'iso19840' ? 'strict' : 'lenient' };
    case 'ninety-ten':
      return { kind, nominal_um: needed(nominal_um, name), ...shares };
    case 'spots-areas':
      return { kind, ...specifiedRange(nominal_um, film('min'), film('max')), ...given({ level: maybe(options.level, (text) => wholeNumber('--level', text, 1, 5)) }) };
    case 'shop':
      return { kind, name: 'command line', ...given({ eachMin_um: film('min'), eachMax_um: film('max'), meanMin_um: film('meanMin'), meanMax_um: film('meanMax'), spread_percent: percent('spread') }) };
  }
}

/** A range as stated, or the one that a single value stands for. */
function specifiedRange(nominal_um: number | undefined, min_um: number | undefined, max_um: number | undefined): { readonly min_um: number; readonly max_um?: number } {
  if (nominal_um !== undefined) {
    if (min_um !== undefined || max_um !== undefined) throw new CrosscoatError('not-found', '--nominal is a single value, which stands for 20 % to each side; give it, or --min and --max');
    return singleValueRange(nominal_um);
  }
  if (min_um === undefined) throw new CrosscoatError('not-found', '--rule pa2 needs --min (and --max, where there is one), such as --min 2.5mil --max 3mil, or --nominal for 20 % to each side of it');
  return { min_um, ...given({ max_um }) };
}

function needed(nominal_um: number | undefined, rule: string): number {
  if (nominal_um !== undefined) return nominal_um;
  throw new CrosscoatError('not-found', `--rule ${rule} needs --nominal, such as --nominal 100um`);
}

/** Typed films to the last digit typed: 2.5 mil are 63.5 µm. */
function micrometres(option: string, text: string): number {
  return tidy(statedQuantity(option, text, FILM) * 1e6);
}

function tidy(value: number): number {
  return Number(value.toPrecision(12));
}

function maybe<T>(text: string | undefined, read: (text: string) => T): T | undefined {
  return text === undefined ? undefined : read(text);
}

/** Only what was given. */
function given<T extends Readonly<Record<string, number | undefined>>>(values: T): { [K in keyof T]?: number } {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as { [K in keyof T]?: number };
}

/** `meanMin` as it is typed: `--mean-min`. */
function flag(key: Key): string {
  return `--${key.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`;
}
