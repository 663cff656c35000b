import { checkRange } from '../base/check.ts';
import { molarVolume_m3_mol, vapourPressure_Pa, type Solvent } from '../materials/solvent.ts';
import { VAPOUR_TABLE_SOURCE, vapourRowOf } from '../materials/vapourTable.ts';
import { molarDensity_mol_m3 } from './gasTransfer.ts';

/** Air at the sea, Pa. */
export const SEA_PRESSURE_Pa = 101325;
const PPM = 1e-6;
const RELATIVE_DIFFERENCE = 1e-9;

/** A limit that somebody publishes: a share of the air by volume, and who says so. */
export interface PublishedLimit {
  readonly name: string;
  /** 0 to 1. */
  readonly fraction: number;
  readonly source: string;
}

/** A liquid that turns to vapour. */
export interface LiquidPart {
  readonly solvent: Solvent;
  readonly liquid_m3: number;
}

/** The air that vapour goes into. */
export interface VapourAir {
  readonly temperature_K: number;
  /** 101325 at the sea. */
  readonly pressure_Pa: number;
}

/** One solvent's vapour, alone. */
export interface VapourPart extends LiquidPart {
  readonly vapour_m3: number;
  /** Share of the room's air by volume; may pass what the air can hold, see `isOverSaturated`. */
  readonly airFraction: number;
  /** Lowest first; the first is the one used. */
  readonly explosive: readonly PublishedLimit[];
  /** Share of the lowest explosive limit. */
  readonly lelFraction: number;
  /** Lowest first; none where no limit is known here. */
  readonly exposure: readonly PublishedLimit[];
  /** Multiple of the lowest exposure limit; null without one. */
  readonly timesLimit: number | null;
}

/** A room that liquid has evaporated in, all of it, with nothing let out. */
export interface RoomVapour {
  readonly air: VapourAir;
  readonly room_m3: number;
  readonly parts: readonly VapourPart[];
  readonly vapour_m3: number;
  readonly airFraction: number;
  /** Lower explosive limit of the blend's vapour (Le Chatelier), by the lowest of the published limits. */
  readonly blendLel: number;
  /** The same by the highest of them, which is the rule's own table where that has the solvent. */
  readonly otherLel: number;
  /** Share of the explosive limit that the room's air holds; 1 is the limit. */
  readonly lelFraction: number;
  /** Σ C/L over the solvents that have an exposure limit; null where none has. */
  readonly timesLimit: number | null;
  /** Solvents of which no exposure limit is known here: their share is not counted. */
  readonly unlimited: readonly string[];
  /** More vapour than the air can hold at this temperature over the liquid. */
  readonly isOverSaturated: boolean;
}

/**
 * Volumes of vapour from one volume of liquid at 20 °C, ideal gas: R T/(P molar volume). Real vapours of
 * solvents are up to 2 % less.
 */
export function vapourRatio(solvent: Solvent, { temperature_K, pressure_Pa }: VapourAir): number {
  return 1 / (molarVolume_m3_mol(solvent) * molarDensity_mol_m3(temperature_K, pressure_Pa));
}

/**
 * What is published of a solvent's lower explosive limit, lowest first: one entry, or two where the
 * rule's table differs from the lower, newer figure. Limits are for room temperature and fall as it is warmer.
 */
export function explosiveLimits(solvent: Solvent): PublishedLimit[] {
  const { low, high, source } = solvent.lowerExplosiveFraction;
  const used = { name: 'lower explosive limit', fraction: low, source };
  const row = vapourRowOf(solvent.id);
  const other = row === null ? high : row.lel_percent / 100;
  if (Math.abs(other / low - 1) < RELATIVE_DIFFERENCE) return [used];
  const also = { name: used.name, fraction: other, source: row === null ? source : VAPOUR_TABLE_SOURCE };
  return other < low ? [also, used] : [used, also];
}

