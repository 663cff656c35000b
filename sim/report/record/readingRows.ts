import type { ReadingSpec } from '../../job/schema.ts';
import type { RecordedSurvey } from './reportedRecord.ts';
import type { FilmReading } from '../../survey/filmReading.ts';
import type { JudgedSurvey } from '../../survey/judgedSurvey.ts';
import { combWords } from '../logWords.ts';
import { READING_KIND_WORDS } from '../survey/surveyWords.ts';
import { shown, shownNumber, shownPlace, type UnitSystem } from '../units.ts';

/** Readings that decide the verdict, by their place in the survey: those of every check that answers as the whole does where it fails or is open, else of the nearest call. */
export function decidingReadings({ answer, checks }: JudgedSurvey): ReadonlySet<number> {
  const deciding = answer === 'pass' ? checks.slice(0, 1) : checks.filter((check) => check.answer === answer);
  return new Set(deciding.flatMap(({ readings }) => readings));
}

/** One reading for a table. */
export interface ReadingRow {
  /** As people count, from 1. */
  readonly number: number;
  readonly kind: string;
  /** As the gauge, the balance or the comb gave it. */
  readonly read: string;
  /** Dry film that it comes to, after the rule's own correction. */
  readonly film: string;
  /** Dry film that the model predicts there; empty where none is known. */
  readonly planned: string;
  readonly place: string;
  readonly note: string;
  readonly decides: boolean;
}

/** The readings of a survey as rows, in the order in which they were entered. What could not be judged has no dry film, what could not be compared no planned one. */
export function readingRows({ survey: { readings }, reported, comparison }: RecordedSurvey, system: UnitSystem): ReadingRow[] {
  const judged = reported?.judged ?? null;
  const planned = new Map(comparison?.readings.map(({ index, predicted_m }) => [index, predicted_m]) ?? []);
  const films = new Map(judged?.readings.map((film) => [film.index, film]) ?? []);
  const decides = judged === null ? new Set<number>() : decidingReadings(judged);
  return readings.map((reading, i) => {
    const film = films.get(i);
    return {
      number: i + 1,
      kind: READING_KIND_WORDS[reading.kind],
      read: readWords(reading, system),
      film: film === undefined ? '' : filmBounds(film, system),
      planned: planned.has(i) ? shown(planned.get(i) as number, 'film', system) : '',
      place: placeWords(reading, system),
      note: reading.note ?? '',
      decides: decides.has(i),
    };
  });
}

function filmBounds({ low_m, high_m }: FilmReading, system: UnitSystem): string {
  if (low_m === high_m) return shown(low_m, 'film', system);
  return high_m === Infinity ? `above ${shown(low_m, 'film', system)}` : `${shownNumber(low_m, 'film', system)} to ${shown(high_m, 'film', system)}`;
}

function readWords(reading: ReadingSpec, system: UnitSystem): string {
  switch (reading.kind) {
    case 'metal': return `${shown(reading.dry_um * 1e-6, 'film', system)} dry`;
    case 'coupon': return `${reading.before_g} g to ${reading.after_g} g on ${reading.area_cm2} cm²`;
    case 'micrometer': return `${shownNumber(reading.before_um * 1e-6, 'film', system)} to ${shown(reading.after_um * 1e-6, 'film', system)}`;
    case 'comb': return combWords(reading, system);
  }
}

function placeWords({ area, spot, x_mm, y_mm }: ReadingSpec, system: UnitSystem): string {
  const at = x_mm === undefined || y_mm === undefined ? [] : [shownPlace([x_mm / 1000, y_mm / 1000], system)];
  return [...(area === undefined ? [] : [area]), ...(spot === undefined ? [] : [spot]), ...at].join(', ');
}
