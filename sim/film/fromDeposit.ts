import type { Deposit } from '../deposit/deposit.ts';
import type { Film } from './film.ts';

/**
 * The film as laid: what landed, before any of it dries, flows or levels.
 *
 * Takes the deposit's arrays over without copying (a panel's four arrays are several MB), so the
 * deposit must not be laid on afterwards; copy it first to go on spraying.
 * @param time_s since the first row of the path, 0 or more.
 */
export function filmFromDeposit(deposit: Deposit, time_s: number): Film {
  return {
    grid: deposit.grid,
    time_s,
    wet_m: deposit.wet_m,
    dry_m: deposit.solids_m,
    arrivedDry_m: deposit.arrivedDry_m,
    passes: deposit.passes,
  };
}
