import { roundedText, type ProvedNumber, type UnitSystem } from '../../../sim/index.ts';
import { typedText, unitOfKey } from '../units.ts';
import type { Family } from '../setUpCommands.ts';

/** What each number of a set-up is called where a card replaces it: as its form calls it. */
const NAMES: Readonly<Record<ProvedNumber['key'], string>> = {
  width_mm: 'Fan width',
  depth_mm: 'Fan depth',
  atDistance_mm: 'Read at distance',
  origin_mm: 'Fan\'s edges meet, in front of the nozzle',
  profile: 'Film across the fan',
  beta1: 'Exponent across',
  taper_mm: 'Tapered edge',
  fluidRate_mL_min: 'Fluid rate',
  efficiency_percent: 'Solids that land',
  efficiencyAtDistance_mm: 'Solids that land, at distance',
  nearest_mm: 'Fan believed from',
  farthest_mm: 'Fan believed to',
};

/** One number that the card changes, as a table shows it. */
export interface ProvedRow {
  readonly name: string;
  readonly from: string;
  readonly to: string;
  /** `± 3.1 mm`; empty where it is not known. */
  readonly within: string;
}

/** Old and new of every number that a card changes, in the reader's units. */
export function provedRows(changed: readonly ProvedNumber[], families: Readonly<Record<Family, string>>, system: UnitSystem): readonly ProvedRow[] {
  return changed.map(({ key, from, to, within }) => {
    const said = (value: number | string | null): string => {
      if (value === null) return 'none';
      return typeof value === 'string' ? families[value as Family] : inUnit(value, key, system);
    };
    return { name: NAMES[key], from: said(from), to: said(to), within: within === null ? '' : `± ${inUnit(within, key, system)}` };
  });
}

function inUnit(value: number, key: string, system: UnitSystem): string {
  return `${roundedText(Number(typedText(value, key, system)))} ${unitOfKey(key, system)}`.trim();
}
