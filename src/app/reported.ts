import { computed } from '@preact/signals';
import type { ReportedCoat } from '../../sim/index.ts';
import { state } from './state.ts';

let last: ReportedCoat | null = null;

/**
 * The coat as judged: film and verdict of the same version. While a newer film waits for its
 * verdict, the last pair stands, so that sentence and figures never mix two films.
 */
export const reported = computed<ReportedCoat | null>(() => {
  const film = state.film.value;
  const verdict = state.verdict.value;
  if (film === null || verdict === null) last = null;
  else if (film.version === verdict.version) last = { ...film, verdict: verdict.verdict };
  return last;
});
