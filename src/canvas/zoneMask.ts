import type { ZoneScene } from './scene.ts';

/** One bit a kind of zone; the same bit four places up marks the selected zone. */
export const KIND_BIT: Readonly<Record<ZoneScene['kind'], number>> = {
  holiday: 1,
  'thin-lap': 2,
  'heavy-spot': 4,
  'dry-spray': 8,
};
export const SELECTED_SHIFT = 4;

/** Writes the kinds that lie on each cell, as bits held in floats (exact: below 256). */
export function writeZoneMask(zones: readonly ZoneScene[], selected: string | null, out: Float32Array): void {
  out.fill(0);
  for (const zone of zones) {
    const kind = KIND_BIT[zone.kind];
    const bits = zone.key === selected ? kind | (kind << SELECTED_SHIFT) : kind;
    const { cells } = zone;
    for (let i = 0; i < cells.length; i++) {
      const cell = cells[i] as number;
      out[cell] = (out[cell] as number) | bits;
    }
  }
}
