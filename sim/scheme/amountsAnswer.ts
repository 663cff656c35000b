import type { Warning } from '../base/errors.ts';
import type { Panel } from '../panel/panel.ts';
import type { AddedWeight, PublishedBand } from './addedWeight.ts';
import type { SchemeAmounts } from './amounts.ts';
import type { HingeBalance, HingeLine } from './balance.ts';
import type { Labour } from './labour.ts';
import type { PlannedScheme } from './planned.ts';
import type { Purchase } from './purchase.ts';

/** The balance of one moving surface, with what its picture needs. */
export interface PanelBalance {
  readonly panel: Panel;
  readonly hinge_m: HingeLine;
  readonly balance: HingeBalance;
  /** Steps whose film's own map says where they lie. */
  readonly mappedCoats: number;
  /** Coats taken to lie evenly. */
  readonly evenCoats: number;
}

/** Quantities, weight, time and money of a scheme. */
export interface AmountsAnswer {
  readonly plan: PlannedScheme;
  readonly amounts: SchemeAmounts;
  readonly purchase: Purchase;
  readonly weight: AddedWeight;
  readonly band: PublishedBand | null;
  /** One for each panel with a hinge line; null where it is not worked out yet. */
  readonly balances: readonly PanelBalance[] | null;
  readonly labour: Labour;
  readonly doubts: readonly Warning[];
}
