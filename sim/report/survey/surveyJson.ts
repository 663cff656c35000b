import type { GroupMean, RuleCheck } from '../../survey/judgedSurvey.ts';
import type { MoreReadings } from '../../survey/moreReadings.ts';
import type { SamplingNumbers } from '../../survey/samplingNumbers.ts';
import { jsonNumber, type JsonValue } from '../jsonValue.ts';
import { RESULT_VERSION, warningJson } from '../reportJson.ts';
import type { ReportedSurvey } from './reportedSurvey.ts';
import { ruleWords } from './ruleWords.ts';
import { checkWords, surveyReason } from './surveyReason.ts';
import { MORE_NOTE, SURVEY_NOTE } from './surveyWords.ts';

const UM = 1e-6;
const SHARE_CODES: ReadonlySet<RuleCheck['code']> = new Set(['low-share', 'spread']);

/**
 * A survey as one JSON object: `verdict` (pass, fail, undecided), `reason`, `mean_um`, `count`, `low_um`, `high_um`, `deviation_um`,
 * `checks`, `spots`, `areas`, `more`, `rule`. `count` is of all readings; readings are numbered from 1. Null where a film has no figure.
 */
export function surveyJson(reported: ReportedSurvey): { readonly [key: string]: JsonValue } {
  const { name, judged, taken, more, sampling, warnings, survey } = reported;
  const { figures, rule } = judged;
  const { borrowed, asks, name: ruleName } = ruleWords(rule, 'metric');
  return {
    schemaVersion: RESULT_VERSION,
    note: SURVEY_NOTE,
    name,
    survey: survey?.id ?? null,
    panel: survey?.panel ?? null,
    verdict: judged.answer,
    reason: surveyReason(judged, 'metric'),
    count: judged.readings.length,
    mean_um: jsonNumber(figures.mean_m, UM),
    low_um: jsonNumber(figures.least_m, UM),
    high_um: jsonNumber(figures.most_m, UM),
    deviation_um: jsonNumber(figures.deviation_m, UM),
    meanInterval_um: figures.meanInterval_m === null ? null : figures.meanInterval_m.map((film) => jsonNumber(film, UM)),
    rule: { ...definedOnly(rule), name: rule.kind === 'shop' ? rule.name : ruleName, borrowed, asks },
    checks: judged.checks.map((check) => ({ ...checkJson(check), words: checkWords(check, judged, 'metric') })),
    spots: judged.spots.map(groupJson),
    areas: judged.areas.map(groupJson),
    grouping: judged.grouping === null ? null : { ...judged.grouping },
    more: moreJson(more),
    sampling: sampling === null ? null : samplingJson(sampling),
    taken: {
      dryDensity_kg_m3: taken.dryDensity_kg_m3 === null ? null : { value: jsonNumber(taken.dryDensity_kg_m3.value), mix: taken.dryDensity_kg_m3.mix },
      solids_percent: taken.solidsFraction === null ? null : { value: jsonNumber(taken.solidsFraction.value, 0.01), mix: taken.solidsFraction.mix },
    },
    warnings: warnings.map(warningJson),
  };
}

/** What a rule's own table asks for, as JSON. */
export function samplingJson({ areas, spots, readings, repeats, source }: SamplingNumbers): { readonly [key: string]: JsonValue } {
  return { areas, spots, readings, repeats, source };
}

function definedOnly(rule: Readonly<Record<string, string | number | undefined>>): { [key: string]: JsonValue } {
  return Object.fromEntries(Object.entries(rule).flatMap(([key, value]) => (value === undefined ? [] : [[key, value]])));
}

function checkJson({ code, answer, found, limit, includesLimit, readings, where }: RuleCheck): { [key: string]: JsonValue } {
  const isShare = SHARE_CODES.has(code);
  const unit = isShare ? 0.01 : UM;
  return {
    check: code,
    answer,
    unit: isShare ? 'percent' : 'um',
    found: found.map((value) => jsonNumber(value, unit)),
    limit: jsonNumber(limit, unit),
    includesLimit,
    where,
    readings: readings.map((index) => index + 1),
  };
}

function groupJson({ name, mean_m, readings, answer }: GroupMean): JsonValue {
  return { name, mean_um: mean_m.map((film) => jsonNumber(film, UM)), answer, readings: readings.map((index) => index + 1) };
}

function moreJson(more: MoreReadings): JsonValue {
  const film = (value: number | null): JsonValue => (value === null ? null : jsonNumber(value, UM));
  const count = (value: number | null): JsonValue => (value === null ? null : jsonNumber(value));
  return {
    of: more.of,
    count: more.count,
    halfWidth_um: film(more.halfWidth_m),
    wished_um: film(more.wished_m),
    more: count(more.more),
    meanLimit_um: film(more.meanLimit_m),
    moreForLimit: count(more.moreForLimit),
    least_um: film(more.least_m),
    chanceBelow_percent: more.chanceBelow === null ? null : jsonNumber(more.chanceBelow, 0.01),
    most_um: film(more.most_m),
    chanceAbove_percent: more.chanceAbove === null ? null : jsonNumber(more.chanceAbove, 0.01),
    assumption: MORE_NOTE,
  };
}
