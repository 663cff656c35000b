import { JobSchema, type Job } from '../../sim/index.ts';
import { valueAt, type JobPath } from './path.ts';

/** The limits that the job's schema puts on one number. */
export interface Limits {
  readonly low: number;
  readonly high: number;
  readonly whole: boolean;
  /** What the number means, in the schema's words. */
  readonly description: string;
}

/** A schema object as far as it is walked here; valibot keeps these keys stable. */
interface SchemaNode {
  readonly type: string;
  readonly entries?: Readonly<Record<string, SchemaNode>>;
  readonly item?: SchemaNode;
  readonly items?: readonly SchemaNode[];
  readonly wrapped?: SchemaNode;
  readonly options?: readonly SchemaNode[];
  readonly key?: string;
  readonly literal?: unknown;
  readonly pipe?: readonly { readonly type: string; readonly requirement?: unknown; readonly description?: string }[];
}

/**
 * Limits of the number at `path` of `job`, read from the schema itself so that a form can never
 * disagree with the file's check.
 */
export function limitsAt(job: Job, path: JobPath): Limits {
  let node = JobSchema as unknown as SchemaNode;
  path.forEach((key, depth) => {
    node = child(node, key, valueAt(job, path.slice(0, depth)));
  });
  const pipe = unwrap(node).pipe ?? [];
  const requirement = (type: string): number | undefined => {
    const found = pipe.find((step) => step.type === type)?.requirement;
    return typeof found === 'number' ? found : undefined;
  };
  return {
    low: requirement('min_value') ?? -Infinity,
    high: requirement('max_value') ?? Infinity,
    whole: pipe.some((step) => step.type === 'integer'),
    description: pipe.find((step) => step.type === 'description')?.description ?? '',
  };
}

function unwrap(node: SchemaNode): SchemaNode {
  return node.wrapped === undefined ? node : unwrap(node.wrapped);
}

/** The schema of `key` inside `node`; of a choice, the option that `value` takes. */
function child(outer: SchemaNode, key: string | number, value: unknown): SchemaNode {
  const node = unwrap(outer);
  if (node.options !== undefined) return child(optionOf(node, value), key, value);
  const found = node.entries?.[key] ?? node.items?.[Number(key)] ?? node.item;
  if (found === undefined) throw new Error(`limitsAt: the schema has no ${String(key)}`);
  return found;
}

function optionOf(node: SchemaNode, value: unknown): SchemaNode {
  const keys = Object.keys((value ?? {}));
  const found = (node.options ?? []).find((option) =>
    node.key === undefined
      ? keys.every((key) => option.entries?.[key] !== undefined)
      : option.entries?.[node.key]?.literal === valueAt(value, [node.key]),
  );
  if (found === undefined) throw new Error('limitsAt: the value fits no option of the schema');
  return found;
}
