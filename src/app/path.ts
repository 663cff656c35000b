/** A place in the job: keys and indices from the top. */
export type JobPath = readonly (string | number)[];

type Container = Record<string | number, unknown>;

/** The value at `path`, undefined where there is none. */
export function valueAt(root: unknown, path: JobPath): unknown {
  let value: unknown = root;
  for (const key of path) {
    if (typeof value !== 'object' || value === null) return undefined;
    value = (value as Container)[key];
  }
  return value;
}

/** A copy of `root` with `value` at `path`; everything beside the path is shared. */
export function withValueAt<T>(root: T, path: JobPath, value: unknown): T {
  const [key, ...rest] = path;
  if (key === undefined) return value as T;
  const inner = (root as Container)[key];
  const changed = withValueAt(inner, rest, value);
  if (Object.is(inner, changed)) return root;
  if (Array.isArray(root)) {
    const copy = [...(root as unknown[])];
    copy[Number(key)] = changed;
    return copy as T;
  }
  return { ...(root as Container), [key]: changed } as T;
}

/** The path as a JSON pointer (RFC 6901); also a field's id. */
export function pointerOf(path: JobPath): string {
  return path.map((key) => `/${String(key).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');
}

/** The path that a JSON pointer names; indices stay text, which reads lists as well. */
export function pathOf(pointer: string): JobPath {
  return pointer
    .split('/')
    .slice(1)
    .map((key) => key.replaceAll('~1', '/').replaceAll('~0', '~'));
}

/** The unit-suffixed key that a path ends in; for an item of a list, or of a list in a list, the list's key. */
export function keyOf(path: JobPath): string {
  return String(path.findLast((key) => typeof key !== 'number' && !/^\d+$/.test(key)));
}
