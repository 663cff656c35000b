import type { StepSpec } from '../job/schema.ts';
import type { PresetParts } from './preset.ts';

const PRACTICE = 'common practice';

/** Three coats of lacquer on a sealed or primed panel, sanded before the last. All of it common practice; waits and film taken are ours. */
export function lacquerSteps({ mixes, coat }: PresetParts): StepSpec[] {
  const sprayed = { kind: 'spray', coat, layer: 'colour', mix: mixes.lacquer, share_percent: 100 } as const;
  return [
    { kind: 'sand', id: 'scuff', name: 'Scuff the sealed or primed surface, wipe it clean', grit: 320, wet: false, removes_um: 0, keepOff: ['sharp edges'], wait_h: 0, source: `${PRACTICE}: 320 to 400` },
    { ...sprayed, id: 'lacquer-1', name: 'First lacquer', wait_h: 2, source: `${PRACTICE}; 2 h: Assumed` },
    { ...sprayed, id: 'lacquer-2', name: 'Second lacquer', wait_h: 4, source: `${PRACTICE}; 4 h before sanding: Assumed, as the circular’s for aluminium dope` },
    { kind: 'sand', id: 'level', name: 'Level, wet', grit: 400, wet: true, removes_um: 3, keepOff: ['sharp edges'], wait_h: 0, source: `${PRACTICE}: 320 to 400 between colour coats; film taken: Assumed` },
    { ...sprayed, id: 'lacquer-3', name: 'Third lacquer', wait_h: 24, source: `${PRACTICE}; a day before handling: Assumed` },
  ];
}
