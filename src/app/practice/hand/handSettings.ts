/** Where the page's places are on the panel. */
export interface HandView {
  /** A place of the client area on the panel's plane, m: x right, y up. */
  toPanel(clientX: number, clientY: number): readonly [x_m: number, y_m: number];
}

/** How the gun is held. */
export interface HandSettings {
  /** Where the distance starts; the hand then changes it. */
  readonly meantDistance_m: number;
  /** false: fan upright (90°); true: fan flat (0°). */
  readonly fanTurned: boolean;
  /** The pointer is the nozzle's foot, or it swings an arm about a pivot. */
  readonly mode: 'free' | 'wrist';
  /** From the pivot to the nozzle. */
  readonly armLength_m: number;
  readonly pivotX_m: number;
  /** Error of the distance that comes and goes by itself; 0 is none. */
  readonly wander: { readonly amount_m: number; readonly seed: number };
  /** What pulls the trigger on a touch screen: the finger that moves the gun, or a pad beside it. */
  readonly touchTrigger: 'finger' | 'pad';
  /** Full speed of the arrow keys. */
  readonly keySpeed_m_s: number;
}

/** The hand holds the distance within these. Assumed: nearer the nozzle would touch wet film, farther nothing arrives. */
export const NEAREST_M = 0.02;
export const FARTHEST_M = 1;
