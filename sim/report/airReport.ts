import type { AirAnswer } from '../air/airAnswer.ts';
import type { DryingFactor } from '../air/dryingFactor.ts';
import type { Warning } from '../base/errors.ts';
import { ESTIMATE_STATEMENT, SPRAY_CAUTIONS } from './cautions.ts';
import { bulleted, wrapped } from './textLines.ts';
import { textTable } from './textTable.ts';
import { roundedText, shownPercent, shownTemperature, shownTemperatureStep, type UnitSystem } from './units.ts';
import { listed } from './words.ts';

/** A factor so near 1 says nothing. */
const SAME_RATIO = 0.05;

/** Said wherever warmth is advised. */
export const HEATER_CAUTION = 'Never warm the room with an open flame or an unvented heater: it can light the vapour, and burnt fuel adds water to the air.';

/** Cautions for one who reads the air and then warms the room or sprays in it. */
export function airCautions({ air, mix }: Pick<AirAnswer, 'air' | 'mix'>): readonly string[] {
  return [
    ...flashCaution(mix, air.temperature_K),
    HEATER_CAUTION,
    ...SPRAY_CAUTIONS,
  ];
}

/** Said where a solvent of the mix is above its flash point in this air: of usual thinners nearly always. */
function flashCaution({ solvents }: AirAnswer['mix'], air_K: number): string[] {
  const above = solvents.filter(({ solvent }) => solvent.flashPoint_K.value <= air_K).map(({ solvent }) => solvent.name);
  if (above.length === 0) return [];
  return [`The air is above the flash point of ${listed(above)}: a spark can light the vapour.`];
}

/** Doubts of the air and of the mix. */
export function airWarnings({ air, mix }: Pick<AirAnswer, 'air' | 'mix'>): readonly Warning[] {
  return [...air.warnings, ...mix.warnings];
}

/** What the air does to a film of the mix, as plain text; lines joined, one newline at the end. */
export function airText(answer: AirAnswer, system: UnitSystem): string {
  const warnings = airWarnings(answer).map(({ text }) => text);
  const lines = [
    ...wrapped(headSentence(answer, system)),
    '',
    ...figureTable(answer, system),
    '',
    ...wrapped(dryingSentence(answer.drying)),
    '',
    ...bulleted('What was tried', triedSentences(answer, system)),
    '',
    ...(warnings.length === 0 ? [] : [...bulleted('Warnings', warnings), '']),
    ...bulleted('Before spraying', airCautions(answer)),
    '',
    ...wrapped('The film is given no heat but the air’s, and none of its solvent is gone yet: a real film on metal or board is warmer, and a retarder also keeps a film open after the cold has passed, which is not counted here.'),
    ...wrapped(ESTIMATE_STATEMENT),
  ];
  return `${lines.join('\n')}\n`;
}

function headSentence({ air, mix, faces, film_K, blushMargin_K }: AirAnswer, system: UnitSystem): string {
  const where = faces === 2 ? 'open cloth' : 'a backed panel';
  const film = `A fresh film of ${mix.name} on ${where} falls to ${shownTemperature(film_K, system)}`;
  const dew = `the dew point, ${shownTemperature(air.dewPoint_K, system)}`;
  return blushMargin_K < 0
    ? `${film}, ${shownTemperatureStep(-blushMargin_K, system)} below ${dew}: it can blush.`
    : `${film}, ${shownTemperatureStep(blushMargin_K, system)} above ${dew}: no blush is expected.`;
}

function figureTable({ air, film_K, blushMargin_K, criticalHumidityFraction }: AirAnswer, system: UnitSystem): string[] {
  return textTable([
    ['air', shownTemperature(air.temperature_K, system)],
    ['relative humidity', shownPercent(air.relativeHumidityFraction)],
    ['dew point', shownTemperature(air.dewPoint_K, system)],
    ['wet bulb', shownTemperature(air.wetBulb_K, system)],
    ['film', shownTemperature(film_K, system)],
    ['film less dew point', shownTemperatureStep(blushMargin_K, system)],
    ['humidity at which it can blush', shownPercent(criticalHumidityFraction)],
  ]);
}

/** Both drying factors, and how they differ. */
export function dryingSentence({ ruleRatio, modelRatio }: DryingFactor): string {
  if (Math.abs(ruleRatio - 1) < SAME_RATIO && Math.abs(modelRatio - 1) < SAME_RATIO) return 'Drying: waits are those stated for 70 °F (21.1 °C).';
  const than = Math.abs(Math.log(modelRatio)) < Math.abs(Math.log(ruleRatio)) ? 'changes less' : 'changes more';
  return (
    `Drying: the trade’s rule (twice as long for each 10 °F colder) multiplies waits stated for 70 °F (21.1 °C) by ${roundedText(ruleRatio)}. ` +
    `The first evaporation of this mix ${than}, by a factor of ${roundedText(modelRatio)} in the model; ` +
    'the rule covers the slow loss from the set film too. Plan with the longer wait.'
  );
}

function triedSentences(answer: AirAnswer, system: UnitSystem): string[] {
  return [warmingSentence(answer, system), ...answer.retarders.map((tried) => {
    const head = `${tried.retarder}, ${shownPercent(tried.retarderFraction)} of the thinner, as retarder: film ${shownTemperature(tried.film_K, system)}`;
    return `${head}, ${marginWords(tried.blushMargin_K, system)}.`;
  })];
}

function marginWords(margin_K: number, system: UnitSystem): string {
  return margin_K < 0 ? `still ${shownTemperatureStep(-margin_K, system)} below the dew point` : `${shownTemperatureStep(margin_K, system)} above the dew point`;
}

function warmingSentence({ air, blushMargin_K, warmEnough_K, ceiling_K }: AirAnswer, system: UnitSystem): string {
  if (blushMargin_K >= 0) return 'Warming the room: not needed against blush.';
  const ceiling = shownTemperature(ceiling_K, system);
  if (warmEnough_K === null) {
    return ceiling_K <= air.temperature_K
      ? `Warming the room: it is at or above the ceiling of ${ceiling} already.`
      : `Warming the room with the same moisture: not enough up to the ceiling of ${ceiling}.`;
  }
  return `Warming the room with the same moisture: the film stays clear of the dew point from ${shownTemperature(warmEnough_K, system)} on (ceiling ${ceiling}).`;
}
