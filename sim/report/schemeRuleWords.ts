import { counted } from '../base/counted.ts';
import type { FindingData, SchemeFinding, SchemeRule } from '../scheme/finding.ts';
import { shownPaste } from './pasteWords.ts';
import { ALUMINIUM_GROUND_WORDS, FIX_WORDS } from './schemeWords.ts';
import { shown, shownPercent, shownTime, type UnitSystem } from './units.ts';
import { capitalised, listed } from './words.ts';

/** A finding in words: its name, what was found, and what to do. */
export interface FindingWords {
  readonly title: string;
  readonly found: string;
  readonly act: string;
}

type Data<Rule extends SchemeRule> = Extract<FindingData, { readonly rule: Rule }>;
type Words = { readonly [Rule in SchemeRule]: (data: Data<Rule>, system: UnitSystem) => FindingWords };

/** How grave a finding is, in words. */
export const SEVERITY_WORDS: Readonly<Record<SchemeFinding['severity'], string>> = { stop: 'Put right first', doubt: 'Think again' };

const LACE = 'rib lacing, tape edges, screw heads and sharp edges';

const ORDER_WORDS = {
  'few-clear': ({ count, least }) => ({
    title: 'Too few clear coats',
    found: `${counted(count, 'whole clear coat')}, and the scheme asks for at least ${least}. A coat over the tapes alone does not count.`,
    act: 'Add a clear coat; a fourth where the cloth is not taut or the film not glossy. Clear fills the weave, or pinholes follow.',
  }),
  'few-aluminium': ({ count }) => ({
    title: 'Too few aluminium coats',
    found: `${counted(count, 'whole aluminium coat')} before the first colour, and two are asked for.`,
    act: 'Add aluminium before the colour: it keeps light from the cloth. Leaving it out is not this program’s to allow; ask whoever signs the work off.',
  }),
  'aluminium-before-clear': () => ({
    title: 'Aluminium before clear',
    found: 'Aluminium is laid before any clear coat.',
    act: 'Lay the clear coats first: they hold the cloth and draw it taut; pigment does neither.',
  }),
  'aluminium-after-colour': () => ({
    title: 'Aluminium over colour',
    found: 'Aluminium is laid after a colour coat.',
    act: 'Move it before the colour, where it stops the light.',
  }),
  'clear-over-colour': () => ({
    title: 'Clear over colour',
    found: 'Clear is laid over colour, and its remark does not say what for.',
    act: 'Write the reason in the step’s remark, or leave the coat out: it adds weight, and clear alone weathers first.',
  }),
  'nitrate-over-butyrate': ({ beneath }) => ({
    title: 'Nitrate over butyrate',
    found: `By its name this coat is nitrate, and it lies over “${beneath}”, which is butyrate.`,
    act: 'Nitrate may lie under butyrate, not over it: it peels. Change the order or the dope.',
  }),
  'first-coat-sprayed': ({ nth }) => ({
    title: 'First coats sprayed',
    found: `Clear coat ${nth} is sprayed.`,
    act: 'Brush the first two clear coats, the second at right angles, so that the dope wets the cloth through.',
  }),
  paste: ({ paste_kg_m3, most_kg_m3 }, system) => ({
    title: 'Too much aluminium paste',
    found: `${shownPaste(paste_kg_m3, system)} of unthinned finish, and the most is ${shownPaste(most_kg_m3, system)}.`,
    act: 'Weigh in less. More paste costs adhesion: the film lifts with the masking tape.',
  }),
  'tapes-on-bare-cloth': ({ what }) => ({
    title: 'Set on bare cloth',
    found: `${capitalised(FIX_WORDS[what])} set before the first clear coat.`,
    act: 'Dope first: the cloth must be drawn taut before anything is set on it.',
  }),
  'tapes-before-taut': ({ what, clear, wait_s, least_s }) => ({
    title: 'Set on before the cloth is taut',
    found: `${capitalised(FIX_WORDS[what])} set after ${counted(clear, 'clear coat')} and ${shownTime(wait_s)} at 70 °F; two coats and ${shownTime(least_s)} are usual.`,
    act: 'Wait, or lay the second clear coat first, and feel whether the cloth is taut: no program can.',
  }),
} satisfies Partial<Words>;

