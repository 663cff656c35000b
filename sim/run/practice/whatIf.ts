import type { ReportedWhatIf, WhatIfHabit } from '../../report/reportedDebrief.ts';
import { correctedByHabit } from '../changedStrokes.ts';
import type { LifeOptions } from '../coatLife.ts';
import type { Habit } from '../habits.ts';
import type { Debrief } from './debrief.ts';
import { otherFilm, type WatchedFilm } from './otherFilm.ts';

/** The correction behind each question. Evening the speed also takes out the stops; a gun without arc is carried parallel. */
const CORRECTION: Readonly<Record<WhatIfHabit, Habit>> = {
  'even-speed': 'even-speed',
  'no-arc': 'square-gun',
  'even-distance': 'even-distance',
  'right-overlap': 'move-strokes',
  'trigger-past-edge': 'trigger-past-edge',
};

/** The habits that a session can be sprayed again without, the commonest first. */
export const WHAT_IFS = Object.keys(CORRECTION) as readonly WhatIfHabit[];

/**
 * The same session with one habit corrected to what was meant in every stroke that has it, laid
 * and watched by the model. @throws CrosscoatError `cancelled`.
 */
export function whatIf(debrief: Debrief, habit: WhatIfHabit, options: Pick<LifeOptions, 'shouldStop'> = {}): ReportedWhatIf & { readonly other: WatchedFilm } {
  const { setting, coarse, strokes, task } = debrief;
  const { travel, changed } = correctedByHabit(setting, strokes, CORRECTION[habit]);
  return { habit, strokes: changed.size, other: otherFilm(setting, coarse, travel, { ...options, watch_s: task.watch_s }) };
}
