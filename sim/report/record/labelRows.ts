import type { Job, LogEntrySpec, StepSpec } from '../../job/schema.ts';
import { LAYER_WORDS } from '../schemeWords.ts';
import { counted } from '../../base/counted.ts';

/** One kind of film for the label: what it is called, and which product is in it. */
export interface LabelRow {
  readonly layer: string;
  /** Products as logged with their batches; empty where none was logged. */
  readonly products: string;
  readonly coats: string;
}

type CoatStep = Extract<StepSpec, { readonly layer: unknown }>;

/** Which product is in each kind of film, so that whoever opens the inspection hole in years can name it. Coats of no planned step stand last. */
export function labelRows({ schemes = [], log = [] }: Pick<Job, 'schemes' | 'log'>): LabelRow[] {
  const steps = schemes.flatMap((scheme) => scheme.steps).flatMap((step): CoatStep[] => (step.kind === 'brush' || step.kind === 'spray' ? [step] : []));
  const coats = log.filter(({ kind }) => kind === 'coat');
  const layers = [...new Set(steps.map(({ layer }) => layer))];
  const others = coats.filter(({ step }) => !steps.some(({ id }) => id === step));
  return [
    ...layers.map((layer) => {
      const planned = steps.filter((step) => step.layer === layer);
      const logged = coats.filter((entry) => planned.some(({ id }) => id === entry.step));
      return { layer: LAYER_WORDS[layer], products: productsOf(logged), coats: `${logged.length} of ${counted(planned.length, 'coat')} logged` };
    }),
    ...(others.length === 0 ? [] : [{ layer: 'of no planned step', products: productsOf(others), coats: `${counted(others.length, 'coat')} logged` }]),
  ];
}

function productsOf(entries: readonly LogEntrySpec[]): string {
  const named = entries.flatMap(({ product, thinner }) => [product, thinner]).flatMap((can) => (can === undefined ? [] : [`${can.name}${can.batch === undefined ? '' : ` (${can.batch})`}`]));
  return [...new Set(named)].join('; ');
}
