import type { TodayAnswer, TodayPart, TodayRatio } from '../scheme/today.ts';
import { CLIMATE_STATEMENT, climateSentence } from './climateWords.ts';
import { FAN_CAUTION, noRemedyWords, remedySentence } from './remedyWords.ts';
import { bothArealWeights, bothFilms, drainSeconds, ratioText, shownKinematic, sprayedAt } from './todayFigures.ts';
import { shown, shownLiquid, shownTemperature, shownTime, shownWeight, type UnitSystem } from './units.ts';

/** The parts of the front sheet, as questions, in the order in which they are read. */
export const TODAY_PARTS: readonly (readonly [part: TodayPart, question: string])[] = [
  ['climate', 'Can I spray now?'],
  ['thinning', 'How far to thin, and in which cup?'],
  ['film', 'How thick is a coat, wet and dry?'],
  ['hold', 'Will it hold on this side?'],
  ['next', 'When may the next step begin?'],
  ['amounts', 'How much to mix and to buy, and what does it weigh?'],
];

/** Said right under the verdict, wherever it stands. */
export const TODAY_CAUTION = `${CLIMATE_STATEMENT} Fan on, respirator on, no flame or spark.`;

/** What the disputed word means here. After FAA AC 43.13-1B, paragraph 2-20. */
export const COAT_WORDS: readonly (readonly [word: string, meaning: string])[] = [
  ['Pass', 'strokes side by side over the whole panel in one direction.'],
  ['Single coat', 'one pass, each stroke laid half over the one before.'],
  ['Cross coat', 'two passes at right angles, the second before the first has flashed off (the circular’s double coat).'],
];

/** The answer to one part, as one short text to be read large. */
export function todayLine(answer: TodayAnswer, part: TodayPart, system: UnitSystem): string {
  return LINES[part](answer, system);
}

const LINES: Readonly<Record<TodayPart, (answer: TodayAnswer, system: UnitSystem) => string>> = {
  climate: ({ climate }, system) => climateSentence(climate.verdict, climate.answer, system),
  thinning: thinningLine,
  film: filmLine,
  hold: holdLine,
  next: nextLine,
  amounts: amountsLine,
};

function thinningLine({ thinning, question, mix }: TodayAnswer): string {
  const { thin, thick, sprayCup } = thinning;
  const wanted = `${drainSeconds(thin.seconds)} to ${drainSeconds(thick.seconds)} in the ${sprayCup.name}`;
  const now = `now ${ratioText(mix.thinnerRatio)}`;
  if (thick.thinnerRatio === null) return `More than ten of thinner to one of finish would be needed for ${wanted}: look at the reading.`;
  if (question.thinnerRatio === null) return `${toRatio(thin, thick)}, finish to thinner by volume, for ${wanted}.`;
  if (thick.thinnerRatio === 0 && mix.thinnerRatio === 0) return `As it stands it is thin enough for the gun (${wanted}).`;
  if (mix.thinnerRatio >= thick.thinnerRatio - 0.005) {
    const past = thin.thinnerRatio !== null && mix.thinnerRatio > thin.thinnerRatio + 0.005;
    return past ? `Thinner than is usual for the gun (${wanted}): ${now}.` : `Thin enough for the gun (${wanted}): ${now}.`;
  }
  return `${toRatio(thin, thick)}, finish to thinner by volume (${now}), for ${wanted}.`;
}

/** `Thin to 1 : 0.8 to 1 : 1.35`. */
function toRatio(thin: TodayRatio, thick: TodayRatio): string {
  const least = ratioText(thick.thinnerRatio ?? 0);
  if (thin.thinnerRatio === null) return `Thin to at least ${least}`;
  const most = ratioText(thin.thinnerRatio);
  return most === least ? `Thin to ${least}` : `Thin to ${least} to ${most}`;
}

function filmLine({ film, thinning }: TodayAnswer, system: UnitSystem): string {
  const { coats, coatWet_m, coatDry_m } = film;
  return `${coats === 1 ? 'One coat' : `${coats} coats, each`} of ${bothFilms(coatWet_m, 'wet', system)}, which ${coats === 1 ? 'leaves' : 'leave'} ${bothFilms(coatDry_m, 'dry', system)}${coats === 1 ? '' : ' each'}, ${sprayedAt(thinning.sprayed)}.`;
}

function holdLine({ hold, film }: TodayAnswer, system: UnitSystem): string {
  if (!Number.isFinite(hold.held_m.value)) return 'Level: nothing pulls the film, so it cannot run; it can still gather at edges.';
  const wet = bothFilms(hold.wet_m, 'wet', system);
  const held = `about ${shown(hold.held_m.value, 'film', system)} that holds here`;
  if (hold.word === 'holds') return `It holds: ${wet} a coat, against ${held}.`;
  const fewer = hold.fewestCoats === null || hold.fewestCoats <= film.coats ? '' : ` Lay it in ${hold.fewestCoats} coats.`;
  return hold.word === 'care' ? `It may hold: ${wet} a coat is more than the ${held}.${fewer}` : `It runs: ${wet} a coat, against ${held}.${fewer}`;
}

