/** Where a function that changes its sign between two places is 0, by halving the way between them 30 times. */
export function signChange(value: (place: number) => number, low: number, high: number): number {
  const sign = Math.sign(value(low));
  if (sign === 0) return low;
  for (let i = 0; i < 30; i++) {
    const middle = 0.5 * (low + high);
    if (Math.sign(value(middle)) === sign) low = middle;
    else high = middle;
  }
  return 0.5 * (low + high);
}
