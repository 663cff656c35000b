import type { FanCause, FanFaultKind, FanTest } from '../gun/card/fanFaultCauses.ts';
import type { FanFault } from '../gun/card/fanFaults.ts';
import { roundedText, shownPercent } from './units.ts';
import { listed } from './words.ts';

/** A fault of the fan in words: what it is called, and what its figure measures. */
interface FaultWords {
  readonly title: string;
  readonly figure: (fault: FanFault) => string;
}

export const FAN_FAULT_WORDS: Readonly<Record<FanFaultKind, FaultWords>> = {
  'heavy-ends': { title: 'Heavy ends (split fan)', figure: ({ strength }) => `the middle has ${shownPercent(strength)} less film than the lighter shoulder` },
  'heavy-middle': { title: 'Heavy middle', figure: ({ strength, limit }) => `the exponent across the fan is ${roundedText(strength)}, past ${roundedText(limit)}` },
  'one-sided': { title: 'One-sided', figure: ({ strength }) => `the film leans by ${shownPercent(Math.abs(strength))} toward the ${strength > 0 ? 'larger' : 'smaller'} places` },
  crescent: { title: 'Crescent', figure: ({ strength }) => `the fan's ends stand off its middle by ${shownPercent(Math.abs(strength))} of its depth` },
  fluttering: { title: 'Fluttering width', figure: ({ strength }) => `the width varies by ${shownPercent(strength)} along the travel` },
};

/** What may lie behind a fault, as the end of "look for". */
export const FAN_CAUSE_WORDS: Readonly<Record<FanCause, string>> = {
  'air-over-fluid': 'more air, or a wider fan setting, than the fluid can fill',
  'liquid-too-thin': 'liquid thinned too far',
  'fluid-over-air': 'more fluid than the air can break up',
  'liquid-too-thick': 'liquid too thick or too cold',
  'air-too-low': 'too little air at the cap',
  'nozzle-worn': 'a worn nozzle or needle',
  'horn-plugged': 'a plugged port in a horn of the cap',
  'tip-dried': 'dried finish on one side of the nozzle’s tip',
  'needle-bent': 'a bent needle or a nicked nozzle',
  'nozzle-loose': 'a nozzle that is loose or badly seated, which lets air into the fluid',
  'packing-dry': 'dry or loose needle packing, which lets air into the fluid',
  'cup-low': 'a cup that is low or tipped too far',
  'passage-blocked': 'a blocked vent or fluid passage',
};

/** What to try, as a sentence. */
export const FAN_TEST_WORDS: Readonly<Record<FanTest, string>> = {
  'turn-cap': 'Give the cap half a turn and spray another card: if the shape turns with it, the cap is at fault; if it stays, the nozzle or needle is. Soak and brush a plugged port; no metal picks.',
  'less-air': 'Lower the air, or narrow the fan, a little at a time and spray a card each time; or give more fluid.',
  'more-air': 'Raise the air a little at a time, or give less fluid, and spray a card each time; look at the liquid’s cup seconds.',
  'tighten-and-oil': 'Seat and tighten the nozzle, oil or tighten the packing, fill the cup, clear its vent, and spray another card.',
};

/** A fault in sentences: figure, likely causes, what to try. */
export function fanFaultSentences(fault: FanFault): string[] {
  const { title, figure } = FAN_FAULT_WORDS[fault.kind];
  return [
    `${title}: ${figure(fault)}.`,
    `Look for ${listed(fault.causes.map((cause) => FAN_CAUSE_WORDS[cause]))}.`,
    ...fault.tests.map((test) => FAN_TEST_WORDS[test]),
  ];
}
