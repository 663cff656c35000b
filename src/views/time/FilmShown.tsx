import type { JSX } from 'preact';
import { state } from '../../app/state.ts';
import { showInTime } from '../../app/timePlayer.ts';
import { ButtonRow } from '../fields/ButtonRow.tsx';
import { fetched } from '../frame/fetched.tsx';
import { Replay } from '../panel/Replay.tsx';

/** A first visit shows the film as laid: the rest is fetched when it is asked for. */
const TimeSlider = fetched(async () => (await import('./TimeSlider.tsx')).TimeSlider);

/** Which film the panel shows, as it was laid or at a time of its life, with the clock of either. */
export function FilmShown(): JSX.Element | null {
  if (state.film.value === null) return null;
  const { value: inTime } = state.inTime;
  return (
    <>
      <ButtonRow label="Film shown" value={inTime ? 'time' : 'laid'} options={[['laid', 'As laid'], ['time', 'In time']]} choose={(shown) => showInTime(shown === 'time')} />
      {inTime ? <TimeSlider /> : <Replay />}
    </>
  );
}
