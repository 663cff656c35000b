import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { CrosscoatError } from '../../base/errors.ts';

/** The lower triangle of a covariance matrix, row-major, `size` × `size`. */
export interface Lower {
  readonly size: number;
  readonly of: Float64Array;
}

/**
 * The Cholesky triangle of a symmetric matrix (by the package ml-matrix).
 * @param entry value at (row, column), column not above row. @throws CrosscoatError `range` where it is not positive definite.
 */
export function choleskyOf(size: number, entry: (row: number, column: number) => number): Lower {
  const whole = new Matrix(size, size);
  for (let row = 0; row < size; row++) {
    for (let column = 0; column <= row; column++) {
      const value = entry(row, column);
      whole.set(row, column, value);
      whole.set(column, row, value);
    }
  }
  const decomposed = new CholeskyDecomposition(whole);
  const of = Float64Array.from(decomposed.lowerTriangularMatrix.to1DArray());
  const leastPivot = Array.from({ length: size }, (_, i) => of[i * size + i] as number).reduce((least, pivot) => Math.min(least, pivot), Infinity);
  if (!decomposed.isPositiveDefinite() || !(leastPivot > 0)) {
    throw new CrosscoatError('range', 'kriging: two exact readings lie too near each other to be told apart; say how far the gauge repeats, or leave one out');
  }
  return { size, of };
}

/** L⁻¹ b: forward substitution. */
export function forward({ size, of }: Lower, b: Float64Array): Float64Array {
  const solved = new Float64Array(size);
  for (let row = 0; row < size; row++) {
    let sum = b[row] as number;
    const start = row * size;
    for (let column = 0; column < row; column++) sum -= (of[start + column] as number) * (solved[column] as number);
    solved[row] = sum / (of[start + row] as number);
  }
  return solved;
}

/** L⁻ᵀ b: back substitution. */
export function backward({ size, of }: Lower, b: Float64Array): Float64Array {
  const solved = new Float64Array(size);
  for (let row = size - 1; row >= 0; row--) {
    let sum = b[row] as number;
    for (let below = row + 1; below < size; below++) sum -= (of[below * size + row] as number) * (solved[below] as number);
    solved[row] = sum / (of[row * size + row] as number);
  }
  return solved;
}

/** Logarithm of the determinant of L Lᵀ. */
export function logDeterminant({ size, of }: Lower): number {
  let sum = 0;
  for (let i = 0; i < size; i++) sum += Math.log(of[i * size + i] as number);
  return 2 * sum;
}

/** Sum of products. */
export function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number);
  return sum;
}
