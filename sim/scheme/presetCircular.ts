import type { StepSpec } from '../job/schema.ts';
import type { PresetOptions, PresetParts } from './preset.ts';

const AC = 'AC 43.13-1B';
const OURS = 'film: Assumed, K. D. Wood’s 25 to 37 g/m² a coat, the first thinner as it soaks in';

/**
 * The natural-fibre sequence of FAA AC 43.13-1B, chapter 2, paragraph by paragraph. Waits and grits are the
 * circular’s at 70 °F, their sum 12 h before the first colour coat. It asks for 4 h before sanding and
 * leaves the last aluminium coat unsanded: so the first one is sanded, and waits the 4 h. Films are ours.
 */
export function circularSteps({ mixes, coat }: PresetParts, { fourthClear = false }: PresetOptions): StepSpec[] {
  const brushed = { kind: 'brush', layer: 'clear', mix: mixes.brush, share_percent: 100, within_percent: 30, loss_percent: 10 } as const;
  const sprayed = { kind: 'spray', coat, share_percent: 100 } as const;
  const aluminium = { ...sprayed, layer: 'aluminium', mix: mixes.aluminium, paste_g_L: 22.4 } as const;
  return [
    { ...brushed, id: 'clear-1', name: 'First clear, brushed, thinned to wet the cloth through', dry_um: 15, wait_h: 1, note: 'The cloth turns translucent; no drips or runs on its back. On natural fibre a fungicide goes into this coat.', source: `${AC} 2-21a, 2-21b: begins to draw taut about 1 h after it at 70 °F; ${OURS}` },
    { ...brushed, id: 'clear-2', name: 'Second clear, heavier, brushed across the first', dry_um: 23, wait_h: 2, source: `${AC} 2-21b, at 90° to the first; 2 h before the tapes from memory, 2-21c; ${OURS}` },
    { kind: 'fix', id: 'tapes', name: 'Finishing tapes and reinforcing patches, set in dope', what: 'tape', width_mm: 50.8, wait_h: 0, note: '2 in wide as a rule; at least 3/8 in of bond each side of an attachment.', source: `${AC} 2-13: on cloth drawn taut by the first dope` },
    { kind: 'fix', id: 'rings', name: 'Inspection rings, under patches', what: 'ring', wait_h: 0, note: 'The patch laps the ring by at least 1 in.', source: `${AC} 2-14` },
    { kind: 'fix', id: 'grommets', name: 'Drain grommets at the lowest point of every bay', what: 'grommet', wait_h: 0, note: 'Lowest as the part stands when stored.', source: `${AC} 2-14` },
    { ...brushed, id: 'clear-tapes', name: 'Clear brushed over tapes and patches', dry_um: 22, share_percent: 15, wait_h: 2, note: 'One or more, until they have as much film as the rest and the weave is filled.', source: `${AC} 2-21e; share Assumed; ${OURS}` },
    { ...sprayed, id: 'clear-3', name: 'Third clear, heavy, sprayed', layer: 'clear', mix: mixes.clear, wait_h: 2, note: 'Then look: is the cloth taut and the film glossy? If not, a fourth clear coat.', source: `${AC} 2-21f: after 2 h or more, and 2 h or more after it` },
    ...(fourthClear ? [{ ...sprayed, id: 'clear-4', name: 'Fourth clear, as the cloth is not taut or the film not glossy', layer: 'clear' as const, mix: mixes.clear, wait_h: 2, source: `${AC} 2-21f; its wait as after the third` }] : []),
    { ...aluminium, id: 'aluminium-1', name: 'First aluminium, sprayed', wait_h: 4, note: 'Paste is creamed in dope and thinner 50:50 first.', source: `${AC} 2-21g: at most 3 oz of paste to the US gallon; 2-21h: 4 h before sanding` },
    { kind: 'sand', id: 'level', name: 'Wet sand the first aluminium, level only', grit: 280, wet: true, removes_um: 3, keepOff: ['screw heads', 'rib lacing', 'tape edges', 'sharp edges'], wait_h: 0, note: 'Earth the frame.', source: `${AC} 2-21h: #280 or finer, never through to clear; tape edges: common practice; film taken: Assumed` },
    { ...aluminium, id: 'aluminium-2', name: 'Second aluminium, sprayed, not to be sanded', wait_h: 1, note: 'Field test: no visible light passes through the cloth. If it does, another.', source: `${AC} 2-21g: 1 h or more between coats; 2-21h: the last is not sanded` },
    ...([1, 2, 3] as const).map((n): StepSpec => ({ ...sprayed, id: `colour-${n}`, name: `Colour ${n} of 3, sprayed`, layer: 'colour', mix: mixes.colour, wait_h: n === 3 ? 24 : 2, source: `${AC} 2-21i: three coats, dried between; ${n === 3 ? 'a day before handling: Assumed' : '2 h: Assumed'}` })),
  ];
}
