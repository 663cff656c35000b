import { roundedText, shown, shownPercent, type UnitSystem } from './units.ts';

/** Evenness of many strokes at one overlap. */
export interface ReportedRipple {
  readonly overlapFraction: number;
  readonly cv: number;
  readonly minOverMax: number;
}

/** How evenly one fan's strokes lie, for words. */
export interface ReportedOverlaps {
  readonly evenest: ReportedRipple;
  readonly flattest: ReportedRipple;
  readonly withoutFirstHarmonic: number | null;
  readonly band: { readonly low: number; readonly high: number } | null;
  /** Most variation, or least share of the heaviest film that the thinnest must have, within which the band lies. */
  readonly limit: { readonly cv: number } | { readonly minOverMax: number };
  readonly half: ReportedRipple;
  readonly twoThirds: ReportedRipple;
  readonly evener: 'half' | 'two-thirds';
  readonly halfOut: number;
  readonly twoThirdsOut: number;
  readonly fixedLap: ReportedRipple & { readonly lap_m: number; readonly idealTaper_m: number };
}

/** What overlap suits a fan, and why texts differ, a sentence each. @param width_m full width of the fan. */
export function overlapSentences(of: ReportedOverlaps, width_m: number, system: UnitSystem): string[] {
  const lap = shown(of.fixedLap.lap_m, 'length', system);
  return [
    `Evenest at ${overlap(of.evenest, width_m, system)}: the film then varies by ${shownPercent(of.evenest.cv)} (CV). The least overlap that is even enough is ${overlap(of.flattest, width_m, system)}, with ${shownPercent(of.flattest.cv)}.`,
    ...(of.withoutFirstHarmonic === null ? [] : [`The stripe of one wave a stroke vanishes at ${points(of.withoutFirstHarmonic)}.`]),
    of.band === null
      ? `No overlap up to 80 % keeps ${limitWords(of)}.`
      : `From ${points(of.band.low)} to ${points(of.band.high)} of overlap keeps ${limitWords(of)}: that is the room for an uneven lap.`,
    `Texts give a half or two thirds. With this fan a half varies by ${shownPercent(of.half.cv)} (${shownPercent(of.halfOut)} where laps are a twentieth of the width out), two thirds by ${shownPercent(of.twoThirds.cv)} (${shownPercent(of.twoThirdsOut)}): ` +
      (of.evener === 'half' ? 'a half is the evener, since one edge falls as the next rises.' : 'two thirds is the evener, since three strokes share each place and the fan’s shape counts less.'),
    `A lap of ${lap}, whatever the fan, is right for a flat-topped fan whose edges taper over ${shown(of.fixedLap.idealTaper_m, 'length', system)}, and for no other; with this fan it leaves ${shownPercent(of.fixedLap.cv)}, thinnest ${shownPercent(of.fixedLap.minOverMax)} of the heaviest.`,
  ];
}

function limitWords({ limit }: ReportedOverlaps): string {
  return 'cv' in limit ? `the variation within ${shownPercent(limit.cv)}` : `the thinnest at ${shownPercent(limit.minOverMax)} of the heaviest or more`;
}

function overlap({ overlapFraction }: ReportedRipple, width_m: number, system: UnitSystem): string {
  return `${points(overlapFraction)} overlap (${shown(overlapFraction * width_m, 'length', system)})`;
}

function points(fraction: number): string {
  return `${roundedText(fraction * 100)} %`;
}
