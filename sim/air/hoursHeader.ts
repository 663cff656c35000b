import { plainColumnName } from '../base/columns.ts';
import { CrosscoatError } from '../base/errors.ts';

/** What a column of a logger holds. */
export type HoursColumn = 'time' | 'temperature' | 'humidity' | 'dewPoint';

/** A column found: its place, its name, and how a number in it becomes °C or a share of one. */
export interface FoundColumn {
  readonly field: number;
  readonly name: string;
  /** Temperatures only. */
  readonly isFahrenheit: boolean;
  /** Humidity only: the header names a unit: per cent, or a share of one. */
  readonly humidityUnit: 'percent' | 'fraction' | null;
}

/** Columns of a logger's file. */
export interface HoursHeader {
  readonly fieldCount: number;
  readonly time: FoundColumn;
  readonly temperature: FoundColumn;
  readonly humidity: FoundColumn | null;
  /** Used where there is no humidity. */
  readonly dewPoint: FoundColumn | null;
  /** Names of columns passed over. */
  readonly ignored: readonly string[];
}

const ADVICE = 'give a header such as time,temperature_C,humidity_percent';

/**
 * Reads the header of a logger's file, by common names with the unit behind them: `time`, `temperature_C`, `temp_F`,
 * `humidity_percent`, `RH (%)`, `dew point (°C)`.
 * @throws CrosscoatError `columns` for a missing or doubled column, `unit` for a temperature without a unit.
 */
export function hoursHeader(fields: readonly string[], file: string): HoursHeader {
  const found = new Map<HoursColumn, FoundColumn>();
  const ignored: string[] = [];
  fields.forEach((text, field) => {
    const name = text.trim();
    const kind = kindOf(plainColumnName(name));
    if (kind === null) {
      if (name !== '') ignored.push(name);
      return;
    }
    const before = found.get(kind);
    if (before !== undefined) throw columnsError(file, `columns "${before.name}" and "${name}" both hold the ${WORDS[kind]}`, 'leave one out');
    found.set(kind, columnOf(kind, name, field, file));
  });
  const [time, temperature] = [found.get('time'), found.get('temperature')];
  const [humidity, dewPoint] = [found.get('humidity') ?? null, found.get('dewPoint') ?? null];
  if (time === undefined) throw columnsError(file, 'no column holds the time', ADVICE);
  if (temperature === undefined) throw columnsError(file, 'no column holds the temperature', ADVICE);
  if (humidity === null && dewPoint === null) throw columnsError(file, 'no column holds the humidity or the dew point', ADVICE);
  return { fieldCount: fields.length, time, temperature, humidity, dewPoint, ignored };
}

const WORDS: Readonly<Record<HoursColumn, string>> = { time: 'time', temperature: 'air temperature', humidity: 'relative humidity', dewPoint: 'dew point' };

function kindOf(name: string): HoursColumn | null {
  if (/^(?:date_?)?(?:time|timestamp|at|datetime|date_time|date)(?:_(?:local|iso|iso8601))?$/.test(name)) return 'time';
  if (/^dew_?(?:point)?(?:_temp(?:erature)?)?(?:_|$)/.test(name)) return 'dewPoint';
  if (/^(?:rh|humidity|rel(?:ative)?_?hum(?:idity)?|hum)(?:_|$)/.test(name)) return 'humidity';
  if (/^(?:air_?)?(?:temp|temperature|t)(?:_|$)/.test(name)) return 'temperature';
  return null;
}

function columnOf(kind: HoursColumn, name: string, field: number, file: string): FoundColumn {
  const plain = plainColumnName(name);
  if (kind === 'humidity') {
    const humidityUnit = /_(?:percent|pct)(?:_|$)/.test(plain) ? 'percent' : /_(?:fraction|share|ratio)$/.test(plain) ? 'fraction' : null;
    return { field, name, isFahrenheit: false, humidityUnit };
  }
  const unit = /_(?:deg_?)?(c|f|celsius|fahrenheit)$/.exec(plain)?.[1];
  if (kind !== 'time' && unit === undefined) {
    throw new CrosscoatError('unit', `${file}: column "${name}" does not say °C or °F; write ${kind === 'dewPoint' ? 'dewpoint_C or dewpoint_F' : 'temperature_C or temperature_F'}`, { file, row: 1, column: name });
  }
  return { field, name, isFahrenheit: unit?.startsWith('f') === true, humidityUnit: null };
}

function columnsError(file: string, what: string, advice: string): CrosscoatError {
  return new CrosscoatError('columns', `${file}: ${what}; ${advice}`, { file, row: 1 });
}
