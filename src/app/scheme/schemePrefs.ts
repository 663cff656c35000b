import { merged } from '../merged.ts';
import { mixFrom, USUAL_MIX, type MixPrefs } from './mixPrefs.ts';

/** The sheets of the scheme. */
export const SCHEME_TABS = ['steps', 'mix', 'air', 'vapour', 'amounts', 'days', 'card'] as const;
export type SchemeTab = (typeof SCHEME_TABS)[number];

/** What the reader looks at of the scheme, kept in this browser. A sheet adds a key of its own for what it keeps. */
export interface SchemePrefs {
  readonly tab: SchemeTab;
  /** Id of the scheme that the sheets are about; empty, or gone from the job: the first. */
  readonly scheme: string;
  /** Id of the step whose fields are open; empty, or gone: none. */
  readonly step: string;
  /** What the sheet of the mix asks. */
  readonly mix: MixPrefs;
  /** Id of the coat whose vapour is shown; empty, or gone: the one that fouls the air most. */
  readonly vapourStep: string;
  /** Id of the mix that the air is judged for; empty, or gone: that of the scheme's first sprayed coat, or the coat in hand. */
  readonly airMix: string;
  /** Temperature of the part's surface as measured, °C; null where nobody has. */
  readonly airSurface_C: number | null;
  /** Day of the job's hours that is shown, such as 2026-05-04; empty, or gone: the first. */
  readonly airDay: string;
  /** Mixed liquid that stays in cup and hose for each sprayed coat, mL, and the share of what leaves the gun that does so too, %. */
  readonly amountsLeft_mL: number;
  readonly amountsLeft_percent: number;
  /** The cloth's weight is counted with the film's. */
  readonly amountsCloth: boolean;
}

export const USUAL_SCHEME: SchemePrefs = {
  tab: 'steps',
  scheme: '',
  step: '',
  mix: USUAL_MIX,
  vapourStep: '',
  airMix: '',
  airSurface_C: null,
  airDay: '',
  amountsLeft_mL: 100,
  amountsLeft_percent: 5,
  amountsCloth: false,
};

/** What may be typed for what is left over. */
export const AMOUNTS_LEFT_ML: readonly [low: number, high: number] = [0, 5000];
export const AMOUNTS_LEFT_PERCENT: readonly [low: number, high: number] = [0, 100];

/** Kept values that fit today's sheets; what an older build wrote otherwise is left at its usual. */
export function schemeFrom(kept: unknown): SchemePrefs {
  const prefs = merged(USUAL_SCHEME, kept) as SchemePrefs;
  return {
    ...prefs,
    amountsLeft_mL: within(prefs.amountsLeft_mL, AMOUNTS_LEFT_ML) ? prefs.amountsLeft_mL : USUAL_SCHEME.amountsLeft_mL,
    amountsLeft_percent: within(prefs.amountsLeft_percent, AMOUNTS_LEFT_PERCENT) ? prefs.amountsLeft_percent : USUAL_SCHEME.amountsLeft_percent,
    airSurface_C: typeof prefs.airSurface_C === 'number' && Math.abs(prefs.airSurface_C) <= 80 ? prefs.airSurface_C : null,
    tab: SCHEME_TABS.includes(prefs.tab) ? prefs.tab : USUAL_SCHEME.tab,
    mix: mixFrom(prefs.mix),
  };
}

function within(value: number, [low, high]: readonly [low: number, high: number]): boolean {
  return value >= low && value <= high;
}
