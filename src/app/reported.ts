import { computed } from '@preact/signals';
import type { ReportedCoat } from '../../sim/index.ts';
import { state } from './state.ts';

let last: (ReportedCoat & { readonly version: number }) | null = null;

/**
 * The coat as judged: film and verdict of the same version. While a newer film waits for its
 * verdict, the last pair stands, so that sentence and figures never mix two films.
 */
const asLaid = computed(() => {
  const film = state.film.value;
  const verdict = state.verdict.value;
  if (film === null || verdict === null) last = null;
  else if (film.version === verdict.version) last = { ...film, verdict: verdict.verdict };
  return last;
});

/** The coat as judged, with the faults of its film's life while the reader looks at that. */
export const reported = computed<ReportedCoat | null>(() => {
  const coat = asLaid.value;
  const life = state.lifeVerdict.value;
  if (coat === null || life === null || !state.inTime.value || life.version !== coat.version) return coat;
  return { ...coat, life: { verdict: life.verdict, moments: [] } };
});
