import { ESTIMATE_STATEMENT } from './cautions.ts';
import type { ReportedDroppedLimit, ReportedFit, ReportedFitLimit, ReportedHandRoom, ReportedProposal, ReportedRelaxed } from './reportedFit.ts';
import { bulleted, wrapped } from './textLines.ts';
import { roundedText, shown, shownFluidRate, shownPercent, shownTemperatureStep, shownTime, type UnitSystem } from './units.ts';
import { FAULT_PLURALS, FAULT_WORDS, capitalised, listed } from './words.ts';

/** What the answers rest on, told with them. */
export const FIT_LIMITS =
  'Predicted for the middle of a large panel and a steady hand; waits between coats and the day’s air are taken as they stand. ' +
  'A search finds a good way, not surely the best; spray a test card before the part.';

/** Changes of fluid or thinner below this are none. */
const SAME = 1e-6;

/** A wish worked out, as plain text; lines joined, one newline at the end. */
export function fitText(fit: ReportedFit, system: UnitSystem): string {
  const lines = [
    ...wrapped(fitSentence(fit, system)),
    '',
    ...fit.proposals.flatMap((proposal, i) => [...proposalLines(fit, proposal, `${i + 1}. `, system), '']),
    ...(fit.nearest === null ? [] : missedLines(fit, fit.nearest, system)),
    ...(fit.leftOut.length === 0 ? [] : [...bulleted('Set-ups left out', fit.leftOut), '']),
    ...wrapped(FIT_LIMITS),
    ...wrapped(ESTIMATE_STATEMENT),
  ];
  return `${lines.join('\n')}\n`;
}

/** What was wished for, and whether it can be had. */
export function fitSentence({ coatName, target, coatCount, proposals }: ReportedFit, system: UnitSystem): string {
  const each = `${shown(target.thickness_m, 'film', system)} ${target.film}`;
  const film = coatCount === 1 ? `${each} in one coat` : `${shown(coatCount * target.thickness_m, 'film', system)} ${target.film} in ${coatCount} coats, ${each} each`;
  if (proposals.length === 0) return `${coatName}: ${film}. Nothing that was tried meets this wish.`;
  return `${coatName}: ${film}. ${proposals.length === 1 ? 'One way was found' : `${proposals.length} ways that differ in kind were found`}, the one with the most room first.`;
}

function proposalLines(fit: ReportedFit, proposal: ReportedProposal, head: string, system: UnitSystem): string[] {
  const indent = ' '.repeat(head.length);
  return [...wrapped(proposalHead(proposal), head, indent), ...proposalSentences(fit, proposal, system).flatMap((text) => wrapped(text, indent))];
}

/** Gun and mix of a proposal. */
export function proposalHead({ setUpName, mixName, cross }: ReportedProposal): string {
  return `${[setUpName, mixName].filter((name) => name !== null).join('; ')}; ${cross ? 'cross coat' : 'single coat'}`;
}

/** A proposal in sentences: gun, strokes, film, liquid, room, the hand, what differs, how it was checked. */
export function proposalSentences(fit: Pick<ReportedFit, 'coatCount' | 'target'>, proposal: ReportedProposal, system: UnitSystem): string[] {
  const texts = [gunSentence(proposal, system), strokeSentence(proposal, system), filmSentence(fit, proposal, system), roomSentence(proposal), handSentence(proposal, system), differsSentence(proposal), checkedSentence(proposal, system)];
  return texts.filter((text) => text !== '');
}

function gunSentence({ point, statedFluidRate_m3_s, statedThinnerRatio, mixId }: ReportedProposal, system: UnitSystem): string {
  const fluid = `${shownFluidRate(point.fluidRate_m3_s, system)} of fluid${changedFrom(point.fluidRate_m3_s, statedFluidRate_m3_s, (rate) => shownFluidRate(rate, system))}`;
  if (mixId === null) return `${capitalised(fluid)}.`;
  return `${fluid}, ${roundedText(point.thinnerRatio)} volumes of thinner to one${changedFrom(point.thinnerRatio, statedThinnerRatio, roundedText)}.`;
}

function changedFrom(value: number, stated: number, words: (value: number) => string): string {
  return Math.abs(value - stated) <= SAME * stated ? ', as stated' : ` (stated ${words(stated)})`;
}

function strokeSentence({ point, fanWidth_m, travel }: ReportedProposal, system: UnitSystem): string {
  const lap = `${shownPercent(point.overlapFraction)} overlap (${shown(point.overlapFraction * fanWidth_m, 'length', system)})`;
  return `From ${shown(point.distance_m, 'length', system)} at ${shown(point.speed_m_s, 'speed', system)} with ${lap}: ${travel.strokes} strokes in ${travel.passes === 1 ? 'one pass' : `${travel.passes} passes`}, ${shownTime(travel.time_s)} a coat.`;
}

function filmSentence({ coatCount }: Pick<ReportedFit, 'coatCount'>, { film, dryInAll_m, weightInAll_kg_m2, travel }: ReportedProposal, system: UnitSystem): string {
  const inAll = `${shown(dryInAll_m, 'film', system)} dry in all, ${shown(weightInAll_kg_m2, 'areal-weight', system)}`;
  const liquid = `${shown(travel.sprayed_m3, 'volume', system)} sprayed a coat, ${shown(travel.lost_m3, 'volume', system)} of it lost; ${shown(coatCount * travel.sprayed_m3, 'volume', system)} in all`;
  return `${shown(film.wetMean_m, 'film', system)} wet and ${shown(film.dryMean_m, 'film', system)} dry a coat, ${inAll}. ${liquid}.`;
}

