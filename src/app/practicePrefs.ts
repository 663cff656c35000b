import { merged } from './merged.ts';
import type { HandSettings } from './practice/hand/handSettings.ts';

/** A screen matched to a card of known size: CSS px a millimetre, and the density that it was matched at. */
export interface MatchedScreen {
  readonly pxPerMm: number;
  readonly pixelRatio: number;
}

/** What the reader has set for practice, kept in this browser. */
export interface PracticePrefs {
  readonly trainee: string;
  readonly drill: string;
  readonly hand: Omit<HandSettings, 'meantDistance_m' | 'pivotX_m'>;
  /** What the colours say: as the drill suggests, or as the reader last chose. */
  readonly value: 'target' | 'wet-now' | null;
  /** Planned lines: as the drill says, or as the reader last chose. */
  readonly guides: boolean | null;
  readonly pace: boolean;
  readonly sound: boolean;
  readonly trueScale: boolean;
  readonly screen: MatchedScreen | null;
  /** As last saved or opened, still to be checked; null for the usual one. */
  readonly rubric: unknown;
}

export const USUAL_PREFS: PracticePrefs = {
  trainee: '',
  drill: '',
  hand: { fanTurned: false, mode: 'free', armLength_m: 0.35, wander: { amount_m: 0, seed: 1 }, touchTrigger: 'finger', keySpeed_m_s: 0.35 },
  value: null,
  guides: null,
  pace: false,
  sound: false,
  trueScale: false,
  screen: null,
  rubric: null,
};

/** Kept values that fit today's preferences; what an older build wrote otherwise is left at its default. */
export function prefsFrom(kept: unknown): PracticePrefs {
  const prefs = merged(USUAL_PREFS, kept) as PracticePrefs;
  const { hand, value, guides, screen } = prefs;
  return {
    ...prefs,
    hand: { ...hand, mode: hand.mode === 'wrist' ? 'wrist' : 'free', touchTrigger: hand.touchTrigger === 'pad' ? 'pad' : 'finger' },
    value: value === 'wet-now' || value === 'target' ? value : null,
    guides: typeof guides === 'boolean' ? guides : null,
    screen: isScreen(screen) ? screen : null,
  };
}

function isScreen(screen: MatchedScreen | null): boolean {
  return typeof screen === 'object' && screen !== null && screen.pxPerMm > 0 && screen.pixelRatio > 0;
}
