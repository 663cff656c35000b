import type { ReadingSpec } from '../../job/schema.ts';
import { optionalCell } from '../csvCell.ts';
import { decidingReadings } from './readingRows.ts';
import type { RecordedSurvey } from './reportedRecord.ts';
import { SIGNATURE_COLUMNS } from './signatureColumns.ts';

const UM = 1e-6;
const DIGITS = 12;

const HEAD = [
  'survey_id', 'survey', 'panel', 'verdict', 'reading_no', 'kind', 'timestamp', 'operator', 'certificate', 'gauge', 'area_id', 'spot_id', 'x_mm', 'y_mm',
  'film_low_um', 'film_high_um', 'planned_um', 'dft_um', 'before_g', 'after_g', 'area_cm2', 'before_um', 'after_um', 'wft_low_um', 'wft_high_um', 'decides', 'note',
  ...SIGNATURE_COLUMNS.map(([name]) => name),
] as const;

/**
 * All surveys of a record as CSV (RFC 4180), one reading a row: as it was read, the dry film that it comes to (two columns, since a comb
 * bounds it), the planned film there, whether it decides the verdict, and how the survey's signature stands, as in the log's CSV. Words are safe from spreadsheet formulas.
 */
export function surveysCsv(surveys: readonly RecordedSurvey[]): string {
  return `${[HEAD.join(','), ...surveys.flatMap(surveyRows)].join('\r\n')}\r\n`;
}

function surveyRows({ survey, reported, comparison, signature }: RecordedSurvey): string[] {
  const films = new Map(reported?.judged.readings.map((film) => [film.index, film]) ?? []);
  const planned = new Map(comparison?.readings.map(({ index, predicted_m }) => [index, predicted_m]) ?? []);
  const decides = reported === null ? new Set<number>() : decidingReadings(reported.judged);
  const signed = SIGNATURE_COLUMNS.map(([, cell]) => optionalCell(cell({ signature, signed: survey.signed })));
  return survey.readings.map((reading, i) => {
    const film = films.get(i);
    return [
      optionalCell(survey.id), optionalCell(survey.name), optionalCell(survey.panel), reported?.judged.answer ?? '', String(i + 1), reading.kind, optionalCell(reading.at ?? survey.at), optionalCell(survey.who), optionalCell(survey.certificate), optionalCell(survey.gauge),
      optionalCell(reading.area), optionalCell(reading.spot), figure(reading.x_mm), figure(reading.y_mm),
      figure(film?.low_m, UM), figure(film?.high_m, UM), figure(planned.get(i), UM), ...ownFigures(reading), decides.has(i) ? 'yes' : '', optionalCell(reading.note), ...signed,
    ].join(',');
  });
}

/** As the gauge, the balance or the comb gave it, in the order of the head. */
function ownFigures(reading: ReadingSpec): string[] {
  const of = <K extends ReadingSpec['kind']>(kind: K): Partial<Extract<ReadingSpec, { readonly kind: K }>> => (reading.kind === kind ? (reading as Extract<ReadingSpec, { readonly kind: K }>) : {});
  const [metal, coupon, micrometer, comb] = [of('metal'), of('coupon'), of('micrometer'), of('comb')];
  return [metal.dry_um, coupon.before_g, coupon.after_g, coupon.area_cm2, micrometer.before_um, micrometer.after_um, comb.low_um, comb.high_um].map((value) => figure(value));
}

function figure(value: number | undefined, unit = 1): string {
  return optionalCell(value === undefined ? undefined : value / unit, DIGITS);
}
