import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { shownTime } from '../../../sim/index.ts';
import { endReplay, playOn, runPlayer, seek } from '../../app/player.ts';
import { state } from '../../app/state.ts';
import { ButtonRow } from '../fields/ButtonRow.tsx';

/** The coat as it is laid: the film and the gun at any time of the path. */
export function Replay(): JSX.Element | null {
  useEffect(runPlayer, []);
  const film = state.film.value;
  if (film === null || film.end_s <= film.start_s) return null;
  const { start_s, end_s } = film;
  const now_s = state.replay_s.value ?? end_s;
  const text = `${shownTime(now_s - start_s)} of ${shownTime(end_s - start_s)}`;
  return (
    <div class="replay" role="group" aria-label="Replay">
      <button type="button" class="replay-play" onClick={playOn}>{state.playing.value ? 'Pause' : 'Replay'}</button>
      <input
        type="range"
        aria-label="Time of the replay"
        aria-valuetext={text}
        min={start_s}
        max={end_s}
        step={(end_s - start_s) / 500}
        value={now_s}
        onInput={(event) => seek(Number(event.currentTarget.value))}
      />
      <span class="replay-time" data-testid="replay-time">{text}</span>
      <ButtonRow label="Speed of the replay" value={state.playSpeed.value} options={[[1, '1×'], [4, '4×']]} choose={(speed) => (state.playSpeed.value = speed)} />
      <button type="button" disabled={state.replay_s.value === null} onClick={endReplay}>Finished film</button>
    </div>
  );
}
