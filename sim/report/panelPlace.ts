import type { Panel } from '../panel/panel.ts';

/** A place nearer to an edge of the panel's box than this share of its side is spoken of as at that edge. */
const EDGE_SHARE = 0.2;

/** Where a place lies on its panel, in words: `at the right edge`, `near the upper left corner`, `in the middle`. */
export function panelPlace([x_m, y_m]: readonly [number, number], { width_m, height_m }: Pick<Panel, 'width_m' | 'height_m'>): string {
  const across = sideOf(x_m / width_m, 'left', 'right');
  const up = sideOf(y_m / height_m, 'lower', 'upper');
  if (across === '' && up === '') return 'in the middle';
  if (across !== '' && up !== '') return `near the ${up} ${across} corner`;
  return `at the ${across === '' ? up : across} edge`;
}

function sideOf(share: number, low: string, high: string): string {
  if (share < EDGE_SHARE) return low;
  return share > 1 - EDGE_SHARE ? high : '';
}
