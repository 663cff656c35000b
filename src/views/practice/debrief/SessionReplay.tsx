import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { shownTime, type UnitSystem } from '../../../../sim/index.ts';
import type { DebriefReply, SessionAtReply } from '../../../worker/protocol.ts';
import { FilmMap } from './FilmMap.tsx';
import { wholeBox } from './mapBox.ts';
import { GunInk, PanelInk } from './MapInk.tsx';
import { MapLegend } from '../../panel/MapLegend.tsx';

export interface SessionReplayProps {
  readonly debrief: DebriefReply;
  /** The moment last answered; null before one was asked for. */
  readonly at: SessionAtReply | null;
  readonly onAt: (time_s: number) => void;
  readonly units: UnitSystem;
}

/** Steps of the slider: finer than a hand can set it. */
const STEPS = 500;

/** The session as it was sprayed, in real time. It never begins by itself, whatever the reader's wish about motion. */
export function SessionReplay({ debrief, at, onAt, units }: SessionReplayProps): JSX.Element | null {
  const { start_s, end_s, reported, sprayed } = debrief;
  const { panel, panelGrid } = reported.coat.setting;
  const { time_s, isPlaying, seek, toggle } = usePlayer(debrief, onAt);
  if (end_s <= start_s) return null;
  const now = at?.id === debrief.id ? at : null;
  const field = now?.field ?? sprayed;
  const gun = now?.gun ?? null;
  const told = `${shownTime(time_s - start_s)} of ${shownTime(end_s - start_s)}`;
  return (
    <section class="debrief-part debrief-replay" aria-label="Replay of the session">
      <h2>Replay</h2>
      <FilmMap
        field={field}
        cover={panelGrid.cover}
        box={wholeBox(panel)}
        label={`${field.title}, ${told}`}
        most_px={460}
        over={(place) => (
          <>
            <PanelInk panel={panel} place={place} />
            {gun === null ? null : <GunInk gun={gun} place={place} />}
          </>
        )}
      />
      <div class="replay" role="group" aria-label="Replay">
        <button type="button" class="replay-play" onClick={toggle}>{isPlaying ? 'Pause' : 'Play'}</button>
        <input
          type="range"
          aria-label="Time of the session"
          aria-valuetext={told}
          min={start_s}
          max={end_s}
          step={(end_s - start_s) / STEPS}
          value={time_s}
          onInput={(event) => seek(Number(event.currentTarget.value))}
        />
        <span class="replay-time" data-testid="session-time">{told}</span>
      </div>
      <MapLegend field={field} units={units} />
    </section>
  );
}

interface Player {
  readonly time_s: number;
  readonly isPlaying: boolean;
  readonly seek: (time_s: number) => void;
  /** Plays on from here, from the start at the end, or pauses. */
  readonly toggle: () => void;
}

function usePlayer({ id, start_s, end_s }: DebriefReply, onAt: (time_s: number) => void): Player {
  const [time_s, setTime] = useState(end_s);
  const [isPlaying, setPlaying] = useState(false);
  const now = useRef(end_s);
  const ask = useRef(onAt);
  ask.current = onAt;
  const go = (to_s: number): void => {
    now.current = to_s;
    setTime(to_s);
    ask.current(to_s);
  };
  useEffect(() => {
    now.current = end_s;
    setTime(end_s);
    setPlaying(false);
  }, [id, end_s]);
  useEffect(() => {
    if (!isPlaying) return undefined;
    let before_ms: number | null = null;
    const tick = (now_ms: number): void => {
      const next_s = Math.min(end_s, now.current + (before_ms === null ? 0 : (now_ms - before_ms) / 1000));
      before_ms = now_ms;
      go(next_s);
      if (next_s >= end_s) setPlaying(false);
      else frame = requestAnimationFrame(tick);
    };
    let frame = requestAnimationFrame(tick);
    return () => cancelAnimationFrame(frame);
  }, [isPlaying, id, end_s]);
  return {
    time_s,
    isPlaying,
    seek: (to_s) => {
      setPlaying(false);
      go(to_s);
    },
    toggle: () => {
      if (!isPlaying && now.current >= end_s) go(start_s);
      setPlaying(!isPlaying);
    },
  };
}
