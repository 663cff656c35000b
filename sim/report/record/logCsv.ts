import type { LogEntrySpec } from '../../job/schema.ts';
import { optionalCell } from '../csvCell.ts';
import type { ReportedEntry, ReportedNotedAir } from '../reportedLog.ts';
import { CELSIUS_0_K } from '../../base/units.ts';
import { SIGNATURE_COLUMNS } from './signatureColumns.ts';

const DIGITS = 12;

type Cell = string | number | undefined;

/** Columns in their order; several of one entry, such as faults, are parted by a semicolon. */
const COLUMNS: readonly (readonly [name: string, cell: (entry: LogEntrySpec, reported: ReportedEntry) => Cell])[] = [
  ['entry_id', ({ id }) => id],
  ['kind', ({ kind }) => kind],
  ['what', ({ name }) => name],
  ['started', ({ started }) => started],
  ['ended', ({ ended }) => ended],
  ['who', ({ who }) => who],
  ['certificate', ({ certificate }) => certificate],
  ['panels', ({ panels }) => panels.join('; ')],
  ['step', ({ step }) => step],
  ['coat', ({ coat }) => coat],
  ['product', ({ product }) => product?.name],
  ['product_batch', ({ product }) => product?.batch],
  ['product_use_by', ({ product }) => product?.shelfLife],
  ['thinner', ({ thinner }) => thinner?.name],
  ['thinner_batch', ({ thinner }) => thinner?.batch],
  ['thinner_use_by', ({ thinner }) => thinner?.shelfLife],
  ['ratio', ({ ratio }) => ratio],
  ['cup', ({ cup }) => cup?.kind],
  ['cup_s', ({ cup }) => cup?.seconds],
  ['liquid_C', ({ cup }) => cup?.temperature_C],
  ['used_mL', ({ used_mL }) => used_mL],
  ...airColumns('start', ({ airStart }) => airStart, ({ airStart }) => airStart),
  ...airColumns('end', ({ airEnd }) => airEnd, ({ airEnd }) => airEnd),
  ['set_up', ({ setUp }) => setUp],
  ['gun', ({ gun }) => gun],
  ['recording', ({ recording }) => recording],
  ['wet_combs_um', ({ combs }) => combs.map(({ low_um, high_um }) => `${low_um} to ${high_um ?? 'more'}`).join('; ')],
  ['faults', ({ faults }) => faults.map(({ what, where, done }) => [what, where, done].filter((text) => text !== undefined).join(', ')).join('; ')],
  ['waited_min', ({ waited_min }) => waited_min],
  ['grit', ({ sanding }) => sanding?.grit],
  ['sanded', ({ sanding }) => (sanding === undefined ? undefined : sanding.wet ? 'wet' : 'dry')],
  ['notes', ({ notes }) => notes],
  ['photographs', ({ photos }) => photos.length],
  ['changes', ({ history }) => history.length],
  ...SIGNATURE_COLUMNS.map(([name, cell]) => [name, ({ signed }: LogEntrySpec, { signature }: ReportedEntry) => cell({ signature, signed })] as const),
];

function airColumns(when: string, noted: (entry: LogEntrySpec) => LogEntrySpec['airStart'], found: (reported: ReportedEntry) => ReportedNotedAir | null): readonly (readonly [string, (entry: LogEntrySpec, reported: ReportedEntry) => Cell])[] {
  return [
    [`air_${when}_C`, (entry) => noted(entry)?.temperature_C],
    [`humidity_${when}_percent`, (entry) => noted(entry)?.humidity_percent],
    [`surface_${when}_C`, (entry) => noted(entry)?.surface_C],
    [`dew_point_${when}_C`, (_, reported) => { const air = found(reported); return air === null ? undefined : Number((air.dewPoint_K - CELSIUS_0_K).toFixed(1)); }],
  ];
}

/**
 * A log as CSV (RFC 4180), one entry a row in its order, units in the columns' names; what was not noted is empty. Words are safe from
 * spreadsheet formulas. Photographs and the words of changes are in the job file only: they are counted here.
 */
export function logCsv(entries: readonly ReportedEntry[]): string {
  const rows = entries.map((reported) => COLUMNS.map(([, cell]) => optionalCell(cell(reported.entry, reported), DIGITS)).join(','));
  return `${[COLUMNS.map(([name]) => name).join(','), ...rows].join('\r\n')}\r\n`;
}
