import type { FaultKind } from './verdict.ts';

/** One way to lay a coat: what the working window turns, SI. */
export interface SprayPoint {
  readonly distance_m: number;
  readonly speed_m_s: number;
  /** Of the fan's full width at that distance, 0 to 0.95. */
  readonly overlapFraction: number;
  readonly fluidRate_m3_s: number;
  /** Volumes of thinner to one of finish. */
  readonly thinnerRatio: number;
  readonly temperature_K: number;
  /** Relative, 0 to 1. */
  readonly humidityFraction: number;
}

/** What may be turned, one axis of a window each. */
export type WindowAxis = 'distance' | 'speed' | 'overlap' | 'fluid' | 'thinner' | 'temperature' | 'humidity';

/** The faults that bound a window. */
export const WINDOW_FAULTS = ['thin-lap', 'heavy-spot', 'run', 'dry-spray', 'orange-peel', 'blush'] as const satisfies readonly FaultKind[];
export type WindowFault = (typeof WINDOW_FAULTS)[number];

/** The fault at a point of a window's map; null where nothing is at fault. */
export function faultAt({ faults, codes }: Pick<WindowMap, 'faults' | 'codes'>, at: number): WindowFault | null {
  return faults[(codes[at] as number) - 1] ?? null;
}

/** The faults that a window's map shows somewhere, in the order of its codes. */
export function faultsOn({ faults, codes }: Pick<WindowMap, 'faults' | 'codes'>): WindowFault[] {
  return faults.filter((_, i) => codes.includes(i + 1));
}

/** What is predicted of the middle of a large panel. */
export interface PointFilm {
  /** As laid, mean over the laps. */
  readonly wetMean_m: number;
  readonly dryMean_m: number;
  /** Thinnest and heaviest place as laid, in the target's kind of film. */
  readonly least_m: number;
  readonly most_m: number;
  /** Standard deviation over mean of the film as laid. */
  readonly cv: number;
  /** Share of the wet film that arrived in dry drops. */
  readonly dryFraction: number;
  /** How far the film that slides most has slid by the time it has set. */
  readonly run_m: number;
  /** Amplitude of the orange peel where it is most. */
  readonly peel_m: number;
  /** Lowest film temperature while wet, less the dew point. */
  readonly blushMargin_K: number;
  /** Share of the sprayed liquid that lands as wet film. */
  readonly landedFraction: number;
  /** Room left to each limit: 1 - value/limit (value/limit - 1 for a thin lap), for blush the margin over 5 K; 0 at the limit, negative past it. */
  readonly slack: Readonly<Record<WindowFault, number>>;
  /** False where the distance lies outside the set-up's `distanceRange_m`: the figures are then a guess. */
  readonly distanceInRange: boolean;
}

/** One side of a window: an axis, its ends (SI, both among the points) and how many points. */
export interface WindowSide {
  readonly axis: WindowAxis;
  readonly low: number;
  readonly high: number;
  readonly count: number;
}

/** The plane that is mapped: two axes, everything else as in the point that it goes through. */
export interface WindowPlane {
  readonly x: WindowSide;
  readonly y: WindowSide;
}

/** A plane of points, predicted. Arrays are row-major, `y.count` rows of `x.count`, low values first. */
export interface WindowMap extends WindowPlane {
  /** The point that the plane goes through. */
  readonly through: SprayPoint;
  readonly faults: readonly WindowFault[];
  /** 0 where nothing is at fault, else 1 + place in `faults` of the fault farthest past its limit. */
  readonly codes: Uint8Array;
  /** `PointFilm.slack` of each fault. */
  readonly slack: Readonly<Record<WindowFault, Float32Array>>;
  /** 1 where the distance is one that the set-up may be believed for. */
  readonly inRange: Uint8Array;
  /** Whether points between those predicted were filled in by interpolation. */
  readonly interpolated: boolean;
}

/** How far it is to a window's rim along one axis, one way. */
export interface WindowMargin {
  /** SI on that axis, 0 or more. */
  readonly by: number;
  /** What lies there: a fault, the end of the distances that the set-up may be believed for, or of the plane. */
  readonly limit: WindowFault | 'distance-range' | 'plane';
}

/** Margins along both axes, each way; null where the place itself is at fault. */
export interface WindowMargins {
  readonly x: { readonly less: WindowMargin; readonly more: WindowMargin } | null;
  readonly y: { readonly less: WindowMargin; readonly more: WindowMargin } | null;
}

/** A place on a plane, SI on both axes. */
export interface WindowPlace {
  readonly x: number;
  readonly y: number;
}

/** The connected points where nothing is at fault that hold the coat as stated, or lie nearest to it. */
export interface FoundWindow {
  /** Share of the plane. */
  readonly share: number;
  /** Its ends along either axis, SI. */
  readonly x: readonly [low: number, high: number];
  readonly y: readonly [low: number, high: number];
  readonly holdsStated: boolean;
  /** The place farthest from the window's rim, and how far that is in steps of `axisStep`. */
  readonly best: WindowPlace;
  readonly bestClearance_steps: number;
  readonly bestMargins: WindowMargins;
}

/** A working window in figures. */
export interface WindowDescription {
  /** Share of the plane where nothing is at fault. */
  readonly share: number;
  /** Share of the plane at distances for which the set-up may not be believed. */
  readonly outOfRangeShare: number;
  /** The coat as stated, held to the plane, and the fault that is worst there. */
  readonly stated: WindowPlace;
  readonly statedFault: WindowFault | null;
  readonly statedMargins: WindowMargins;
  /** Null where every point of the plane is at fault or out of range. */
  readonly window: FoundWindow | null;
  /** The place where the worst fault is least, and the faults there, worst first: what stands in the way where there is no window. */
  readonly nearest: WindowPlace;
  readonly nearestFaults: readonly { readonly fault: WindowFault; readonly slack: number }[];
}

/** One step of one axis, and the film that it leaves. */
export interface Sensitivity {
  readonly axis: WindowAxis;
  /** SI, with its sign. */
  readonly by: number;
  /** Where the axis stands then, SI. */
  readonly value: number;
  readonly after: PointFilm;
  /** Mean film after over before. */
  readonly filmRatio: number;
}

/** What a step of each axis changes at a point. */
export interface Sensitivities {
  readonly point: SprayPoint;
  readonly before: PointFilm;
  /** In the order of `WINDOW_AXES`, less before more. */
  readonly steps: readonly Sensitivity[];
}