const WAIT_WORDS = {
  'wet-beneath': ({ next, wait_s, touchDry_s }) => ({
    title: 'Coat over one still wet',
    found: `“${next}” begins ${shownTime(wait_s)} after this coat, which is dry to touch after ${shownTime(touchDry_s)} in this air.`,
    act: 'Wait longer, or state the two as one cross coat. Solvent shut in blisters, wrinkles and stays soft.',
  }),
  'wait-short': ({ next, wait_s, recoat_s }) => ({
    title: 'Wait shorter than the film needs',
    found: `“${next}” begins ${shownTime(wait_s)} after this coat; by the model it is ready for a coat after ${shownTime(recoat_s)} in this air.`,
    act: 'Wait longer, lay less film, or warm the room. The product sheet’s own time comes before the model’s.',
  }),
  'never-dry': ({ next }) => ({
    title: 'Not dry in the time watched',
    found: `The model does not see this coat ready for “${next}” in the time it watches.`,
    act: 'Lay less film, use a quicker thinner, or warm the room; then test by touch at the edge.',
  }),
  'touch-wet': ({ next, nextKind, wait_s, touchDry_s }) => ({
    title: nextKind === 'sand' ? 'Sanding a film that is wet' : nextKind === 'mask' ? 'Tape on a film that is wet' : 'Work on a film that is wet',
    found: `“${next}” begins ${shownTime(wait_s)} after this coat, which is dry to touch after ${shownTime(touchDry_s)} in this air.`,
    act: 'Wait longer after this coat.',
  }),
  'trade-wait': ({ next, wait_s, least_s }) => ({
    title: 'Wait shorter than the circular’s',
    found: `${shownTime(wait_s)} from this coat to “${next}” at 70 °F, and the circular asks for ${shownTime(least_s)}.`,
    act: 'State a longer wait after this coat.',
  }),
  'mask-early': ({ wait_s, least_s }) => ({
    title: 'Tape on a film not dry overnight',
    found: `The tape goes on ${shownTime(wait_s)} after the coat beneath; ${shownTime(least_s)} is usual, a day is better.`,
    act: 'Let it dry overnight: solvent softens it again, and the tape takes it along. Use low-tack tape, burnish its edge.',
  }),
  'tape-long': ({ wait_s, most_s }) => ({
    title: 'Tape left on too long',
    found: `The tape stays for ${shownTime(wait_s)}; ${shownTime(most_s)} is about the most.`,
    act: 'Pull it once the film has set, back on itself at a low angle, and mask again for the next coat.',
  }),
  'too-late': ({ earliest_s, latest_s }) => ({
    title: 'Latest start passes first',
    found: `The next step may begin ${shownTime(earliest_s)} after this one at the earliest in this air, and ${shownTime(latest_s)} after it at the latest.`,
    act: 'Warm the room, lay less film, or follow what the product sheet says of a film that is past its time.',
  }),
} satisfies Partial<Words>;

const SAND_WORDS = {
  'sand-last-aluminium': () => ({
    title: 'Last aluminium coat sanded',
    found: 'No aluminium follows this sanding.',
    act: 'Sand the aluminium coat before, and leave the last one whole; or add a coat after it.',
  }),
  'sand-through': ({ removes_m, film_m, reaches }, system) => ({
    title: 'Sanded through',
    found: `Sanding takes ${shown(removes_m, 'film', system)} and the layer on top has ${shown(film_m, 'film', system)}: it reaches ${reaches === 'cloth' ? 'what is beneath all coats' : `the ${reaches}`}.`,
    act: 'Take off less, or sand after one more coat. Level only.',
  }),
  'sand-keep-off': ({ missing }) => ({
    title: 'Where not to sand is not said',
    found: `The step does not name ${listed(missing)}.`,
    act: `Write down where not to sand: ${LACE}. They stand proud, and paper cuts through them first.`,
  }),
  'sand-coarse': ({ grit, finest }) => ({
    title: 'Paper too coarse',
    found: `#${grit} on aluminium, and #${finest} or finer is asked for.`,
    act: `Use #${finest} or finer; scratches show through the colour.`,
  }),
} satisfies Partial<Words>;

