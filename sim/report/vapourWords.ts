import type { FaceAir } from '../air/boothAir.ts';
import type { RoomAir, VapourCourse } from '../air/roomVapour.ts';
import type { PublishedLimit, RoomVapour, VapourPart } from '../air/vapour.ts';
import { FIRE_FACE_ft_min, FIRE_FACE_SOURCE } from '../materials/boothVelocities.ts';
import type { SolventByMinute } from '../scheme/solvent.ts';
import { roundedText, shown, shownPercent, shownTime, shownUnit, type Quantity, type UnitSystem } from './units.ts';
import { listed } from './words.ts';

/** Said with every figure of vapour. */
export const VAPOUR_STATEMENT = 'An estimate for planning, not a clearance: it says nothing of the air at any place or time, and no figure here allows anybody to go without a meter, a fan or breathing protection.';

/** Who has the say. */
export const VAPOUR_DECIDES =
  'Who decides: the fire code and the local authority on room, fan and wiring; the safety data sheet on the product; an industrial hygienist with measured air on what is breathed.';

/** What every figure of vapour rests on. */
export const VAPOUR_ASSUMPTIONS: readonly string[] = [
  'The vapour is an ideal gas and evenly spread over the whole room. It is not: over the wet film, in the gun’s fog, near the floor and in pits the air is far richer than the mean, at first many times.',
  'The fan’s air is outside air, and does the work of its flow divided by the mixing factor, as in the rules for dilution air. With the fan off nothing leaves the room.',
  'Of two published limits the lower is used. Explosive limits are for room temperature and fall as it is warmer; exposure limits are means over eight hours, are revised, and differ between countries: look up today’s.',
  'Exposure limits of several solvents are added up as shares. Solvents without a known limit, pigment and resin mist, lead or chromate in a primer and isocyanates are not counted at all.',
];

/** Said beside the room: the act is to spray and dry in it. */
export const VAPOUR_CAUTIONS: readonly string[] = [
  'Far from exploding is not fit to breathe: the exposure limits are passed at a hundredth of the explosive limit and less. Wear what the safety data sheet asks for; air-supplied when over the limits or unsure.',
  'Do not judge by the nose: it tires within minutes. Only a meter for these vapours, read where people stand, says what is in the air.',
  'A small room, a corner, a drum or a rag bin can burn while the mean of the room is low. No pilot light, no switch that sparks, no open heater, no smoking within 20 ft (6 m), while spraying and while anything dries.',
  'No combustion heater or lamp near: it lights the vapour, and an unvented one adds water and fumes. Warm the room before, turn the heat source off, and keep the fan on: fan off to save heat is never an answer here.',
  'The film goes on letting off solvent for hours after the gun is put away: keep the fan on while it dries.',
];

/** Who asks for a tenth of the lower explosive limit. */
export const SHIPYARD_RULE = 'the shipyard rule, WAC 296-304-03009';

/** Two figures: what an estimate is worth. */
export function about(value: number): string {
  return Number.isFinite(value) ? roundedText(Number(value.toPrecision(2))) : '?';
}

/** A share in per cent to two figures. */
export function aboutPercent(fraction: number): string {
  return shownPercent(Number(fraction.toPrecision(2)));
}

/** An amount with its unit, to two figures. */
export function aboutShown(value: number, quantity: Quantity, system: UnitSystem): string {
  const { name, size } = shownUnit(quantity, system);
  return `${about(value / size)} ${name}`;
}

/** The worst of a coat in one sentence. */
export function vapourSentence(course: VapourCourse): string {
  const { worstLel, worstLimit, lelFraction, timesLimit, mostLimited } = course;
  const share = lelFraction[worstLel] ?? 0;
  const times = timesLimit[worstLimit] ?? 0;
  const isLast = worstLel === course.steps - 1;
  const head = `At the worst, ${isLast ? `at the end of the ${shownTime(course.steps * course.step_s)} watched` : `minute ${worstLel + 1}`}, an estimated ${aboutPercent(share)} of the lower explosive limit`;
  if (mostLimited === null) return `${head}; no exposure limit of these solvents is known here.`;
  const when = worstLimit === worstLel ? '' : `, minute ${worstLimit + 1}`;
  const limits = `${about(times)} times the exposure ${course.solvents.length > 1 ? `limits together, ${mostLimited} the most of it` : `limit of ${mostLimited}`}${when}`;
  return `${head}, and ${limits}${share < 1 && times > 1 ? ': far from exploding is not fit to breathe.' : '.'}`;
}

/** How long the air is over the limits, and when it is low again. */
export function courseSentences(course: VapourCourse): string[] {
  const { overLimit_s, overQuarter_s, lowAfter_s, steps, step_s } = course;
  return [
    `Over the exposure limits for ${overLimit_s === 0 ? 'no whole minute' : shownTime(overLimit_s)} of the ${shownTime(steps * step_s)} watched; over a quarter of the lower explosive limit for ${overQuarter_s === 0 ? 'none' : shownTime(overQuarter_s)}.`,
    lowAfter_s === null
      ? 'The mean of the room does not come down to a tenth of both limits in that time.'
      : `The mean of the room comes down to a tenth of both limits an estimated ${shownTime(lowAfter_s)} after the last stroke.`,
  ];
}

