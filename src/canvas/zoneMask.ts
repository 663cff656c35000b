import type { ZoneScene } from './scene.ts';

/** One bit a kind of zone; the same bit `SELECTED_SHIFT` places up marks the selected zone. */
export const KIND_BIT: Readonly<Record<ZoneScene['kind'], number>> = {
  holiday: 1,
  'thin-lap': 2,
  'heavy-spot': 4,
  'dry-spray': 8,
  run: 16,
  'orange-peel': 32,
  'dry-lap': 64,
  blush: 128,
  blister: 256,
  pinhole: 512,
  'over-thick': 1024,
};
export const SELECTED_SHIFT = 11;

/** Writes the kinds that lie on each cell, as bits held in floats (exact: below 2^24). */
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