/** Exposure limits known of a solvent, eight-hour means unless the source says otherwise, lowest first. */
export function exposureLimits({ oshaPel_ppm, acgihTlv_ppm }: Solvent): PublishedLimit[] {
  const stated = [
    ...(acgihTlv_ppm === null ? [] : [{ name: 'ACGIH TLV', fraction: acgihTlv_ppm.value * PPM, source: acgihTlv_ppm.source }]),
    ...(oshaPel_ppm === null ? [] : [{ name: 'OSHA PEL', fraction: oshaPel_ppm.value * PPM, source: oshaPel_ppm.source }]),
  ];
  return stated.sort((a, b) => a.fraction - b.fraction);
}

/**
 * Lower explosive limit of a blend of vapours: Le Chatelier, 1 / Σ (share / limit).
 * @param parts shares of the vapour by volume, in any unit; NaN for none.
 */
export function blendExplosiveFraction(parts: readonly { readonly share: number; readonly limit: number }[]): number {
  const all = parts.reduce((sum, { share }) => sum + share, 0);
  return all / parts.reduce((sum, { share, limit }) => sum + share / limit, 0);
}

/** Σ C/L: effects on the body are taken to add; above 1 the air is over the limit (ACGIH; 29 CFR 1910.1000(d)(2)). */
export function mixtureIndex(parts: readonly { readonly fraction: number; readonly limit: number }[]): number {
  return parts.reduce((sum, { fraction, limit }) => sum + fraction / limit, 0);
}

/**
 * All of some liquid turned to vapour in a shut room, evenly mixed. The air that the vapour pushes out is
 * left out: it makes the share wrong by no more than the share itself.
 * @throws CrosscoatError `range` for a room outside 1 to 100 000 m³ or a liquid outside 0 to 10 m³.
 */
export function vapourInRoom(liquids: readonly LiquidPart[], room_m3: number, air: VapourAir): RoomVapour {
  checkRange({ name: 'vapour: room', value: room_m3, low: 1, high: 1e5, unit: 'm³', advice: 'give the volume of the room, such as 120m3' });
  const parts = liquids.map((liquid) => vapourPart(liquid, room_m3, air));
  const vapour_m3 = parts.reduce((sum, part) => sum + part.vapour_m3, 0);
  const blendLel = blendExplosiveFraction(parts.map((part) => ({ share: part.vapour_m3, limit: lowest(part.explosive) })));
  const otherLel = blendExplosiveFraction(parts.map((part) => ({ share: part.vapour_m3, limit: (part.explosive.at(-1) as PublishedLimit).fraction })));
  const limited = parts.filter(({ exposure }) => exposure.length > 0);
  return {
    air,
    room_m3,
    parts,
    vapour_m3,
    airFraction: vapour_m3 / room_m3,
    blendLel,
    otherLel,
    lelFraction: parts.reduce((sum, part) => sum + part.lelFraction, 0),
    timesLimit: limited.length === 0 ? null : mixtureIndex(limited.map((part) => ({ fraction: part.airFraction, limit: lowest(part.exposure) }))),
    unlimited: parts.filter(({ exposure }) => exposure.length === 0).map(({ solvent }) => solvent.name),
    isOverSaturated: parts.some((part) => part.airFraction > (part.vapour_m3 / vapour_m3) * (vapourPressure_Pa(part.solvent, air.temperature_K) / air.pressure_Pa)),
  };
}

function vapourPart({ solvent, liquid_m3 }: LiquidPart, room_m3: number, air: VapourAir): VapourPart {
  checkRange({ name: `vapour: liquid of ${solvent.name}`, value: liquid_m3, low: 0, high: 10, unit: 'm³', advice: 'give how much evaporates, such as 1L' });
  const vapour_m3 = liquid_m3 * vapourRatio(solvent, air);
  const airFraction = vapour_m3 / room_m3;
  const explosive = explosiveLimits(solvent);
  const exposure = exposureLimits(solvent);
  return {
    solvent,
    liquid_m3,
    vapour_m3,
    airFraction,
    explosive,
    lelFraction: airFraction / lowest(explosive),
    exposure,
    timesLimit: exposure.length === 0 ? null : airFraction / lowest(exposure),
  };
}

/** The limit that is used: the lowest of those published. */
export function lowest(limits: readonly PublishedLimit[]): number {
  return (limits[0] as PublishedLimit).fraction;
}
