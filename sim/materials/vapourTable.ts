/** A row of the rule's table of solvents. */
export interface VapourRow {
  /** Id of the solvent in `SOLVENTS`; null for one that is not known there. */
  readonly solvent: string | null;
  readonly name: string;
  /** Cubic feet of vapour that one US gallon of the liquid makes at 70 °F. */
  readonly vapour_ft3_gal: number;
  /** Lower explosive limit, % of the air by volume, at room temperature. */
  readonly lel_percent: number;
}

function row(solvent: string | null, name: string, vapour_ft3_gal: number, lel_percent: number): VapourRow {
  return { solvent, name, vapour_ft3_gal, lel_percent };
}

/** Vapour and lower explosive limits as the rule prints them. Newer tables have lower limits for several. */
export const VAPOUR_TABLE: readonly VapourRow[] = [
  row('acetone', 'acetone', 44.0, 2.6),
  row(null, 'amyl acetate', 21.6, 1.0),
  row('n-butyl-acetate', 'n-butyl acetate', 24.8, 1.7),
  row('n-butanol', 'n-butyl alcohol', 35.2, 1.4),
  row('egbe', '2-butoxyethanol', 24.8, 1.1),
  row(null, 'cyclohexanone', 31.2, 1.1),
  row(null, '2-ethoxyethanol', 33.6, 1.8),
  row('ethyl-acetate', 'ethyl acetate', 32.8, 2.5),
  row('ethanol', 'ethyl alcohol', 55.2, 4.3),
  row('isopropanol', 'isopropyl alcohol', 44.0, 2.0),
  row('methyl-acetate', 'methyl acetate', 40.0, 3.1),
  row(null, 'methyl alcohol', 80.8, 7.3),
  row('mek', 'methyl ethyl ketone', 36.0, 1.8),
  row(null, 'VM&P naphtha', 22.4, 0.9),
  row(null, 'propyl acetate', 27.2, 2.8),
  row(null, 'Stoddard solvent', 23.2, 1.0),
  row('toluene', 'toluene', 30.4, 1.4),
  row(null, 'turpentine', 20.8, 0.8),
  row('m-xylene', 'xylene (o)', 26.4, 1.0),
];

export const VAPOUR_TABLE_SOURCE = '29 CFR 1910.94 table G-11, from memory';

/** The rule's row of a solvent, null where it has none. */
export function vapourRowOf(solventId: string): VapourRow | null {
  return VAPOUR_TABLE.find(({ solvent }) => solvent === solventId) ?? null;
}
