import type { Job, PanelBalance, PlannedScheme, SolventByMinute, UnitSystem } from '../../sim/index.ts';

/** Messages of the scheme: name, what is asked, what comes back. */
export interface SchemeMessages {
  /** The job card of all schemes as one HTML file and as plain text. */
  jobCard: { request: { job: Job; units: UnitSystem }; reply: { html: string; text: string } };
  /** Solvent let into the room by every coat of a planned scheme, minute by minute. */
  schemeSolvent: { request: { job: Job; plan: PlannedScheme }; reply: { coats: readonly SolventByMinute[] } };
  /** Where the weight that a planned scheme adds acts, for each panel with a hinge line. */
  hingeBalances: { request: { job: Job; plan: PlannedScheme }; reply: { balances: readonly PanelBalance[] } };
  /** A scheme of the job worked out. */
  planScheme: { request: { job: Job; scheme: string }; reply: { plan: PlannedScheme } };
}
