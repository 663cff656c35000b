import type { Target } from '../verdict/target.ts';
import type { Fault, FaultKind } from '../verdict/verdict.ts';
import { causeText } from './causeText.ts';
import { cureText } from './cureText.ts';
import { pastLimit, worstText } from './faultFigures.ts';
import { coatFaults, type ReportedCoat } from './reported.ts';
import { shown, shownPercent, shownPlace, type UnitSystem } from './units.ts';
import { FAULT_PLURALS, FAULT_WORDS, PLACED_FAULTS, capitalised, listed } from './words.ts';

/** A fault in three sentences. */
export interface FaultSentences {
  /** Kind, size, place, worst value and limit. */
  readonly what: string;
  readonly cause: string;
  readonly cure: string;
}

/** The coat in one sentence: how much of the panel is inside the limits, and the worst of the rest. */
export function verdictSentence(coat: ReportedCoat, system: UnitSystem): string {
  const { setting, verdict, strokes } = coat;
  const { target } = setting;
  const faults = coatFaults(coat);
  const mean = target.film === 'wet' ? verdict.wet.mean_m : verdict.dry.mean_m;
  const film = `${shown(mean, 'film', system)} ${target.film} on average against a target of ${shown(target.thickness_m, 'film', system)}`;
  const share = shownPercent(verdict.inTargetFraction);
  if (strokes.measures.length === 0) return 'No stroke was sprayed, so there is no film to judge.';
  const [worst] = faults;
  if (worst === undefined) return `No fault: ${share} of the panel is inside the limits, ${film}.`;
  return `${share} of the panel is inside the limits, ${film}; ${tally(faults)}. Worst: ${worstOf(worst, target, system)}.`;
}

/** A fault with its cause and its cure in the trade's words; strokes are numbered from 1. */
export function faultSentences(fault: Fault, target: Target, system: UnitSystem): FaultSentences {
  const zones = fault.zones.length === 1 ? '' : ` in ${fault.zones.length} zones`;
  const size = `${shown(fault.area_m2, 'area', system)}${zones}`;
  const [worst] = fault.zones;
  const past = worst === undefined ? '' : `, ${pastLimit(worst, system)}`;
  return {
    what: `${capitalised(worstOf(fault, target, system))}${past}; ${size}.`,
    cause: causeText(fault, system),
    cure: cureText(fault, target, system),
  };
}

/** `heavy spot at x 410, y 620 mm: 88 µm wet`. */
function worstOf({ kind, zones }: Fault, target: Target, system: UnitSystem): string {
  const [worst] = zones;
  if (worst === undefined) return FAULT_WORDS[kind];
  return `${FAULT_WORDS[kind]} at ${shownPlace(worst.at_m, system)}: ${worstText(kind, worst.worst, target, system)}`;
}

/** Zones counted by kind, in the order of the faults: `2 heavy spots and 1 thin lap`. */
function tally(faults: readonly Fault[]): string {
  const counts = new Map<FaultKind, number>();
  for (const { kind, zones } of faults) counts.set(kind, (counts.get(kind) ?? 0) + zones.length);
  return listed([...counts].map(([kind, count]) => countWords(kind, count)));
}

function countWords(kind: FaultKind, count: number): string {
  if (PLACED_FAULTS.has(kind)) return `${FAULT_WORDS[kind]} in ${count} ${count === 1 ? 'place' : 'places'}`;
  return `${count} ${count === 1 ? FAULT_WORDS[kind] : FAULT_PLURALS[kind]}`;
}
