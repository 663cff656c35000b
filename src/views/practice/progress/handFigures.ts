import { shown, shownAngle, shownPercent, shownTime, type HandSample, type UnitSystem, type Wander } from '../../../../sim/index.ts';
import type { PersonalHand } from './progressData.ts';

/** What a table of a hand says of one error. */
export interface HandFigure {
  readonly title: string;
  /** Where the hand lies on average. */
  readonly mean: string;
  /** Standard deviation. */
  readonly spread: string;
  /** How long an error lasts, in time and in travel. */
  readonly lasts_s: string;
  readonly lasts_m: string;
}

/** Said where the sessions are too short to show it. */
const NOT_SHOWN = 'not shown';

interface FigureKind {
  readonly key: keyof HandSample;
  readonly title: string;
  readonly shown: (value: number, system: UnitSystem) => string;
  /** Words for a mean above and below zero; null where the sign says nothing to a reader. */
  readonly sides: readonly [above: string, below: string] | null;
}

const length = (value: number, system: UnitSystem): string => shown(value, 'length', system);

const FIGURES: readonly FigureKind[] = [
  { key: 'distance_m', title: 'Gun distance', shown: length, sides: ['too far', 'too near'] },
  { key: 'speed', title: 'Speed', shown: shownPercent, sides: ['too fast', 'too slow'] },
  { key: 'overlap', title: 'Overlap', shown: shownPercent, sides: ['too much', 'too little'] },
  { key: 'tilt_rad', title: 'Tilt', shown: shownAngle, sides: null },
  { key: 'across_m', title: 'Wander across the stroke', shown: length, sides: null },
];

/** Each error of a hand in the reader's units. */
export function handFigures({ sample, speed_m_s }: PersonalHand, system: UnitSystem): readonly HandFigure[] {
  return FIGURES.map(({ key, title, shown: words, sides }) => {
    const error: Wander = sample[key];
    const told = (value: number, as: (value: number) => string): string => (Number.isFinite(value) ? as(value) : NOT_SHOWN);
    return {
      title,
      mean: told(error.mean, (mean) => meanWords(words(Math.abs(mean), system), mean, words(Math.abs(mean), system) === words(0, system) ? null : sides)),
      spread: told(error.deviation, (deviation) => words(deviation, system)),
      lasts_s: told(error.correlation_s, shownTime),
      lasts_m: told(error.correlation_s * speed_m_s, (travel) => shown(travel, 'length', system)),
    };
  });
}

/** @param sides null also for a mean that is shown as nothing. */
function meanWords(figure: string, mean: number, sides: FigureKind['sides']): string {
  if (sides === null) return figure;
  return `${figure} ${mean > 0 ? sides[0] : sides[1]}`;
}
