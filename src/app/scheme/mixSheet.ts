import { computed } from '@preact/signals';
import {
  CELSIUS_0_K,
  backingById, coatLiquid, cupById, CrosscoatError, makeAir, mixSlip, parseRatio, partDensities, planMixing, ratioAsTyped, retarderSteps, specRatio, thinnedSpec, viscosityInRange_m2_s,
  type MixingAsked, type MixRatio, type MixSpec, type PlannedStep, type ReportedMixing, type RetarderStep, type ThinningReading,
} from '../../../sim/index.ts';
import { changeJob } from '../document.ts';
import { withValueAt } from '../path.ts';
import { state } from '../state.ts';
import type { MixPrefs, MixReadingPrefs } from './mixPrefs.ts';
import { lookAtScheme, shownScheme } from './scheme.ts';
import { schemePlan } from './schemePlan.ts';

const CUBIC_METRES_PER_ML = 1e-6;
/** Nobody pours to the fourth figure. */
const POURED_FIGURES = 3;

/** A value, or what is wrong in words. */
export type Read<Value> = { readonly value: Value } | { readonly problem: string };

/** Changes some of what the sheet asks. */
export function askMix(changed: Partial<MixPrefs>): void {
  lookAtScheme({ mix: { ...state.scheme.peek().mix, ...changed } });
}

/** Place in the job of the mix that the sheet is about; -1 where the job has none. */
export const sheetMixIndex = computed(() => {
  const { mixes } = state.job.value;
  const found = mixes.findIndex(({ id }) => id === state.scheme.value.mix.mix);
  return found < 0 ? Math.min(0, mixes.length - 1) : found;
});

export const sheetMix = computed<MixSpec | null>(() => state.job.value.mixes[sheetMixIndex.value] ?? null);

/** The ratio that the sheet is about: as typed, else the mix's own. */
export const sheetRatio = computed<Read<MixRatio> | null>(() => {
  const spec = sheetMix.value;
  if (spec === null) return null;
  const { ratio, by } = state.scheme.value.mix;
  return ratio.trim() === '' ? { value: specRatio(spec) } : tried(() => parseRatio(ratio, partDensities(spec), by));
});

/** Steps of the scheme whose coat uses the mix, as planned. */
export const stepsOfMix = computed<readonly PlannedStep[]>(() => {
  const id = sheetMix.value?.id;
  return (schemePlan.plan.value?.steps ?? []).filter(({ coat }) => coat !== null && coat.mixId === id);
});

/** The coat that is mixed for; null for the numbers typed. */
export const stepMixedFor = computed<PlannedStep | null>(() => {
  const { step } = state.scheme.value.mix;
  if (step === 'own') return null;
  return stepsOfMix.value.find(({ spec }) => spec.id === step) ?? stepsOfMix.value[0] ?? null;
});

/** The reader's own readings, each as a viscosity or why it is none; those not taken yet are null. */
export const sheetReadings = computed<readonly (Read<ThinningReading> | null)[]>(() => {
  const { first, second } = state.scheme.value.mix;
  return [first, second].map(readingOf);
});

/** The mix worked out. */
export const sheetMixing = computed<Read<ReportedMixing> | null>(() => {
  const [spec, ratio] = [sheetMix.value, sheetRatio.value];
  if (spec === null || ratio === null) return null;
  if ('problem' in ratio) return ratio;
  return tried(() => planMixing(spec, sheetPointer(), { ...asked(), ratio: ratio.value }));
});

/** What each share of retarder does in the job's air. */
export const sheetRetarders = computed<readonly RetarderStep[]>(() => {
  const [spec, ratio] = [sheetMix.value, sheetRatio.value];
  if (spec === null || ratio === null || 'problem' in ratio) return [];
  const { air, part } = state.job.value;
  const panel = part.panels.find(({ id }) => shownScheme.value?.panels.includes(id)) ?? part.panels[0];
  const steps = tried(() => retarderSteps(thinnedSpec(spec, ratio.value), sheetPointer(), makeAir(air, '/air'), backingById(panel?.backing ?? 'fabric').faces, air.ceiling_C + CELSIUS_0_K));
  return 'value' in steps ? steps.value : [];
});

