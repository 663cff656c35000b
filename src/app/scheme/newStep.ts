import type { Job, SchemeSpec, StepSpec } from '../../../sim/index.ts';
import { freshId } from '../freshId.ts';

export const STEP_KINDS = ['brush', 'spray', 'fix', 'sand', 'mask', 'unmask'] as const;
export type StepKind = StepSpec['kind'];
type Layer = Extract<StepSpec, { readonly kind: 'spray' }>['layer'];

/** Kinds of film in the order in which the trade lays them, and the finishes that make each. */
const FINISHES_OF: Readonly<Record<Layer, readonly string[]>> = { primer: ['primer'], clear: ['clear-dope'], aluminium: ['aluminium-dope'], colour: ['colour-dope', 'lacquer', 'enamel'] };

/** Why a kind of step cannot be added, or null: a coat needs something in the job to lay it with. */
export function missingFor(job: Job, panels: readonly string[], kind: StepKind): string | null {
  if (kind === 'brush' && job.mixes.length === 0) return 'A brushed coat needs a mix: add one in the stage Mix.';
  if (kind === 'spray' && !job.coats.some(({ panel }) => panels.includes(panel))) return 'A sprayed coat needs a coat on one of these panels: add one in the stage Strokes.';
  return null;
}

/**
 * A step of a kind with usual values, to be changed. A coat takes the film of the coat before it.
 * @param before the steps above it.
 */
export function newStep(job: Job, scheme: Pick<SchemeSpec, 'panels' | 'steps'>, kind: StepKind, before: readonly StepSpec[]): StepSpec {
  const shared = { id: freshId(kind, scheme.steps.map(({ id }) => id)), wait_h: 0 };
  const last = [...before].reverse().find((step) => step.kind === 'brush' || step.kind === 'spray');
  const layer: Layer = last?.layer ?? 'clear';
  switch (kind) {
    case 'brush':
      return { kind, ...shared, name: `Brushed ${layer}`, wait_h: 2, layer, share_percent: 100, mix: mixFor(job, layer), dry_um: 20, within_percent: 30, loss_percent: 10 };
    case 'spray':
      return { kind, ...shared, name: `Sprayed ${layer}`, wait_h: 2, layer, share_percent: 100, ...colourOf(last), ...sprayOf(job, scheme.panels, last, layer) };
    case 'fix': return { kind, ...shared, name: 'Tapes set in dope', what: 'tape', width_mm: 50.8 };
    case 'sand': return { kind, ...shared, name: 'Sand, level only', grit: 320, wet: true, removes_um: 3, keepOff: ['rib lacing', 'tape edges', 'screw heads', 'sharp edges'] };
    case 'mask': return { kind, ...shared, name: 'Mask for the next colour', share_percent: 20 };
    case 'unmask': return { kind, ...shared, name: 'Pull the tape' };
  }
}

function colourOf(last: StepSpec | undefined): { colour?: string } {
  return last !== undefined && 'colour' in last && last.colour !== undefined ? { colour: last.colour } : {};
}

function sprayOf(job: Job, panels: readonly string[], last: StepSpec | undefined, layer: Layer): { coat: string; mix?: string } {
  if (last?.kind === 'spray') return { coat: last.coat, ...(last.mix === undefined ? {} : { mix: last.mix }) };
  const coat = job.coats.find((each) => panels.includes(each.panel) && each.over === undefined) ?? job.coats.find((each) => panels.includes(each.panel));
  const mix = mixFor(job, layer);
  return { coat: coat?.id ?? '', ...(mix === '' ? {} : { mix }) };
}

function mixFor(job: Job, layer: Layer): string {
  return (job.mixes.find(({ finish }) => FINISHES_OF[layer].includes(finish)) ?? job.mixes[0])?.id ?? '';
}
