import type { WindowFault } from '../verdict/workingWindow.ts';

/**
 * Pale grounds of a window's regions, `#rrggbb`, under ink hatching that tells them apart without colour: thin is
 * purple and heavy orange as on a film against its target; the others lie between, at one lightness.
 */
export const WINDOW_COLOURS: Readonly<Record<WindowFault, string>> = {
  'thin-lap': '#cfc4e4',
  'heavy-spot': '#f3cf9f',
  run: '#e2a993',
  'dry-spray': '#d3cdbd',
  'orange-peel': '#e9e0a0',
  blush: '#bcd6e6',
};

/** Where nothing is at fault: paper. */
export const INSIDE_COLOUR = '#ffffff';
/** Laid over distances that were not measured, as a share of ink. */
export const UNMEASURED_SHARE = 0.35;
