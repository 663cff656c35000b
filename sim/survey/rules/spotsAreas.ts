import type { RuleSpec } from '../../job/schema.ts';
import { spotLimits } from '../../materials/filmRules.ts';
import type { FilmReading } from '../filmReading.ts';
import type { CheckCode, GroupMean, RuleCheck } from '../judgedSurvey.ts';
import { answerAtLeast, answerAtMost, worstAnswer } from '../limits.ts';
import { groupReadings, type Group } from '../readingGroups.ts';
import type { RuleAnswer } from './ruleAnswer.ts';

/**
 * Rule borrowed from SSPC-PA 2 (2012 on; read in part, its table of levels from memory): the mean of at least three readings makes a
 * spot, the mean of five spots an area; each is held to limits that the restriction level draws from the specified ones.
 */
export function judgeSpotsAreas(rule: Extract<RuleSpec, { readonly kind: 'spots-areas' }>, readings: readonly FilmReading[]): RuleAnswer {
  const { spotMin_m, spotMax_m, areaMin_m, areaMax_m } = spotLimits(rule);
  const { spots, areas, grouping } = groupReadings(readings);
  return {
    checks: [
      groupCheck('area-low', 'least', areas, areaMin_m),
      ...(areaMax_m === null ? [] : [groupCheck('area-high', 'most', areas, areaMax_m)]),
      groupCheck('spot-low', 'least', spots, spotMin_m),
      ...(spotMax_m === null ? [] : [groupCheck('spot-high', 'most', spots, spotMax_m)]),
    ],
    spots: spots.map((spot) => judged(spot, spotMin_m, spotMax_m)),
    areas: areas.map((area) => judged(area, areaMin_m, areaMax_m)),
    grouping,
    readings,
  };
}

function judged(group: Group, low_m: number, high_m: number | null): GroupMean {
  const answers = [answerAtLeast(...group.mean_m, { value: low_m, includesLimit: true }), ...(high_m === null ? [] : [answerAtMost(...group.mean_m, { value: high_m, includesLimit: true })])];
  return { ...group, answer: worstAnswer(answers) };
}

/** The least, or the most, of all the means; its spot or area decides. */
function groupCheck(code: CheckCode, side: 'least' | 'most', groups: readonly Group[], value: number): RuleCheck {
  const limit = { value, includesLimit: true };
  const answerOf = ({ mean_m }: Group) => (side === 'least' ? answerAtLeast : answerAtMost)(mean_m[0], mean_m[1], limit);
  const answer = worstAnswer(groups.map(answerOf));
  const best = side === 'least' ? Math.min : Math.max;
  const found = [groups.reduce((edge, { mean_m }) => best(edge, mean_m[0]), groups[0]?.mean_m[0] ?? NaN), groups.reduce((edge, { mean_m }) => best(edge, mean_m[1]), groups[0]?.mean_m[1] ?? NaN)] as const;
  const edge = side === 'least' ? 0 : 1;
  const beyond = answer === 'pass' ? groups.filter(({ mean_m }) => mean_m[edge] === found[edge]) : groups.filter((group) => answerOf(group) === answer);
  const worst = beyond.reduce<Group | null>((kept, group) => (kept === null || (side === 'least' ? group.mean_m[0] < kept.mean_m[0] : group.mean_m[1] > kept.mean_m[1]) ? group : kept), null);
  return { code, answer, found, limit: value, includesLimit: true, readings: beyond.flatMap(({ readings }) => readings), where: worst?.name ?? null };
}