/** Where the solvent goes. */
export function solventSentence({ used_m3, parts, kind, minutes, step_s }: SolventByMinute, system: UnitSystem): string {
  const sum = (of: (part: SolventByMinute['parts'][number]) => number): number => parts.reduce((all, part) => all + of(part), 0);
  const at = kind === 'spray' ? 'as overspray, fog and off the drops while the gun works' : 'from brush and pot while it is laid';
  return (
    `The coat uses ${shown(used_m3, 'volume', system)} of solvent, and all of it ends in the air: ${shown(sum(({ atOnce_m3 }) => atOnce_m3), 'volume', system)} ${at}, ` +
    `the rest out of the film, which still holds ${shown(sum(({ later_m3 }) => later_m3), 'volume', system)} after ${shownTime(minutes * step_s)}.`
  );
}

/** All of some liquid in a shut room. */
export function shutSentence({ vapour_m3, lelFraction, timesLimit, airFraction, isOverSaturated }: RoomVapour, system: UnitSystem): string {
  const limits = timesLimit === null ? '; no exposure limit is known here' : `, and ${about(timesLimit)} times the exposure limits`;
  const held = isOverSaturated ? ' That is more than the air can hold at this temperature: some would stay liquid.' : '';
  return `All of it turned to vapour and nothing let out: ${shown(vapour_m3, 'room', system)} of vapour, ${shownPercent(airFraction)} of the air, ${shownPercent(lelFraction)} of the lower explosive limit${limits}.${held}`;
}

/** Speed of the air through the booth's face. */
export function faceSentence({ velocity_m_s, fireFlow_m3_s, within }: FaceAir, system: UnitSystem): string {
  const ranges = within.map(({ row, booth }) => `a ${booth} booth with a cross-draft of ${row.crossDraft}`);
  const range = ranges.length === 0 ? 'in none of the design ranges for air guns' : `in the design range for air guns in ${listed(ranges)}`;
  return (
    `Through the open face the fan makes a mean of ${shown(velocity_m_s, 'speed', system)}, ${range} (29 CFR 1910.94 table G-10). ` +
    `${FIRE_FACE_ft_min} ft/min over this face takes ${aboutShown(fireFlow_m3_s, 'air-flow', system)}; that speed is a fire rule, not a health rule (${FIRE_FACE_SOURCE}).`
  );
}

/** What the fan does to the room and its heat. */
export function fanSentence({ volume_m3, fresh_m3_s, mixing }: RoomAir, warming_W_10K: number, system: UnitSystem): string {
  if (fresh_m3_s === 0) return 'No fan is stated: everything stays in the room. Do not spray so.';
  const step = system === 'us' ? '18 °F' : '10 °C';
  return (
    `${shown(fresh_m3_s, 'air-flow', system)} renews the room ${about((fresh_m3_s * 3600) / volume_m3)} times an hour, and counts as ${about((fresh_m3_s * 3600) / volume_m3 / mixing)} with the mixing factor of ${roundedText(mixing)}. ` +
    `To warm that air by ${step} takes about ${about(warming_W_10K / 1000)} kW for as long as the fan runs, so the room cools quickly with the heat off; the fan stays on.`
  );
}

/** Published limits of a solvent, lowest first, the first marked as the one used. A source that begins with the limit's name is not told it twice. */
export function publishedLimitWords(limits: readonly PublishedLimit[], as: (fraction: number) => string): string {
  if (limits.length === 0) return 'none known here';
  return limits.map(({ name, fraction, source }, k) => `${as(fraction)}${k === 0 && limits.length > 1 ? ' (used)' : ''}, ${name === 'lower explosive limit' || source.startsWith(name) ? '' : `${name}, `}${source}`).join('; ');
}

/** A share of the air as parts per million. */
export function shownPpm(fraction: number): string {
  return `${about(fraction * 1e6)} ppm`;
}

/** Rows of a table by solvent: head first. */
export function solventRows(parts: readonly VapourPart[], system: UnitSystem): string[][] {
  return [
    ['solvent', 'liquid', 'vapour', 'of the air', 'of LEL', 'times limit'],
    ...parts.map((part) => [
      part.solvent.name, shown(part.liquid_m3, 'volume', system), shown(part.vapour_m3, 'room', system), shownPpm(part.airFraction),
      aboutPercent(part.lelFraction), part.timesLimit === null ? '-' : about(part.timesLimit),
    ]),
  ];
}

/** Both limits of every solvent with who says so. */
export function limitSentences(parts: readonly VapourPart[]): string[] {
  return parts.map(({ solvent, explosive, exposure }) => `${solvent.name}: lower explosive limit ${publishedLimitWords(explosive, (share) => `${roundedText(share * 100)} %`)}. Exposure limit ${publishedLimitWords(exposure, shownPpm)}.`);
}
