import { solve } from 'ml-matrix';

/**
 * The polynomial nearest to values at even places by weighted least squares.
 * @param products sum over a place of weight times value, where `weights` are those weights. Places run from -1 to 1.
 * @returns coefficients, the constant first.
 */
export function evenPolynomial(weights: ArrayLike<number>, products: ArrayLike<number>, degree: number): number[] {
  const left = Array.from({ length: degree + 1 }, () => new Array<number>(degree + 1).fill(0));
  const right = Array.from({ length: degree + 1 }, () => [0]);
  for (let i = 0; i < weights.length; i++) {
    const place = evenPlace(i, weights.length);
    for (const [p, row] of left.entries()) {
      const power = place ** p;
      for (let q = 0; q <= degree; q++) row[q] = (row[q] as number) + power * place ** q * (weights[i] as number);
      right[p] = [(right[p]?.[0] as number) + power * (products[i] as number)];
    }
  }
  return solve(left, right).to1DArray();
}

/** Place `i` of `count` even ones from -1 to 1, both ends among them. */
export function evenPlace(i: number, count: number): number {
  return (2 * i) / (count - 1) - 1;
}

export function polynomialAt(coefficients: readonly number[], place: number): number {
  return coefficients.reduceRight((sum, coefficient) => sum * place + coefficient, 0);
}