/** What taking the thinning would write into the job; null where it would change nothing. */
export const takenSpec = computed<Read<MixSpec> | null>(() => {
  const [spec, ratio] = [sheetMix.value, sheetRatio.value];
  if (spec === null || ratio === null || 'problem' in ratio) return null;
  const { read_s, cup, liquid_C } = state.scheme.value.mix;
  const thinned = thinnedSpec(spec, ratio.value);
  if (read_s === null) return thinned === spec ? null : { value: thinned };
  return tried(() => {
    viscosityInRange_m2_s(cupById(cup), read_s);
    return { ...thinned, cup: { kind: cup, seconds: read_s, temperature_C: liquid_C } };
  });
});

/** Writes ratio, retarder and cup reading into the mix of the job, as one step that can be undone. */
export function takeThinning(): void {
  const taken = takenSpec.peek();
  if (taken === null || 'problem' in taken) return;
  changeJob('Take this thinning', withValueAt(state.job.peek(), ['mixes', sheetMixIndex.peek()], taken.value));
  askMix({ ratio: '', read_s: null });
}

/** Types a ratio found, to as many figures as anybody pours. */
export function useRatio({ thinnerPerFinish, retarderFraction }: MixRatio): void {
  askMix({ ratio: ratioAsTyped({ thinnerPerFinish: Number(thinnerPerFinish.toPrecision(POURED_FIGURES)), retarderFraction }), by: 'volume' });
}

/** Types the ratio in hand with another share of retarder. */
export function useRetarder(retarderFraction: number): void {
  const ratio = sheetRatio.peek();
  if (ratio !== null && 'value' in ratio) useRatio({ ...ratio.value, retarderFraction });
}

/** The mixing slip of what is shown, HTML; null where there is nothing to show. */
export function slipHtml(): string | null {
  const mixing = sheetMixing.peek();
  return mixing === null || 'problem' in mixing ? null : mixSlip(mixing.value, state.job.peek().name, state.units.peek());
}

function sheetPointer(): string {
  return `/mixes/${sheetMixIndex.value}`;
}

function asked(): Omit<MixingAsked, 'ratio'> {
  const prefs = state.scheme.value.mix;
  const step = stepMixedFor.value;
  const readings = sheetReadings.value.flatMap((reading) => (reading !== null && 'value' in reading ? [reading.value] : []));
  const left_m3 = prefs.left_mL * CUBIC_METRES_PER_ML;
  const exact = (value: number) => ({ value, low: value, high: value });
  return {
    pot_m3: prefs.pot_mL * CUBIC_METRES_PER_ML,
    thinning: {
      cup: cupById(prefs.cup), temperature_K: prefs.liquid_C + CELSIUS_0_K, wanted_s: prefs.wanted_s, later_K: prefs.later_C + CELSIUS_0_K,
      ...(readings.length === 2 ? { readings } : {}),
    },
    ...(step === null || step.coat === null
      ? { batch: { area_m2: prefs.area_m2, coatCount: prefs.coats, film: { kind: 'dry', thickness_m: exact(prefs.dry_um * 1e-6) }, landedFraction: exact(prefs.landed_percent / 100), left_m3 } }
      : { liquid_m3: coatLiquid(step, step.coat, { left_m3, leftFraction: state.scheme.value.amountsLeft_percent / 100 }).mixed_m3 }),
  };
}

function readingOf({ ratio, seconds, temperature_C }: MixReadingPrefs): Read<ThinningReading> | null {
  const spec = sheetMix.value;
  if (spec === null || seconds === null) return null;
  const { by, cup } = state.scheme.value.mix;
  return tried(() => ({
    thinnerPerFinish: parseRatio(ratio, partDensities(spec), by).thinnerPerFinish,
    viscosity_m2_s: viscosityInRange_m2_s(cupById(cup), seconds),
    temperature_K: temperature_C + CELSIUS_0_K,
  }));
}

function tried<Value>(work: () => Value): Read<Value> {
  try {
    return { value: work() };
  } catch (error) {
    if (error instanceof CrosscoatError) return { problem: error.message };
    throw error;
  }
}
