import { ranged, type Sourced } from './sourced.ts';

/** What a film of aluminium dope throws back as a ground beneath a colour, without the shine of its face, 0 to 1. */
export const ALUMINIUM_REFLECTANCE: Sourced = ranged(0.55, 0.5, 0.6, 'Assumed: a matt film of aluminium whose flakes do not leaf; sanded, thin or leafing film differs');
