import type { SpillAnswer } from '../air/spill.ts';
import type { VapourCourse } from '../air/roomVapour.ts';
import type { ReportedVapour } from './reportedVapour.ts';
import { bulleted, wrapped } from './textLines.ts';
import { textTable } from './textTable.ts';
import { roundedText, shown, shownPercent, shownTemperature, type UnitSystem } from './units.ts';
import {
  about, aboutPercent, aboutShown, courseSentences, faceSentence, fanSentence, limitSentences, SHIPYARD_RULE, shutSentence, solventRows, solventSentence, VAPOUR_ASSUMPTIONS, VAPOUR_CAUTIONS,
  VAPOUR_DECIDES, VAPOUR_STATEMENT, vapourSentence,
} from './vapourWords.ts';

/** Minutes printed of a course: the first ones, then ever fewer. */
const PRINTED_MINUTES = [1, 2, 3, 5, 10, 15, 20, 30, 45, 60, 90, 120, 180, 240];

/** Liquid evaporating in a room, as plain text; one newline at the end. */
export function spillText(answer: SpillAnswer, system: UnitSystem): string {
  const { spill, shut, course, face, quarter_m3, tenth_m3, exposure_m3, rule_m3 } = answer;
  const { blendLel, otherLel, airFraction, unlimited } = shut;
  const other = otherLel === blendLel ? '' : ` By the higher published limit, ${roundedText(otherLel * 100)} %, it is ${shownPercent(airFraction / otherLel)}; the lower is used.`;
  const lines = [
    ...wrapped(`${shutSentence(shut, system)}${other}`),
    '',
    ...wrapped(`In a room of ${shown(spill.room_m3, 'room', system)} at ${shownTemperature(spill.air.temperature_K, system)}, lower explosive limit of this vapour ${roundedText(blendLel * 100)} %.`),
    '',
    ...textTable(solventRows(shut.parts, system)),
    '',
    ...bulleted('Limits, lowest first', limitSentences(shut.parts)),
    ...unlimitedLines(unlimited),
    '',
    ...bulleted('Air that all of it asks for', [
      `to a quarter of the lower explosive limit: ${aboutShown(quarter_m3, 'room', system)}${rule_m3 === null ? '' : `; with the fire rule's own table values ${aboutShown(rule_m3, 'room', system)}`}`,
      `to a tenth of it (${SHIPYARD_RULE}): ${aboutShown(tenth_m3, 'room', system)}`,
      `to the exposure limits, mixing factor ${roundedText(spill.mixing)}: ${aboutShown(exposure_m3, 'room', system)}`,
    ]),
    '',
    ...(course === null ? [] : [...courseLines(course), '']),
    ...(face === null ? [] : [...wrapped(faceSentence(face, system)), '']),
    ...closing(),
  ];
  return `${lines.join('\n')}\n`;
}

/** A coat's vapour minute by minute, as plain text. */
export function coatVapourText(reported: ReportedVapour, system: UnitSystem): string {
  const { solvent, course, shut, needed, face, room, warming_W_10K } = reported;
  const lines = [
    solvent.name,
    ...wrapped(vapourSentence(course)),
    '',
    ...wrapped(solventSentence(solvent, system)),
    ...wrapped(fanSentence(room, warming_W_10K, system)),
    '',
    ...courseLines(course),
    '',
    ...bulleted(`Outside air asked for, were minute ${needed.busiest + 1} to go on`, [
      `to a quarter of the lower explosive limit: ${aboutShown(needed.quarter_m3_s, 'air-flow', system)}`,
      `to a tenth of it (${SHIPYARD_RULE}): ${aboutShown(needed.tenth_m3_s, 'air-flow', system)}`,
      `to the exposure limits, mixing factor ${roundedText(room.mixing)}: ${aboutShown(needed.exposure_m3_s, 'air-flow', system)}`,
    ]),
    '',
    ...(face === null ? [] : [...wrapped(faceSentence(face, system)), '']),
    ...wrapped(`Fan off. ${shutSentence(shut, system)}`),
    '',
    ...textTable(solventRows(shut.parts, system)),
    '',
    ...bulleted('Limits, lowest first', limitSentences(shut.parts)),
    ...unlimitedLines(shut.unlimited),
    '',
    ...closing(),
  ];
  return `${lines.join('\n')}\n`;
}

/** Every coat of a scheme in a row. */
export function schemeVapourText(coats: readonly ReportedVapour[], system: UnitSystem): string {
  const rows = coats.map(({ solvent, course }) => [
    solvent.name, shown(solvent.used_m3, 'volume', system), aboutPercent(course.lelFraction[course.worstLel] ?? 0), about(course.timesLimit[course.worstLimit] ?? 0), `${course.worstLimit + 1}`,
    course.lowAfter_s === null ? 'not seen' : about(course.lowAfter_s / 60),
  ]);
  const used_m3 = coats.reduce((sum, { solvent }) => sum + solvent.used_m3, 0);
  const [first] = coats;
  const lines = [
    ...wrapped(`${shown(used_m3, 'volume', system)} of solvent in all goes into the air. Each coat by itself, the room clean at its start.`),
    ...(first === undefined ? [] : wrapped(fanSentence(first.room, first.warming_W_10K, system))),
    '',
    ...textTable([['coat', 'solvent', 'most of LEL', 'times limits', 'worst at minute', 'min until below a tenth of both'], ...rows]),
    '',
    ...(first === undefined || first.face === null ? [] : [...wrapped(faceSentence(first.face, system)), '']),
    ...closing(),
  ];
  return `${lines.join('\n')}\n`;
}

function courseLines(course: VapourCourse): string[] {
  const last = course.steps;
  const minutes = [...new Set([...PRINTED_MINUTES, course.worstLel + 1, course.worstLimit + 1])].filter((minute) => minute <= last).sort((a, b) => a - b);
  return [
    ...textTable([['minute', 'of LEL', 'times limits'], ...minutes.map((minute) => [String(minute), aboutPercent(course.lelFraction[minute - 1] ?? 0), about(course.timesLimit[minute - 1] ?? 0)])]),
    '',
    ...courseSentences(course).flatMap((text) => wrapped(text)),
  ];
}

function unlimitedLines(unlimited: readonly string[]): string[] {
  return unlimited.length === 0 ? [] : wrapped(`Not counted against the exposure limits, since none is known here: ${unlimited.join(', ')}.`);
}

function closing(): string[] {
  return [...bulleted('Before spraying', VAPOUR_CAUTIONS), '', ...bulleted('What this rests on', VAPOUR_ASSUMPTIONS), '', ...wrapped(VAPOUR_STATEMENT), ...wrapped(VAPOUR_DECIDES)];
}
