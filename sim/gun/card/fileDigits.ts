/** Rounds to what a job file holds of a measured number: finer digits would claim more than a card shows. */
export function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}

/** As `tenth`, for numbers of order 1 and shares in per cent. */
export function hundredth(value: number): number {
  return Math.round(value * 100) / 100;
}
