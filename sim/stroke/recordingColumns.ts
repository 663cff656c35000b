import { CrosscoatError } from '../base/errors.ts';

/** What a column of a recorded file may hold. */
export type Quantity = 't' | 'x' | 'y' | 'z' | 'fan' | 'pitch' | 'yaw' | 'trigger';

/** How one quantity of a recorded file is got. */
export interface RecordingColumn {
  readonly quantity: Quantity;
  /** The column's name in the file; null where the file has none and the default stands in. */
  readonly name: string | null;
  /** 0-based field; -1 for a default. */
  readonly field: number;
  /** SI per unit of the file. */
  readonly scale: number;
}

/** A header understood. */
export interface RecordingHeader {
  /** One for each quantity, in the order t, x, y, z, fan, pitch, yaw, trigger. */
  readonly columns: readonly RecordingColumn[];
  readonly fieldCount: number;
  /** Columns that mean nothing here. */
  readonly ignored: readonly string[];
}

const LENGTHS: Record<string, number> = { mm: 0.001, cm: 0.01, m: 1, in: 0.0254, ft: 0.3048, mil: 0.0000254 };
const TIMES: Record<string, number> = { s: 1, ms: 0.001, us: 0.000001, min: 60 };
const ANGLES: Record<string, number> = { deg: Math.PI / 180, rad: 1 };

/** The units that each quantity may be in, SI per unit; the trigger has none. */
const UNITS: Record<Quantity, Record<string, number> | null> = {
  t: TIMES,
  x: LENGTHS,
  y: LENGTHS,
  z: LENGTHS,
  fan: ANGLES,
  pitch: ANGLES,
  yaw: ANGLES,
  trigger: null,
};

/** What stands in for a column that a file lacks, SI. Assumed: a common hand's setting. */
export const RECORDING_DEFAULTS = {
  z: 0.2,
  fan: Math.PI / 2,
  pitch: 0,
  yaw: 0,
  trigger: 1,
} as const;

/** The defaults in a reader's words. */
export const DEFAULT_WORDS: Record<keyof typeof RECORDING_DEFAULTS, string> = {
  z: 'z = 200 mm',
  fan: 'fan = 90 deg',
  pitch: 'pitch = 0 deg',
  yaw: 'yaw = 0 deg',
  trigger: 'trigger = 1 (spray)',
};

const QUANTITIES = Object.keys(UNITS) as Quantity[];

/**
 * Finds the columns of a recorded file by its header: `t_s`, `x_mm` and so on, the unit behind the
 * last underscore, capitals and spaces at the ends of no account. t, x and y must be there; the
 * others have defaults.
 * @throws `columns` for a missing or doubled column, `unit` for a unit that is missing or unknown.
 */
export function readHeader(fields: readonly string[], file: string): RecordingHeader {
  const found = new Map<Quantity, RecordingColumn>();
  const ignored: string[] = [];
  fields.forEach((field, index) => {
    const column = readColumn(field.trim(), index, file);
    if (column === null) {
      if (field.trim() !== '') ignored.push(field.trim());
      return;
    }
    const other = found.get(column.quantity);
    if (other !== undefined) {
      throw new CrosscoatError(
        'columns',
        `${file}: columns ${other.name} and ${column.name} both say ${column.quantity}; keep one of them`,
        { file, row: 1, column: column.name ?? '' },
      );
    }
    found.set(column.quantity, column);
  });
  const columns = QUANTITIES.map((quantity) => found.get(quantity) ?? defaultColumn(quantity, fields, file));
  return { columns, fieldCount: fields.length, ignored };
}

function readColumn(name: string, field: number, file: string): RecordingColumn | null {
  const [base, unit] = splitUnit(name.toLowerCase());
  if (!isQuantity(base)) return null;
  const units = UNITS[base];
  if (units === null) return unit === '' ? { quantity: base, name, field, scale: 1 } : null;
  const scale = Object.hasOwn(units, unit) ? units[unit] : undefined;
  if (scale !== undefined) return { quantity: base, name, field, scale };
  const understood = Object.keys(units).map((known) => `${base}_${known}`).join(', ');
  const what = unit === '' ? 'has no unit in its name' : `has the unit "${unit}", which is not known`;
  throw new CrosscoatError('unit', `${file}: column ${name} ${what}; understood are ${understood}`, { file, row: 1, column: name });
}

function splitUnit(name: string): [base: string, unit: string] {
  const cut = name.lastIndexOf('_');
  return cut < 0 ? [name, ''] : [name.slice(0, cut), name.slice(cut + 1)];
}

function isQuantity(name: string): name is Quantity {
  return Object.hasOwn(UNITS, name);
}

function defaultColumn(quantity: Quantity, fields: readonly string[], file: string): RecordingColumn {
  if (quantity in RECORDING_DEFAULTS) return { quantity, name: null, field: -1, scale: 1 };
  const separated = fields.length === 1 && /[;\t]/.test(fields[0] as string) ? ' (the fields must be parted by commas)' : '';
  throw new CrosscoatError(
    'columns',
    `${file}: row 1 has no column for ${quantity}${separated}; a recording starts with a header such as t_s,x_mm,y_mm,z_mm,fan_deg,pitch_deg,yaw_deg,trigger`,
    { file, row: 1, column: quantity },
  );
}
