import type { PointFilm } from '../verdict/workingWindow.ts';
import { ESTIMATE_STATEMENT } from './cautions.ts';
import { FIT_LIMITS, fitSentence, obstacleWords, proposalSentences, relaxationWords } from './fitText.ts';
import { jsonNumber, type JsonValue } from './jsonValue.ts';
import { RESULT_VERSION } from './reportJson.ts';
import type { ReportedFit, ReportedHandRoom, ReportedLaidChoice, ReportedProposal } from './reportedFit.ts';
import type { UnitSystem } from './units.ts';

const UM = 1e-6;
const MM = 1e-3;
const ML = 1e-6;
const ML_MIN = 1e-6 / 60;
const PERCENT = 0.01;
const G_M2 = 1e-3;
const MM2 = 1e-6;

/** A wish worked out, as one JSON object; keys carry their unit, plans have the keys of the job file. @param system of the sentences alone. */
export function fitJson(fit: ReportedFit, system: UnitSystem): { readonly [key: string]: JsonValue } {
  const { target, nearest } = fit;
  return {
    schemaVersion: RESULT_VERSION,
    estimate: ESTIMATE_STATEMENT,
    limits: FIT_LIMITS,
    coat: fit.coatId,
    coats: fit.coatCount,
    wish: { film: target.film, eachCoat_um: jsonNumber(target.thickness_m, UM), inAll_um: jsonNumber(fit.coatCount * target.thickness_m, UM) },
    sentence: fitSentence(fit, system),
    meets: fit.proposals.length > 0,
    proposals: fit.proposals.map((proposal) => proposalJson(fit, proposal, system)),
    nearest: nearest === null ? null : proposalJson(fit, nearest, system),
    obstacles: fit.obstacles.map((obstacle) => ({
      limit: obstacle.limit,
      missedBy_percent: jsonNumber(obstacle.missedBy, PERCENT),
      heldWet_um: obstacle.heldWet_m === null ? null : jsonNumber(obstacle.heldWet_m, UM),
      text: nearest === null ? '' : obstacleWords(obstacle, nearest, system),
    })),
    relaxed: fit.relaxations.map((one) => ({
      ...one.relaxed,
      meets: one.meets,
      margin_percent: jsonNumber(one.margin, PERCENT),
      text: relaxationWords(one, system),
      proposal: proposalJson({ target, coatCount: one.relaxed.kind === 'coats' ? one.relaxed.coatCount : fit.coatCount }, one.proposal, system),
    })),
    leftOut: fit.leftOut,
  };
}

function proposalJson(fit: Pick<ReportedFit, 'coatCount' | 'target'>, proposal: ReportedProposal, system: UnitSystem): JsonValue {
  const { point, travel, rooms, laid } = proposal;
  return {
    setUp: proposal.setUpId,
    mix: proposal.mixId,
    fluidRate_mL_min: jsonNumber(point.fluidRate_m3_s, ML_MIN),
    statedFluidRate_mL_min: jsonNumber(proposal.statedFluidRate_m3_s, ML_MIN),
    thinnerPerFinish: proposal.mixId === null ? null : jsonNumber(point.thinnerRatio),
    statedThinnerPerFinish: proposal.mixId === null ? null : jsonNumber(proposal.statedThinnerRatio),
    plan: { ...proposal.plan },
    predicted: filmJson(proposal.film),
    wetInAll_um: jsonNumber(proposal.wetInAll_m, UM),
    dryInAll_um: jsonNumber(proposal.dryInAll_m, UM),
    weightInAll_g_m2: jsonNumber(proposal.weightInAll_kg_m2, G_M2),
    strokes: travel.strokes,
    passes: travel.passes,
    time_s: jsonNumber(travel.time_s),
    sprayed_mL: jsonNumber(travel.sprayed_m3, ML),
    lost_mL: jsonNumber(travel.lost_m3, ML),
    rooms_percent: sharesJson(rooms),
    margin_percent: jsonNumber(proposal.margin, PERCENT),
    nearest: proposal.nearest,
    hand: proposal.hand.map((room) => handJson(room, point.speed_m_s)),
    differs: [...proposal.differs],
    laid: laid === undefined ? null : laidJson(laid),
    sentences: proposalSentences(fit, proposal, system),
  };
}

function filmJson(film: PointFilm): JsonValue {
  return {
    wet_um: jsonNumber(film.wetMean_m, UM),
    dry_um: jsonNumber(film.dryMean_m, UM),
    cv_percent: jsonNumber(film.cv, PERCENT),
    arrivedDry_percent: jsonNumber(film.dryFraction, PERCENT),
    slide_mm: jsonNumber(film.run_m, MM),
    ripple_um: jsonNumber(film.peel_m, UM),
    blushMargin_C: jsonNumber(film.blushMargin_K),
    slack_percent: sharesJson(film.slack),
    distanceInRange: film.distanceInRange,
  };
}

function sharesJson(shares: Readonly<Record<string, number>>): JsonValue {
  return Object.fromEntries(Object.entries(shares).map(([name, share]) => [name, jsonNumber(share, PERCENT)]));
}

function handJson({ axis, way, by, fault }: ReportedHandRoom, speed_m_s: number): JsonValue {
  const amount = axis === 'distance' ? { by_mm: jsonNumber(by, MM) } : { by_percent: jsonNumber(by / speed_m_s, PERCENT) };
  return { axis, way, ...amount, then: fault };
}

function laidJson({ wet, dry, filmRatio, inTargetFraction, faults, account, life }: ReportedLaidChoice): JsonValue {
  return {
    wet_um: jsonNumber(wet.mean_m, UM),
    dry_um: jsonNumber(dry.mean_m, UM),
    cv_percent: jsonNumber(dry.cv, PERCENT),
    ofWish_percent: jsonNumber(filmRatio, PERCENT),
    inTarget_percent: jsonNumber(inTargetFraction, PERCENT),
    faults: faults.map(({ kind, area_m2 }) => ({ kind, area_mm2: jsonNumber(area_m2, MM2) })),
    sprayed_mL: jsonNumber(account.sprayed_m3, ML),
    landed_mL: jsonNumber(account.landed_m3, ML),
    longestRun_mm: jsonNumber(life.longestRun_m, MM),
    blushMargin_C: jsonNumber(life.blushMargin_K),
    touchDry_s: life.touchDry_s === null ? null : jsonNumber(life.touchDry_s),
  };
}
