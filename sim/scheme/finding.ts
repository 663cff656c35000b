import type { StepSpec } from '../job/schema.ts';
import type { PlannedCoat } from './planned.ts';

/** Kinds of layer. */
export type Layer = PlannedCoat['layer'];

/** What is set on cloth. */
export type FixedThing = Extract<StepSpec, { readonly kind: 'fix' }>['what'];

/** What a rule found, with the figures that its words need; lengths in m, times in s, weights in kg/m². */
export type FindingData =
  | { readonly rule: 'few-clear'; readonly count: number; readonly least: number }
  | { readonly rule: 'few-aluminium'; readonly count: number }
  | { readonly rule: 'aluminium-before-clear' }
  | { readonly rule: 'aluminium-after-colour' }
  | { readonly rule: 'clear-over-colour' }
  | { readonly rule: 'nitrate-over-butyrate'; readonly beneath: string }
  | { readonly rule: 'first-coat-sprayed'; readonly nth: number }
  | { readonly rule: 'paste'; readonly paste_kg_m3: number; readonly most_kg_m3: number }
  | { readonly rule: 'tapes-on-bare-cloth'; readonly what: FixedThing }
  | { readonly rule: 'tapes-before-taut'; readonly what: FixedThing; readonly clear: number; readonly wait_s: number; readonly least_s: number }
  | { readonly rule: 'wet-beneath'; readonly next: string; readonly wait_s: number; readonly touchDry_s: number }
  | { readonly rule: 'wait-short'; readonly next: string; readonly wait_s: number; readonly recoat_s: number }
  | { readonly rule: 'never-dry'; readonly next: string }
  | { readonly rule: 'touch-wet'; readonly next: string; readonly nextKind: StepSpec['kind']; readonly wait_s: number; readonly touchDry_s: number }
  | { readonly rule: 'trade-wait'; readonly next: string; readonly wait_s: number; readonly least_s: number }
  | { readonly rule: 'mask-early'; readonly wait_s: number; readonly least_s: number }
  | { readonly rule: 'tape-long'; readonly wait_s: number; readonly most_s: number }
  | { readonly rule: 'too-late'; readonly earliest_s: number; readonly latest_s: number }
  | { readonly rule: 'sand-last-aluminium' }
  | { readonly rule: 'sand-through'; readonly removes_m: number; readonly film_m: number; readonly reaches: Layer | 'cloth' }
  | { readonly rule: 'sand-keep-off'; readonly missing: readonly string[] }
  | { readonly rule: 'sand-coarse'; readonly grit: number; readonly finest: number }
  | { readonly rule: 'too-thick'; readonly film_m: number; readonly most_m: number }
  | { readonly rule: 'too-heavy'; readonly weight_kg_m2: number; readonly most_kg_m2: number }
  | { readonly rule: 'heavy-coat'; readonly weight_kg_m2: number; readonly most_kg_m2: number }
  | { readonly rule: 'retarder'; readonly share: number; readonly most: number }
  | { readonly rule: 'dark-first'; readonly dark: string; readonly light: string; readonly lightOnTop_m: number; readonly darkOnTop_m: number }
  | { readonly rule: 'bleeds'; readonly colour: string; readonly over: string }
  | { readonly rule: 'shows-through'; readonly colour: string; readonly isOverAluminium: boolean; readonly film_m: number; readonly hiding_m: number; readonly contrast: number; readonly moreCoats: number };

export type SchemeRule = FindingData['rule'];

/** A rule of the trade that a scheme breaks, or may break. */
export type SchemeFinding = FindingData & {
  /** The step it is about. */
  readonly stepIndex: number;
  /** JSON pointer into the job, to the key where one is at fault. */
  readonly pointer: string;
  /** `stop`: do not begin until it is put right, or the data sheet says otherwise. `doubt`: think again. */
  readonly severity: 'stop' | 'doubt';
  /** Whose rule it is. */
  readonly source: string;
};

const CIRCULAR = 'AC 43.13-1B';
const PRACTICE = 'common practice';
const MODEL = 'drying model of this program, in the job’s own air';

/** Whose rule each is. */
export const RULE_SOURCES: Readonly<Record<SchemeRule, string>> = {
  'few-clear': `${CIRCULAR} 2-21a to f: two brushed and one sprayed, a fourth where the cloth is not taut or not glossy; this scheme's own least`,
  'few-aluminium': `${CIRCULAR} 2-21g: two coats`,
  'aluminium-before-clear': `${CIRCULAR} 2-21, order of its paragraphs a to i`,
  'aluminium-after-colour': `${CIRCULAR} 2-21, order of its paragraphs a to i`,
  'clear-over-colour': PRACTICE,
  'nitrate-over-butyrate': 'trade texts, from memory: nitrate may go under butyrate, not over it',
  'first-coat-sprayed': `${CIRCULAR} 2-21a and b: the first two are brushed`,
  paste: `${CIRCULAR} 2-21g: 3 oz of 325-mesh paste to the US gallon of unthinned clear`,
  'tapes-on-bare-cloth': `${CIRCULAR} 2-13: tapes only after the first dope has drawn the cloth taut`,
  'tapes-before-taut': `${CIRCULAR} 2-13; two coats and the wait of 2 h from memory, 2-21c`,
  'wet-beneath': `${MODEL}; prevention of trapped solvent, FAA airframe handbook, paint chapter`,
  'wait-short': `${MODEL}; recoat taken as 18 % of solvent left (assumed)`,
  'never-dry': MODEL,
  'touch-wet': MODEL,
  'trade-wait': `${CIRCULAR} 2-21g (1 h at 70 °F between aluminium coats) and 2-21h (4 h before sanding)`,
  'mask-early': `${PRACTICE}: dry overnight before tape, a day is better`,
  'tape-long': `${PRACTICE}: tape should not sit more than about a day`,
  'too-late': 'the latest start that the step itself states, waits stretched by the rule of AC 43.13-1B 2-21 (double for each 10 °F below 70)',
  'sand-last-aluminium': `${CIRCULAR} 2-21h`,
  'sand-through': `${CIRCULAR} 2-21h: level only, never through to clear`,
  'sand-keep-off': `${CIRCULAR} 2-21h: never over screw heads, rib lacing, sharp edges`,
  'sand-coarse': `${CIRCULAR} 2-21h: #280 or finer`,
  'too-thick': "this scheme's own limit; AC 43.13-1B 2-20: an over-thick film can warp a light frame",
  'too-heavy': "this scheme's own limit; AC 43.13-1B 2-20: an over-thick film can warp a light frame",
  'heavy-coat': 'K. D. Wood, Airplane Design, 8th ed. 1947, weights of coating as quoted; "per coat" is read from whole schedules',
  retarder: `${PRACTICE}: 5 to 15 % of the thinner`,
  'dark-first': 'Kubelka and Munk 1931: film that hides, both ways round; common practice: lighter colour first',
  bleeds: `${PRACTICE}: put reds and maroons on last; a coat that stains needs a barrier`,
  'shows-through': 'Kubelka and Munk 1931; hides at a contrast of 0.98, ISO 6504-1:2019',
};

/** A finding about a step: its data, where, how grave. */
export function findingAt(step: { readonly pointer: string }, stepIndex: number, severity: 'stop' | 'doubt', data: FindingData, key?: string): SchemeFinding {
  return { ...data, stepIndex, severity, pointer: key === undefined ? step.pointer : `${step.pointer}/${key}`, source: RULE_SOURCES[data.rule] };
}
