import type { CupTime } from '../mix/cupTime.ts';
import { ESTIMATE_STATEMENT } from './cautions.ts';
import { MIX_CAUTIONS } from './mixCautions.ts';
import { batchSentence, cupRangeWords, cupTimeWords, filmSentence, guessSentences, laterSentence, MIX_LIMITS, nowSentence, pourRows, ratioSentence, retarderSentence, solidsSentence, viscosityWords, wantedSentence } from './mixWords.ts';
import type { LaterSeconds, ReportedMixing, ReportedThinning } from './reportedMixing.ts';
import { bulleted, wrapped } from './textLines.ts';
import { textTable } from './textTable.ts';
import { roundedText, type UnitSystem } from './units.ts';

/** What is printed beside a mix. */
export interface MixTextOptions {
  /** The three textbook rules for the blend, which differ up to tenfold. */
  readonly guess?: boolean;
}

/** A mix for pouring, as plain text; lines joined, one newline at the end. */
export function mixText(mixing: ReportedMixing, system: UnitSystem, { guess = false }: MixTextOptions = {}): string {
  const { mix, thinning, thinnerWords } = mixing;
  const said = [retarderSentence(mixing), solidsSentence(mixing), filmSentence(mixing, system), batchSentence(mixing, system)].filter((text) => text !== null);
  const lines = [
    `${mix.name}: ${mix.finish.name}`,
    ...wrapped(ratioSentence(mixing)),
    ...wrapped(`Thinner: ${thinnerWords}.`),
    ...said.flatMap((text) => wrapped(text)),
    ...pourTable(mixing, system),
    '',
    ...(thinning === null ? [] : [...bulleted('Cup', thinningSentences(thinning, system)), '']),
    ...(thinning === null || !guess ? [] : [...bulleted('First guess by the textbook rules', guessSentences(thinning)), '']),
    ...(mix.warnings.length === 0 ? [] : [...bulleted('Warnings', mix.warnings.map(({ text }) => text)), '']),
    ...bulleted('Before mixing', MIX_CAUTIONS),
    '',
    ...wrapped(MIX_LIMITS),
    ...wrapped(ESTIMATE_STATEMENT),
  ];
  return `${lines.join('\n')}\n`;
}

/** What is said of cup, seconds wanted and another temperature. */
export function thinningSentences(thinning: ReportedThinning, system: UnitSystem): string[] {
  const { wanted, later } = thinning;
  return [
    nowSentence(thinning, system),
    ...(wanted === null ? [] : [wantedSentence(wanted, thinning, system)]),
    ...(later === null ? [] : [laterSentence(later, thinning, system)]),
  ];
}

function pourTable(mixing: ReportedMixing, system: UnitSystem): string[] {
  const rows = pourRows(mixing, system);
  if (rows.length === 0) return [];
  return ['', ...textTable([['one pot', 'volume', 'weight', 'fill to', 'scale shows'], ...rows.map(({ part, volume, weight, mark, scale }) => [part, volume, weight, mark, scale])])];
}

/** One reading or one viscosity in a cup. */
export interface ReportedCup {
  readonly viscosity_m2_s: number;
  readonly time: CupTime & { readonly seconds: number };
  /** The same liquid in another cup. */
  readonly other: CupTime | null;
  /** The same mix at another temperature, and the coefficient used. */
  readonly later: LaterSeconds | null;
  readonly sensitivity_K: ReportedThinning['sensitivity_K'];
}

/** A cup's answer as plain text. */
export function cupText({ viscosity_m2_s, time, other, later, sensitivity_K }: ReportedCup, system: UnitSystem): string {
  const { cup } = time;
  const lines = [
    ...wrapped(`${cupTimeWords(time)}: ${viscosityWords(viscosity_m2_s)}.`),
    ...(other === null ? [] : wrapped(`The same liquid: ${cupTimeWords(other)}.`)),
    ...(later === null ? [] : wrapped(laterSentence(later, { sensitivity_K }, system))),
    ...wrapped(`The cup’s formula holds from ${cupRangeWords(cup)}; its standard asks for a liquid at ${roundedText(cup.standard_C)} °C and the time to the first break of the stream. ${cup.source}.`),
  ];
  return `${lines.join('\n')}\n`;
}
