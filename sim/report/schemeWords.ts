import { ALUMINIUM_REFLECTANCE } from '../materials/aluminiumFilm.ts';
import type { StepSpec } from '../job/schema.ts';
import type { FixedThing, Layer } from '../scheme/finding.ts';
import { shown, shownPercent, shownTime, type UnitSystem } from './units.ts';
import { shownPaste } from './pasteWords.ts';

/** What is set on cloth, more than one of it. */
export const FIX_WORDS: Readonly<Record<FixedThing, string>> = { tape: 'tapes', patch: 'patches', ring: 'inspection rings', grommet: 'drain grommets', lacing: 'rib lacing' };

/** Kinds of film. */
export const LAYER_WORDS: Readonly<Record<Layer, string>> = { primer: 'primer', clear: 'clear', aluminium: 'aluminium', colour: 'colour' };

/** Kinds of step, as a list shows them. */
export const STEP_KIND_WORDS: Readonly<Record<StepSpec['kind'], string>> = { brush: 'Brush', spray: 'Spray', fix: 'Set on', sand: 'Sand', mask: 'Mask', unmask: 'Unmask' };

/** What a coat is, as this program counts: AC 43.13-1B 2-20 and 2-21. */
export const COAT_DEFINITIONS: readonly (readonly [word: string, meaning: string])[] = [
  ['Pass', 'strokes side by side in one direction over the panel, each lapping half of the one before.'],
  ['Single coat', 'one pass.'],
  ['Double coat, cross coat', 'a second pass before the first has flashed off and dries dust-free; a cross coat where it runs at right angles. It counts as one coat.'],
  ['Coat in this scheme', 'one step of brush or gun, a cross coat where its strokes say so. A gun-load is no coat: several loads may lay one coat.'],
];
export const COAT_DEFINITIONS_SOURCE = 'AC 43.13-1B 2-20 and 2-21, in our own words.';

/** Said wherever leaving a coat out is in question. */
export const LEAVING_OUT = 'Leaving a coat out is not this program’s to allow: the approved data and a licensed person decide.';

/** An aluminium film as the ground of a colour, with that its brightness is assumed. */
export const ALUMINIUM_GROUND_WORDS = `aluminium, taken as ${shownPercent(ALUMINIUM_REFLECTANCE.value)} bright, assumed`;

/** What no rule here can look into. */
export const NOT_CHECKED: readonly string[] = [
  'Which dope is in which tin: nitrate over butyrate is found only where the name of a step or a mix says so.',
  'Whether the cloth is taut and the film glossy after the third clear coat; a fourth is the circular’s answer where it is not.',
  'Whether brushed coats cross each other, wet the cloth through, and run on its back.',
  'Adhesion, age and acidity of the dope (at most 0.06 % as acetic acid, AC 43.13-1B 2-20b), and whether the products suit each other: ask the data sheet.',
  'Whether tapes, grommets and lacing are where the approved data want them.',
];

/** The test that decides about light, whatever a model says. */
export const FIELD_LIGHT_RULE = 'Field test: no visible light may pass through the fabric (AC 43.13-1B 2-21g). Look from inside, in the dark, with a lamp behind.';

const LAYER_REASONS: Readonly<Record<Layer, string>> = {
  primer: 'It grips the surface and gives the next coat something to hold; sanded, it makes the surface level.',
  clear: 'Clear dope fills the weave, holds the cloth to the frame and draws it taut. Too little leaves pinholes and slack cloth; too much pulls the frame.',
  aluminium: 'Aluminium flakes keep light, which rots cloth and dope, from getting through. They also show where sanding goes, and stand between a colour that stains and the coats around it.',
  colour: 'Colour gives the look and sheds weather. It adds weight, and nothing to the strength.',
};

const KIND_REASONS: Readonly<Record<Exclude<StepSpec['kind'], 'brush' | 'spray'>, string>> = {
  fix: 'Tapes and patches cover stitches, edges and openings; grommets let water out; all are set in dope on taut cloth.',
  sand: 'Sanding levels the film. It takes film off, so it stays off what stands proud, and off the last aluminium coat.',
  mask: 'Tape keeps the next colour off what is to stay as it is. The film beneath must be dry through, or the tape takes it along.',
  unmask: 'Tape comes off as soon as the film has set: left on, it holds harder and leaves its glue.',
};

/** Why a step is there. */
export function stepReason(spec: StepSpec): string {
  if (spec.kind !== 'brush' && spec.kind !== 'spray') return KIND_REASONS[spec.kind];
  return `${LAYER_REASONS[spec.layer]}${spec.kind === 'brush' ? ' Brushed, it is worked into the cloth, which a gun cannot do.' : ''}`;
}

/** What a step says of itself beyond film and wait: paste, share, tape, paper. */
export function stepDetails(spec: StepSpec, system: UnitSystem): string[] {
  switch (spec.kind) {
    case 'brush':
    case 'spray':
      return [
        LAYER_WORDS[spec.layer],
        ...(spec.share_percent < 100 ? [`${shownPercent(spec.share_percent / 100)} of the area`] : []),
        ...(spec.paste_g_L === undefined ? [] : [`paste ${shownPaste(spec.paste_g_L, system)}`]),
      ];
    case 'fix': return [
      FIX_WORDS[spec.what],
      ...(spec.width_mm === undefined ? [] : [`${shown(spec.width_mm / 1000, 'length', system)} wide`]),
      ...(spec.count === undefined ? [] : [`${spec.count} of them`]),
      ...(spec.weight_g === undefined ? [] : [shown(spec.weight_g / 1000, 'weight', system)]),
    ];
    case 'sand': return [
      `#${spec.grit} ${spec.wet ? 'wet' : 'dry'}`, `takes ${shown(spec.removes_um * 1e-6, 'film', system)}`,
      spec.keepOff.length === 0 ? 'nowhere named to keep off' : `keep off ${spec.keepOff.join(', ')}`,
    ];
    case 'mask': return [`${shownPercent(spec.share_percent / 100)} left open`];
    case 'unmask': return [];
  }
}

/** The wait after a step, as stated: `2 h at 70 °F`. */
export function waitWords({ wait_h, latest_h }: Pick<StepSpec, 'wait_h' | 'latest_h'>): string {
  const wait = wait_h === 0 ? 'no wait' : `${shownTime(wait_h * 3600)} at 70 °F`;
  return latest_h === undefined ? wait : `${wait}, next by ${shownTime(latest_h * 3600)}`;
}
