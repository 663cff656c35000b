import type { FitFamily } from './fanFit.ts';
import { leastSquares, type Fitted } from './fitLeastSquares.ts';
import { fitModel, type FitModel } from './fitModel.ts';
import { fitStarts } from './fitStarts.ts';
import type { CardReadings } from './cardReadings.ts';

/** A family's best numbers on one card, and the model that they belong to. */
export interface FamilyFit extends Fitted {
  readonly model: FitModel;
}

const STEPS_FROM_A_START = 12;
const STEPS_A_ROUND = 20;
const MOST_ROUNDS = 12;
/** A round that gains less than this share of the squares ends the search. */
const LITTLE_GAIN = 1e-10;

/** Fits one family: a few steps from every start, then the best followed to its end. @param readings as `checkReadings` passes them. */
export function fitFamily(readings: CardReadings, family: FitFamily): FamilyFit {
  const model = fitModel(readings, family);
  const tried = fitStarts(model).map((start) => leastSquares(model, start, STEPS_FROM_A_START));
  let best = tried.reduce((least, each) => (each.squares < least.squares ? each : least));
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const next = leastSquares(model, best.of, STEPS_A_ROUND);
    const isDone = !(best.squares - next.squares > LITTLE_GAIN * best.squares);
    best = next;
    if (isDone) break;
  }
  return { model, ...best };
}
