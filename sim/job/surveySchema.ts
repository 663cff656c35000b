import * as v from 'valibot';
import { MOST_CHANGES } from '../base/historyLimits.ts';
import { COMB, PLACE } from './logSchema.ts';
import { ChangeSchema, moment, PERSON, SignedSchema } from './recordSchema.ts';
import { id, list, number, oneOf, record, text, wholeNumber } from './words.ts';

/** Most readings of a survey. */
export const MOST_READINGS = 20_000;

const film = (description: string) => number(0.1, 5000, `${description}, µm dry`);

const RULES = [
  record(
    {
      kind: v.literal('mean-80'),
      nominal_um: film('nominal film'),
      maximum_um: v.optional(film('no reading above it; three times the nominal film where not given')),
      low_percent: v.optional(number(1, 100, 'no reading below this share of the nominal film'), 80),
      share_percent: v.optional(number(0, 100, 'share of the readings that may lie between that and the nominal film'), 20),
      boundary: v.optional(oneOf(['strict', 'lenient'], 'strict: fewer than that share; lenient: that share itself will do'), 'strict'),
      correction_um: v.optional(number(0, 200, 'taken off each reading for a rough surface beneath, µm; 0 for a smooth one'), 0),
    },
    'rule borrowed from ISO 19840: mean, and fewer than a fifth low',
  ),
  record(
    {
      kind: v.literal('spots-areas'),
      min_um: film('least specified film'),
      max_um: v.optional(film('most specified film; none where not given')),
      level: v.optional(wholeNumber(1, 5, 'restriction level'), 3),
    },
    'rule borrowed from SSPC-PA 2: readings make spots, spots make areas',
  ),
  record(
    {
      kind: v.literal('ninety-ten'),
      nominal_um: film('nominal film'),
      low_percent: v.optional(number(1, 100, 'no reading below this share of the nominal film'), 90),
      share_percent: v.optional(number(0, 100, 'share of the readings that may lie below the nominal film'), 10),
    },
    'the 90/10 rule, for comparison',
  ),
  record(
    {
      kind: v.literal('shop'),
      name: text(200, 'whose rule it is'),
      meanMin_um: v.optional(film('least mean')),
      meanMax_um: v.optional(film('most mean')),
      eachMin_um: v.optional(film('least of any reading')),
      eachMax_um: v.optional(film('most of any reading')),
      spread_percent: v.optional(number(0.1, 500, 'most spread, standard deviation over mean, %')),
    },
    'the shop\'s own rule',
  ),
] as const;

const READING = {
  ...PLACE,
  area: v.optional(text(40, 'name of the area')),
  spot: v.optional(text(40, 'name of the spot in it')),
  at: v.optional(moment('when it was read')),
  note: v.optional(text(500, 'remark')),
};

const READINGS = [
  record({ kind: v.literal('metal'), dry_um: number(-50, 5000, 'magnetic or eddy-current gauge, µm dry'), ...READING }, 'a gauge on a metal witness or a metal part'),
  record(
    {
      kind: v.literal('coupon'),
      before_g: number(0, 1e5, 'weight before the coat, g'),
      after_g: number(0, 1e5, 'weight when dry, g'),
      area_cm2: number(0.1, 1e6, 'coated area of all its coated faces, cm²'),
      ...READING,
    },
    'weight gain of a coupon',
  ),
  record(
    { kind: v.literal('micrometer'), before_um: number(0, 1e5, 'thickness before, µm'), after_um: number(0, 1e5, 'thickness with the dry film, µm'), ...READING },
    'micrometer, before and after',
  ),
  record({ kind: v.literal('comb'), ...COMB, ...READING }, 'wet-film comb'),
] as const;

/** The rule of a survey. */
export const RuleSchema = v.variant('kind', RULES, 'give the kind "mean-80", "spots-areas", "ninety-ten" or "shop"');

/** One reading. */
export const ReadingSchema = v.variant('kind', READINGS, 'give the kind "metal", "coupon", "micrometer" or "comb"');

/** What gauges read on one panel, and the rule that it is judged by. */
export const SurveySchema = record(
  {
    id,
    name: text(200, 'name of the survey'),
    panel: v.pipe(id, v.description('id of the panel')),
    coats: v.optional(list(id, 0, 100, 'ids of the coats whose films, added up, were read; none: the film is compared with no plan'), []),
    at: moment('when it was read'),
    ...PERSON,
    gauge: v.optional(text(300, 'gauge, and how it was checked')),
    dryDensity_kg_m3: v.optional(number(500, 5000, 'density of the dry film, for coupons, kg/m³; that of the coats\' mix where not given')),
    solids_percent: v.optional(number(0.1, 100, 'solids of the mix as sprayed, by volume, for the comb, %; that of the coats\' mix where not given')),
    rule: v.pipe(RuleSchema, v.description('the rule that judges it')),
    readings: v.optional(list(ReadingSchema, 0, MOST_READINGS, 'the readings'), []),
    notes: v.optional(text(5000, 'remark')),
    history: v.optional(list(ChangeSchema, 0, MOST_CHANGES, 'changes, oldest first'), []),
    signed: v.optional(SignedSchema),
  },
  'a survey of the film',
);