function roomSentence({ rooms, nearest }: ReportedProposal): string {
  const others = Object.entries(rooms).filter(([fault]) => fault !== nearest);
  const words = others.map(([fault, room]) => `${FAULT_WORDS[fault as keyof typeof rooms]} ${roomWords(room)}`);
  return `Nearest is ${FAULT_WORDS[nearest]} with ${roomWords(rooms[nearest])} of the room there can be; ${listed(words)}.`;
}

function roomWords(room: number): string {
  return room < 0 ? 'none' : shownPercent(room);
}

function handSentence({ hand, point }: ReportedProposal, system: UnitSystem): string {
  const told = hand.map((room) => handWords(room, point.speed_m_s, system));
  return told.every((text) => text === '') ? '' : `Room for the hand: ${told.filter((text) => text !== '').join('; ')}.`;
}

function handWords({ axis, way, by, fault }: ReportedHandRoom, speed_m_s: number, system: UnitSystem): string {
  if (!(by > 0)) return '';
  const amount = axis === 'distance' ? shown(by, 'length', system) : shownPercent(by / speed_m_s);
  const direction = axis === 'distance' ? (way === 'less' ? 'nearer' : 'farther') : way === 'less' ? 'slower' : 'faster';
  const then = fault === null ? 'at least' : fault === 'distance-range' ? ', then the end of what the fan may be believed for' : `, then ${FAULT_PLURALS[fault]}`;
  return fault === null ? `${then} ${amount} ${direction}` : `${amount} ${direction}${then}`;
}

const DIFFERENCE_WORDS: Readonly<Record<ReportedProposal['differs'][number], string>> = {
  'set-up': 'another set-up',
  mix: 'another mix',
  passes: 'single against cross',
  fluid: 'much other fluid',
  thinner: 'much other thinner',
  distance: 'another distance',
};

function differsSentence({ differs }: ReportedProposal): string {
  return differs.length === 0 ? '' : `Differs from the first: ${listed(differs.map((difference) => DIFFERENCE_WORDS[difference]))}.`;
}

function checkedSentence({ laid }: ReportedProposal, system: UnitSystem): string {
  if (laid === undefined) return '';
  const found = laid.faults.length === 0 ? 'no fault' : listed(laid.faults.map(({ kind, area_m2 }) => `${FAULT_PLURALS[kind]} on ${shown(area_m2, 'area', system)}`));
  return `Laid on the panel and watched by the model: ${shownPercent(laid.filmRatio)} of the wished film on average, ${shownPercent(laid.inTargetFraction)} of the panel inside the limits, ${found}.`;
}

function missedLines(fit: ReportedFit, nearest: ReportedProposal, system: UnitSystem): string[] {
  return [
    ...proposalLines(fit, nearest, 'Nearest: ', system),
    '',
    ...bulleted('In the way', fit.obstacles.map((obstacle) => obstacleWords(obstacle, nearest, system))),
    '',
    ...(fit.relaxations.length === 0 ? [] : [...bulleted('What would help, one at a time', fit.relaxations.map((one) => relaxationWords(one, system))), '']),
  ];
}

/** A limit that is missed, by how much, and how much film it would bear. */
export function obstacleWords({ limit, missedBy, heldWet_m }: ReportedFit['obstacles'][number], { film }: ReportedProposal, system: UnitSystem): string {
  const held = heldWet_m === null ? '' : `; a coat is ${shown(film.wetMean_m, 'film', system)} wet, and there ${LIMIT_WORDS[limit]} would begin above ${shown(heldWet_m, 'film', system)}`;
  const past = limit === 'blush' ? `film ${shownTemperatureStep(-film.blushMargin_K, system)} below the dew point` : `past by ${shownPercent(missedBy)}`;
  return `${capitalised(LIMIT_WORDS[limit])}: ${past}${held}.`;
}

/** What a relaxed limit gives. */
export function relaxationWords({ relaxed, meets, margin, proposal }: ReportedFit['relaxations'][number], system: UnitSystem): string {
  const { point, film } = proposal;
  const way = `${proposalHead(proposal)}, from ${shown(point.distance_m, 'length', system)} at ${shown(point.speed_m_s, 'speed', system)}, ${shown(film.wetMean_m, 'film', system)} wet a coat`;
  return meets ? `${relaxedWords(relaxed)} the rest of the wish is met (${way}; ${shownPercent(margin)} of the room there can be is left).` : `${relaxedWords(relaxed)} it is still not met.`;
}

function relaxedWords(relaxed: ReportedRelaxed): string {
  switch (relaxed.kind) {
    case 'ignored':
      return `Without the limit on ${LIMIT_WORDS[relaxed.limit]}`;
    case 'coats':
      return `With ${relaxed.coatCount} ${relaxed.coatCount === 1 ? 'coat' : 'coats'}`;
    case 'dropped':
      return `With ${DROPPED_WORDS[relaxed.limit]}`;
  }
}

const LIMIT_WORDS: Readonly<Record<ReportedFitLimit, string>> = {
  ...FAULT_PLURALS,
  speed: 'the speed of the hand',
  time: 'the time for a coat',
  liquid: 'the liquid for all coats',
};

const DROPPED_WORDS: Readonly<Record<ReportedDroppedLimit, string>> = {
  setUps: 'every set-up of the job',
  mixes: 'every mix of this finish',
  distance_m: 'the usual distances',
  speed_m_s: 'the usual speeds',
  overlapFraction: 'the usual overlaps',
  fluidRate_m3_s: 'what such guns usually do',
  thinnerRatio: 'the usual thinning',
  passes: 'single or cross as it comes',
  mostTime_s: 'more time',
  mostLiquid_m3: 'more liquid',
};
