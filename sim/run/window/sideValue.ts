import type { WindowSide } from '../../verdict/workingWindow.ts';

/** Value of an axis at a place of its points, 0 to count - 1, also between them. */
export function sideValue({ low, high, count }: WindowSide, place: number): number {
  return low + ((high - low) * place) / (count - 1);
}
