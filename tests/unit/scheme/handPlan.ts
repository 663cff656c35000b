import { makeAir } from '../../../sim/air/moistAir.ts';
import { defaultMix, USUAL_AIR } from '../../../sim/job/defaults.ts';
import type { ColourSpec, MixSpec, SchemeSpec, StepSpec } from '../../../sim/job/schema.ts';
import { makeMix } from '../../../sim/mix/makeMix.ts';
import type { PlannedCoat, PlannedScheme, PlannedStep, Spread } from '../../../sim/scheme/planned.ts';

/** One step of a scheme planned by hand: what a test changes; the rest is usual. */
export interface HandStep {
  readonly kind: StepSpec['kind'];
  readonly name?: string;
  readonly layer?: PlannedCoat['layer'];
  readonly finish?: string;
  readonly mixName?: string;
  readonly retarder_percent?: number;
  readonly colour?: ColourSpec;
  readonly paste_g_L?: number;
  readonly dry_um?: number;
  readonly share_percent?: number;
  readonly wait_h?: number;
  readonly latest_h?: number;
  readonly work_min?: number;
  readonly touchDry_min?: number | null;
  readonly recoat_min?: number | null;
  readonly removes_um?: number;
  readonly grit?: number;
  readonly keepOff?: readonly string[];
  readonly what?: 'tape' | 'patch' | 'ring' | 'grommet' | 'lacing';
  readonly note?: string;
}

const FINISH: Readonly<Record<PlannedCoat['layer'], string>> = { primer: 'primer', clear: 'clear-dope', aluminium: 'aluminium-dope', colour: 'colour-dope' };
const KEEP_OFF = ['rib lacing', 'tape edges'];
const exactly = (value: number): Spread => ({ value, low: value, high: value });
/** A film is known within 10 %, by hand. */
const about = (value: number): Spread => ({ value, low: 0.9 * value, high: 1.1 * value });
const AREA_M2 = 2;

/** A scheme planned by hand over 2 m² at 21.1 °C, no model run: films, waits and drying times are what the test says. */
export function handPlan(steps: readonly HandStep[], scheme: Partial<SchemeSpec> = {}): PlannedScheme {
  let after_m = exactly(0);
  let added_kg = exactly(0);
  const planned = steps.map((step, k): PlannedStep => {
    const coat = step.kind === 'brush' || step.kind === 'spray' ? handCoat(step) : null;
    const area_m2 = (AREA_M2 * (step.share_percent ?? 100)) / 100;
    const change = coat?.dry_m ?? exactly(step.kind === 'sand' ? -(step.removes_um ?? 3) * 1e-6 : 0);
    after_m = plus(after_m, change, 1);
    if (coat !== null) added_kg = plus(added_kg, coat.weight_kg_m2, area_m2);
    return {
      spec: specOf(step, k), pointer: `/schemes/0/steps/${k}`, area_m2, coat,
      work_s: (step.work_min ?? 10) * 60, workOrigin: { kind: 'typed', words: 'by hand' },
      wait_s: (step.wait_h ?? 2) * 3600, latest_s: step.latest_h === undefined ? null : step.latest_h * 3600,
      after_m, added_kg,
    };
  });
  return {
    scheme: { id: 'hand', name: 'By hand', panels: ['p'], sides: 1, clearCoats: 3, steps: planned.map(({ spec }) => spec), ...scheme },
    air: makeAir({ ...USUAL_AIR, temperature_C: 190 / 9 }, '/air'),
    area_m2: AREA_M2, steps: planned, warnings: [],
  };
}

function plus(a: Spread, b: Spread, times: number): Spread {
  return { value: a.value + b.value * times, low: a.low + b.low * times, high: a.high + b.high * times };
}

function handCoat(step: HandStep): PlannedCoat {
  const layer = step.layer ?? 'clear';
  const spec: MixSpec = { ...defaultMix('m', step.mixName ?? 'a mix'), finish: step.finish ?? FINISH[layer], ...(step.retarder_percent === undefined ? {} : { retarder: { solvent: 'n-butanol', percent: step.retarder_percent } }) };
  const mix = makeMix(spec, '/mixes/0');
  const dry_m = about((step.dry_um ?? 20) * 1e-6);
  const density = mix.finish.solidsDensity_kg_m3.value;
  const minutes = (value: number | null | undefined, usual: number): number | null => (value === null ? null : (value ?? usual) * 60);
  return {
    layer, mix, mixId: 'm', coatId: step.kind === 'spray' ? 'c' : null, setUpName: step.kind === 'spray' ? 'a gun' : null,
    colour: step.colour ?? null, paste_kg_m3: step.paste_g_L ?? null,
    wet_m: about(dry_m.value / mix.volumeSolidsFraction), dry_m, filmOrigin: { kind: 'typed', words: 'by hand' },
    weight_kg_m2: { value: dry_m.value * density, low: dry_m.low * density, high: dry_m.high * density },
    landedFraction: 0.65, liquid_m3: about(1e-4), spray_s: 60,
    touchDry_s: minutes(step.touchDry_min, 10), recoat_s: minutes(step.recoat_min, 40), dryOrigin: { kind: 'typed', words: 'by hand' },
  };
}

function specOf(step: HandStep, k: number): StepSpec {
  const shared = { id: `s${k}`, name: step.name ?? `Step ${k + 1}`, wait_h: step.wait_h ?? 2, ...(step.note === undefined ? {} : { note: step.note }) };
  const coat = { layer: step.layer ?? 'clear', share_percent: step.share_percent ?? 100 } as const;
  switch (step.kind) {
    case 'brush': return { kind: 'brush', ...shared, ...coat, mix: 'm', dry_um: step.dry_um ?? 20, within_percent: 10, loss_percent: 10 };
    case 'spray': return { kind: 'spray', ...shared, ...coat, coat: 'c' };
    case 'fix': return { kind: 'fix', ...shared, what: step.what ?? 'tape' };
    case 'sand': return { kind: 'sand', ...shared, grit: step.grit ?? 280, wet: true, removes_um: step.removes_um ?? 3, keepOff: [...(step.keepOff ?? KEEP_OFF)] };
    case 'mask': return { kind: 'mask', ...shared, share_percent: step.share_percent ?? 20 };
    case 'unmask': return { kind: 'unmask', ...shared };
  }
}

/** Three clear, two aluminium, three colour, in the circular's order and waits: nothing to say against it. */
export const SOUND_STEPS: readonly HandStep[] = [
  { kind: 'brush', name: 'Clear 1' },
  { kind: 'brush', name: 'Clear 2' },
  { kind: 'fix', name: 'Tapes', wait_h: 0 },
  { kind: 'spray', name: 'Clear 3' },
  { kind: 'spray', layer: 'aluminium', name: 'Aluminium 1', wait_h: 4, paste_g_L: 22.5 },
  { kind: 'sand', name: 'Level', wait_h: 0 },
  { kind: 'spray', layer: 'aluminium', name: 'Aluminium 2', paste_g_L: 22.5 },
  { kind: 'spray', layer: 'colour', name: 'Colour 1' },
  { kind: 'spray', layer: 'colour', name: 'Colour 2' },
  { kind: 'spray', layer: 'colour', name: 'Colour 3' },
];

/** The sound steps with one of them changed, by its name. */
export function changedStep(name: string, change: Partial<HandStep>): HandStep[] {
  return SOUND_STEPS.map((step) => (step.name === name ? { ...step, ...change } : step));
}

/** The sound steps without those of these names. */
export function without(...names: readonly string[]): HandStep[] {
  return SOUND_STEPS.filter(({ name }) => !names.includes(name ?? ''));
}