const AMOUNT_WORDS = {
  'too-thick': ({ film_m, most_m }, system) => ({
    title: 'More film than the limit',
    found: `Up to ${shown(film_m, 'film', system)} dry after this step, and the limit is ${shown(most_m, 'film', system)}.`,
    act: 'Lay lighter coats or fewer of one kind. Too much dope is a structural fault: it pulls the frame.',
  }),
  'too-heavy': ({ weight_kg_m2, most_kg_m2 }, system) => ({
    title: 'Heavier than the limit',
    found: `Up to ${shown(weight_kg_m2, 'areal-weight', system)} after this step over all panels, and the limit is ${shown(most_kg_m2, 'areal-weight', system)}.`,
    act: 'Lay lighter coats, or fewer of one kind. Moving surfaces must be checked for balance after refinishing.',
  }),
  'heavy-coat': ({ weight_kg_m2, most_kg_m2 }, system) => ({
    title: 'Heavier than a usual coat',
    found: `${shown(weight_kg_m2, 'areal-weight', system)} in one coat; ${shown(most_kg_m2, 'areal-weight', system)} is the most that is usual for this finish.`,
    act: 'Two lighter coats leave the same film, dry sooner and shut in less solvent.',
  }),
  retarder: ({ share, most }) => ({
    title: 'Much retarder',
    found: `The retarder is ${shownPercent(share)} of the thinner; ${shownPercent(most)} is thought the most, 5 to 15 % usual.`,
    act: 'Use less and warm the room instead: the film stays soft for long.',
  }),
} satisfies Partial<Words>;

const COLOUR_WORDS = {
  'dark-first': ({ dark, light, lightOnTop_m, darkOnTop_m }, system) => ({
    title: 'Darker colour first',
    found: `${light} takes ${hidingWords(lightOnTop_m, system)} to hide ${dark}; the other way round ${dark} takes ${hidingWords(darkOnTop_m, system)}.`,
    act: 'Lay the lighter colour first and the darker over it.',
  }),
  bleeds: ({ colour, over }) => ({
    title: 'A colour that stains, beneath another coat',
    found: `${colour} stains coats laid over it, and “${over}” is one.`,
    act: 'Put it on last, or lay a barrier of aluminium between. Try it on a test panel first.',
  }),
  'shows-through': ({ colour, isOverAluminium, film_m, hiding_m, contrast, moreCoats }, system) => ({
    title: 'What is beneath shows through',
    found: `${colour} has ${shown(film_m, 'film', system)} dry in all${isOverAluminium ? ` over ${ALUMINIUM_GROUND_WORDS}` : ''}, contrast ${contrast.toFixed(2)}; it hides (0.98) from ${hidingWords(hiding_m, system)}.`,
    act: Number.isFinite(moreCoats) ? `${counted(moreCoats, 'more coat')} like these would hide, at their weight; or a ground nearer to the colour.` : 'No number of coats hides it by the stated optics: look at the colour’s figures.',
  }),
} satisfies Partial<Words>;

const WORDS: Words = { ...ORDER_WORDS, ...WAIT_WORDS, ...SAND_WORDS, ...AMOUNT_WORDS, ...COLOUR_WORDS };

/** A finding in words of the reader's units. */
export function schemeFindingWords(finding: SchemeFinding, system: UnitSystem): FindingWords {
  return (WORDS[finding.rule] as (data: FindingData, system: UnitSystem) => FindingWords)(finding, system);
}

function hidingWords(film_m: number, system: UnitSystem): string {
  return Number.isFinite(film_m) ? `${shown(film_m, 'film', system)} dry` : 'more film than anybody lays';
}
