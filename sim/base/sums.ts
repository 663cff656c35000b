/**
 * Sum of `values[i] * weights[i]`, compensated (Neumaier 1974, "Rundungsfehleranalyse einiger
 * Verfahren zur Summation endlicher Summen", ZAMM 54): error below 2 ulp of the sum plus
 * n ulp² of the sum of magnitudes.
 */
export function weightedSum(values: ArrayLike<number>, weights: ArrayLike<number>): number {
  let sum = 0;
  let lost = 0;
  const count = values.length;
  for (let i = 0; i < count; i++) {
    const term = (values[i] as number) * (weights[i] as number);
    const next = sum + term;
    lost += Math.abs(sum) >= Math.abs(term) ? sum - next + term : term - next + sum;
    sum = next;
  }
  return sum + lost;
}

/** Sum of all values, compensated likewise. */
export function compensatedSum(values: ArrayLike<number>): number {
  let sum = 0;
  let lost = 0;
  const count = values.length;
  for (let i = 0; i < count; i++) {
    const term = values[i] as number;
    const next = sum + term;
    lost += Math.abs(sum) >= Math.abs(term) ? sum - next + term : term - next + sum;
    sum = next;
  }
  return sum + lost;
}
