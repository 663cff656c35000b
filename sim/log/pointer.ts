import { CrosscoatError } from '../base/errors.ts';

/** The value that a JSON pointer (RFC 6901) names within a record; undefined where there is none. */
export function atPointer(root: unknown, pointer: string): unknown {
  let value = root;
  for (const key of keysOf(pointer)) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Readonly<Record<string, unknown>>)[key];
  }
  return value;
}

/**
 * A copy of a record with another value at a JSON pointer; everything beside it is shared. Undefined takes a key out of an object
 * and an item out of a list; the index after the last adds to a list.
 * @throws CrosscoatError `not-found` where the pointer leads into nothing.
 */
export function withAtPointer<T extends object>(root: T, pointer: string, value: unknown): T {
  return replaced(root, keysOf(pointer), value, pointer) as T;
}

function replaced(root: unknown, [key, ...rest]: readonly string[], value: unknown, pointer: string): unknown {
  if (key === undefined) return value;
  if (Array.isArray(root)) {
    const items = root as readonly unknown[];
    const index = /^\d+$/.test(key) ? Number(key) : -1;
    if (index < 0 || index > items.length) throw nowhere(pointer);
    const item = replaced(items[index], rest, value, pointer);
    return [...items.slice(0, index), ...(item === undefined ? [] : [item]), ...items.slice(index + 1)];
  }
  if (typeof root !== 'object' || root === null || key === '__proto__') throw nowhere(pointer);
  const next: Record<string, unknown> = { ...root };
  next[key] = replaced(next[key], rest, value, pointer);
  if (next[key] === undefined) Reflect.deleteProperty(next, key);
  return next;
}

function keysOf(pointer: string): string[] {
  return pointer.split('/').slice(1).map((key) => key.replaceAll('~1', '/').replaceAll('~0', '~'));
}

function nowhere(pointer: string): CrosscoatError {
  return new CrosscoatError('not-found', `${pointer} leads to no place in the record; give a pointer to a field that it has or may have`, { pointer });
}