function nextLine({ next, film }: TodayAnswer): string {
  const what = film.coats > 1 ? 'The next coat' : 'The next step';
  if (next.earliest_s === null) return `${what} cannot be planned: in this air the film is not ready within ${shownTime(next.watched_s)}.`;
  const latest = next.dissolves ? 'no latest time: the next coat dissolves into it' : 'the latest time is on the product sheet';
  return `${what} not before ${shownTime(next.earliest_s)}; ${latest}.`;
}

function amountsLine({ amounts, question, thinning }: TodayAnswer, system: UnitSystem): string {
  const { mix_m3, finish_m3, thinner_m3, all_kg_m2, all_kg } = amounts;
  const parts = `${shownLiquid(finish_m3, system)} of finish and ${shownLiquid(thinner_m3, system)} of thinner`;
  return `Mix ${shownLiquid(mix_m3, system)} ${sprayedAt(thinning.sprayed)}: ${parts}. It adds ${bothArealWeights(all_kg_m2, system)} dry, ${shownWeight(all_kg, system)} on ${shown(question.area_m2, 'panel-area', system)}.`;
}

/** What would make it go, a sentence each; none where it goes. */
export function climateHelp({ remedies }: TodayAnswer['climate'], system: UnitSystem): readonly string[] {
  const { now, found } = remedies;
  if (now.verdict === 'go') return [];
  const none = noRemedyWords(remedies, system);
  const warms = found.some(({ kind }) => kind === 'warm' || kind === 'warm-retard');
  return [...found.map((each) => remedySentence(each, system, 0)), ...(none === null ? [] : [none]), ...(warms ? [FAN_CAUTION] : [])];
}

/** What else belongs to an answer, a sentence each. */
export function todaySentences(answer: TodayAnswer, part: Exclude<TodayPart, 'climate'>, system: UnitSystem): readonly string[] {
  return SENTENCES[part](answer, system);
}

const SENTENCES: Readonly<Record<Exclude<TodayPart, 'climate'>, (answer: TodayAnswer, system: UnitSystem) => readonly string[]>> = {
  thinning: thinningSentences,
  film: filmSentences,
  hold: holdSentences,
  next: nextSentences,
  amounts: amountsSentences,
};

function thinningSentences({ thinning, question }: TodayAnswer, system: UnitSystem): string[] {
  const { refusal, now, cup, viscosity_m2_s, liquid_K, otherCups, read_s } = thinning;
  const at = `at ${shownTemperature(liquid_K, system)}`;
  const isRead = read_s !== null && refusal === null;
  const what = isRead ? `${drainSeconds(read_s)} in the ${cup.name} is ${shownKinematic(viscosity_m2_s)} ${at}` : `Without a reading the finish’s usual viscosity stands, ${shownKinematic(viscosity_m2_s)} ${sprayedAt(thinning.sprayed)} and ${at}`;
  const inCup = isRead ? '' : now.seconds === null ? `: outside the range of the ${cup.name}, so no seconds are given` : `: about ${drainSeconds(now.seconds)} in the ${cup.name}`;
  const others = otherCups.map((other) => `${drainSeconds(other.seconds as number)} in the ${other.cup.name}`);
  return [
    ...(refusal === null ? [] : [`${refusal.charAt(0).toUpperCase()}${refusal.slice(1)}.`]),
    `${what}${inCup}.`,
    ...(isRead && question.thinnerRatio === null ? [`No ratio was typed with the reading, so it is taken as of a mix at ${ratioText(thinning.thinnerRatio)}: type the ratio that you read.`] : []),
    ...(others.length === 0 ? [] : [`The same liquid: ${others.join('; ')}.`]),
    afternoonSentence(thinning, system),
  ];
}

function afternoonSentence({ afternoon, afternoon_K, cup }: TodayAnswer['thinning'], system: UnitSystem): string {
  const head = `This afternoon at ${shownTemperature(afternoon_K, system)} the same mix`;
  const { time, low_s, high_s } = afternoon;
  if (time.seconds === null) {
    const other = time.fitting === null ? 'use another cup' : `the ${time.fitting.name} fits`;
    return `${head} is outside the range of the ${cup.name} (${cup.least_s} to ${cup.most_s} s), so no seconds are given; ${other}.`;
  }
  const spread = low_s === null || high_s === null || drainSeconds(low_s) === drainSeconds(high_s) ? '' : ` (${drainSeconds(Math.min(low_s, high_s))} to ${drainSeconds(Math.max(low_s, high_s))})`;
  return `${head} drains in ${drainSeconds(time.seconds)}${spread}.`;
}

