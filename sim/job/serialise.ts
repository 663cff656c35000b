import type { Job } from './schema.ts';

/** Lists of plain numbers and short objects stay on one line up to this length. */
const LONGEST_LINE = 100;

/**
 * A job as JSON text that people can read and compare: keys in the schema's order, two spaces a
 * level, short lists on one line, a line break at the end. `parseJob` gives the same job back.
 */
export function serialiseJob(job: Job): string {
  return `${write(job, '')}\n`;
}

function write(value: unknown, indent: string): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const entries = Array.isArray(value)
    ? value.map((item) => ['', item] as const)
    : Object.entries(value).filter(([, item]) => item !== undefined).map(([key, item]) => [`${JSON.stringify(key)}: `, item] as const);
  const [open, close] = Array.isArray(value) ? ['[', ']'] : ['{', '}'];
  if (entries.length === 0) return open + close;
  if (entries.every(([, item]) => typeof item !== 'object')) {
    const line = entries.map(([key, item]) => key + JSON.stringify(item)).join(', ');
    if (line.length <= LONGEST_LINE) return Array.isArray(value) ? `[${line}]` : `{ ${line} }`;
  }
  const inner = `${indent}  `;
  const lines = entries.map(([key, item]) => inner + key + write(item, inner));
  return `${open}\n${lines.join(',\n')}\n${indent}${close}`;
}
