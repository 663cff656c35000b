/** A row of the rule's table of air speeds in spray booths, ft/min through the open face. */
export interface BoothRow {
  readonly operation: string;
  /** Air that crosses the booth beside the fan's, ft/min. */
  readonly crossDraft: string;
  /** Design speed and its range, large booth and small. */
  readonly large: { readonly design: number; readonly low: number; readonly high: number };
  readonly small: { readonly design: number; readonly low: number; readonly high: number };
}

/** What the rule's table calls hand-held guns that spray with air. */
export const AIR_GUNS = 'air guns';

/** Air speeds that the rule designs booths for: 29 CFR 1910.94(c)(6) table G-10; the same figures stand in WAC 296-62-11019 table 14. */
export const BOOTH_TABLE: readonly BoothRow[] = [
  { operation: 'electrostatic or automatic airless, nobody inside', crossDraft: 'negligible', large: { design: 50, low: 50, high: 75 }, small: { design: 100, low: 75, high: 125 } },
  { operation: AIR_GUNS, crossDraft: 'up to 50 ft/min', large: { design: 100, low: 75, high: 125 }, small: { design: 150, low: 125, high: 175 } },
  { operation: AIR_GUNS, crossDraft: 'up to 100 ft/min', large: { design: 150, low: 125, high: 175 }, small: { design: 200, low: 150, high: 250 } },
];

/** Average through the open face of a booth with dry filters, ft/min. */
export const FIRE_FACE_ft_min = 100;
export const FIRE_FACE_SOURCE = '29 CFR 1910.107(b)(5)(i); the same in WAC 296-24-37003';
