/**
 * Kept values laid over the usual ones, key by key: a value of another kind than the usual one is
 * left at its usual. Where the usual leaves it open with null, whatever was kept.
 */
export function merged(usual: unknown, kept: unknown): unknown {
  if (usual === null) return kept ?? null;
  if (typeof usual !== 'object') return typeof kept === typeof usual ? kept : usual;
  if (typeof kept !== 'object' || kept === null) return usual;
  return Object.fromEntries(Object.entries(usual).map(([key, value]) => [key, merged(value, (kept as Record<string, unknown>)[key])]));
}
