import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { modelFilm, modelSlopes, spreadFree, type FitModel } from './fitModel.ts';

/** Numbers of a fit, and the sum of squares that they leave. */
export interface Fitted {
  readonly of: number[];
  readonly squares: number;
}

/** A sum of squares (films in highest readings) that is rounding. */
const ROUNDING = 1e-28;
/** Damping of the first step: little, since every start is near. */
const DAMPING = 1e-4;

/**
 * Least squares from one start by the method of Levenberg and Marquardt with exact slopes.
 * @param y other films at the model's places; the readings themselves where not given.
 * @returns the best numbers met; no worse than the start.
 */
export function leastSquares(model: FitModel, start: readonly number[], maxIterations: number, y: Float64Array = model.y): Fitted {
  const { free, low, high, x } = model;
  const of = (turned: readonly number[]) => spreadFree(model, start, turned);
  const pick = (values: readonly number[]) => free.map((index) => values[index] as number);
  const { parameterValues, parameterError } = levenbergMarquardt({ x, y }, (turned) => modelFilm(model, of(turned)), {
    initialValues: pick(start),
    minValues: pick(low),
    maxValues: pick(high),
    jacobianFunction: (turned) => modelSlopes(model, of(turned)),
    damping: DAMPING,
    maxIterations,
    errorTolerance: ROUNDING,
  });
  return { of: of(parameterValues), squares: parameterError };
}
