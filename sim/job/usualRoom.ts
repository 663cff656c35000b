import type { RoomSpec } from './schema.ts';

/**
 * A room where none is stated: a double garage, 8 × 6 × 2.5 m, no fan. Assumed: small rooms are the ones that want
 * care, and a fan that nobody stated must not be counted on. Mixing factor 4: 3 to 10 is usual in the rules for dilution air.
 */
export const USUAL_ROOM: RoomSpec = { volume_m3: 120, fresh_m3_h: 0, mixing: 4 };
