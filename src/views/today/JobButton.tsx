import type { JSX } from 'preact';
import type { TodayAnswer, TodayPart } from '../../../sim/index.ts';
import { makeTodayJob } from '../../app/today/todaySheet.ts';
import { state, type StageName } from '../../app/state.ts';
import type { SchemeTab } from '../../app/scheme/schemePrefs.ts';
import { openScheme } from '../scheme/openScheme.ts';

type Place = { readonly stage: StageName; readonly words: string } | { readonly tab: SchemeTab; readonly words: string };

/** Where an answer is worked on further. */
const PLACES: Readonly<Record<TodayPart, Place>> = {
  climate: { stage: 'air', words: 'at Air' },
  thinning: { stage: 'mix', words: 'at Mix' },
  film: { stage: 'strokes', words: 'at Strokes' },
  hold: { stage: 'part', words: 'at Part' },
  next: { tab: 'days', words: 'at the days of its scheme' },
  amounts: { tab: 'amounts', words: 'at the amounts of its scheme' },
};

/** Makes the answer the job in hand and goes to where it is worked on; Undo brings the job before back. */
export function JobButton({ answer, part, close }: { readonly answer: TodayAnswer; readonly part: TodayPart; readonly close: () => void }): JSX.Element {
  const place = PLACES[part];
  const make = (): void => {
    if (!makeTodayJob(answer)) return;
    close();
    if ('stage' in place) state.stage.value = place.stage;
    else void openScheme({ tab: place.tab });
  };
  return <button type="button" class="today-job" aria-label={`Make this a job, open ${place.words}`} onClick={make}>Make this a job</button>;
}