function filmSentences({ film, question }: TodayAnswer, system: UnitSystem): string[] {
  const { allDry_m, allWet_m, passWet_m, left_m, coatWetRange_m, coats } = film;
  const sanded = shown(question.sanded_m, 'film', system);
  return [
    `Laid as a cross coat, each of its two passes is ${bothFilms(passWet_m, 'wet', system)}.`,
    `All coats: ${bothFilms(allDry_m, 'dry', system)}${coats === 1 ? '' : `; in one coat that would be ${bothFilms(allWet_m, 'wet', system)}`}.`,
    left_m > 0 ? `Sanding that takes off ${sanded} leaves ${bothFilms(left_m, 'dry', system)} of it.` : `Sanding that takes off ${sanded} goes through: the film is ${bothFilms(allDry_m, 'dry', system)}.`,
    `Makers’ solids differ: the same dry film is ${shown(coatWetRange_m.low, 'film', system)} to ${shown(coatWetRange_m.high, 'film', system)} wet a coat. Take the volume solids from the product sheet.`,
  ];
}

function holdSentences({ hold, film }: TodayAnswer, system: UnitSystem): string[] {
  const { held_m, working_m, limit_m, sags_m, fewestCoats } = hold;
  if (!Number.isFinite(held_m.value)) return [];
  const um = (film_m: number) => shown(film_m, 'film', system);
  return [
    `By the model this finish holds ${um(held_m.low)} to ${um(held_m.high)} wet here before it slides.`,
    `By the trade: ${um(working_m[0])} to ${um(working_m[1])} wet is a working coat, about ${um(limit_m)} the limit, ${um(sags_m)} sags.`,
    ...(fewestCoats === null || fewestCoats === film.coats ? [] : [`${bothFilms(film.allDry_m, 'dry', system)} holds in ${fewestCoats} ${fewestCoats === 1 ? 'coat' : 'coats'}.`]),
  ];
}

function nextSentences({ next }: TodayAnswer): string[] {
  const { touchDry_s, recoat_s, coat, sand, watched_s } = next;
  const stated = (what: string, wait: typeof coat): string[] => (wait === null ? [] : [`${what}: ${shownTime(wait.stated_s)} at 70 °F (21.1 °C), so ${shownTime(wait.today_s)} in this air (${wait.source}).`]);
  return [
    touchDry_s === null
      ? `By the model the coat is not dry to touch within ${shownTime(watched_s)}.`
      : `By the model a coat is dry to touch after ${shownTime(touchDry_s)}: the second pass of a cross coat goes on before that. ${recoat_s === null ? `It is not ready for another coat within ${shownTime(watched_s)}.` : `It is ready for another coat after ${shownTime(recoat_s)}.`}`,
    ...stated('By the trade, the next coat', coat),
    ...stated('By the trade, sanding', sand),
    ...(coat === null ? ['No wait between coats of this finish is published in what we read: the product sheet has it.'] : []),
    next.dissolves ? 'Masking tape should not sit on it for more than about a day (common practice).' : 'A finish that cures has a recoat window: past it, it is scuffed first. Its sheet names the times.',
  ];
}

function amountsSentences({ amounts, question }: TodayAnswer, system: UnitSystem): string[] {
  const { coats, mixOneCoat_m3, coat_kg_m2, published_kg_m2: [low, high] } = amounts;
  const band = `${shown(low, 'areal-weight', system)} to ${shown(high, 'areal-weight', system)}`;
  const place = coat_kg_m2 < low * 0.999 ? 'lighter than' : coat_kg_m2 > high * 1.001 ? 'heavier than' : 'inside';
  return [
    ...(coats === 1 ? [] : [`For one coat at a time: ${shownLiquid(mixOneCoat_m3, system)}. Mix for the next coat only.`]),
    `One coat weighs ${bothArealWeights(coat_kg_m2, system)} dry, ${place} the ${band} published for a coat of such a finish.`,
    `Buy at least ${shownLiquid(amounts.finish_m3, system)} of finish and ${shownLiquid(amounts.thinner_m3, system)} of thinner, and what cleans the gun, for ${shown(question.area_m2, 'panel-area', system)}.`,
  ];
}

/** Where the liquid goes, a line each: landed, past the part, left behind, in all. */
export function todayAmountRows({ amounts }: TodayAnswer, system: UnitSystem): readonly (readonly [string, string])[] {
  const { coats, landed_m3, missed_m3, pot_m3, mix_m3 } = amounts;
  return [
    ['lands on the part', shownLiquid(landed_m3, system)],
    ['lost past it', shownLiquid(missed_m3, system)],
    [`left in cup and gun, ${coats} ${coats === 1 ? 'time' : 'times'}`, shownLiquid(pot_m3, system)],
    ['to mix in all', shownLiquid(mix_m3, system)],
  ];
}
