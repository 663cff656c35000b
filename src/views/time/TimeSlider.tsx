import './time.css';
import { computed } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { state, TIME_SPEEDS } from '../../app/state.ts';
import { goToTime, playTime, runTime, stepTime } from '../../app/timePlayer.ts';
import { makeTimeScale, type TimeScale } from '../../app/timeScale.ts';
import { clockText, momentLine } from '../../app/timeWords.ts';
import type { LifeReply } from '../../worker/protocol.ts';
import { ButtonRow } from '../fields/ButtonRow.tsx';

const PLACES = 1000;
/** Arrow steps that a page key takes. */
const PAGE_STEPS = 10;

const scale = computed<TimeScale | null>(() => {
  const life = state.life.value;
  return life === null || !life.isWhole ? null : makeTimeScale(life.sprayed_s, life.watched_s);
});

/** The film in time, from trigger on until it is ready for another coat: a clock to move and what the film is like then. */
export function TimeSlider(): JSX.Element {
  useEffect(runTime, []);
  const life = state.life.value;
  const now = scale.value;
  if (life === null || now === null) {
    return <p class="soft" role="status">Spraying the coat and letting it dry{life === null ? '…' : `: at ${clockText(life.watched_s)}…`}</p>;
  }
  const time_s = state.filmTime_s.value;
  const moment = state.moment.value;
  return (
    <div class="time" role="group" aria-label="Film in time">
      <div class="time-controls">
        <button type="button" class="replay-play" onClick={playTime}>{state.timePlaying.value ? 'Pause' : 'Play'}</button>
        <ButtonRow label="Times real time" value={state.timeSpeed.value} options={TIME_SPEEDS.map((speed) => [speed, `${speed}×`] as const)} choose={(speed) => (state.timeSpeed.value = speed)} />
      </div>
      <div class="time-scale">
        <input
          type="range"
          aria-label="Time of the film"
          aria-valuetext={clockText(time_s)}
          min={0}
          max={PLACES}
          step={1}
          value={Math.round(now.placeOf(time_s) * PLACES)}
          onInput={(event) => goToTime(now.timeAt(Number(event.currentTarget.value) / PLACES))}
          onKeyDown={(event) => {
            const act = actOf(event.key, life);
            if (act === null || event.ctrlKey || event.metaKey || event.altKey) return;
            event.preventDefault();
            act();
          }}
        />
        <Ticks ticks={now.ticks} />
        <Ticks ticks={events(life, now)} />
      </div>
      <p class="time-line" data-testid="moment-line" data-time={moment?.time_s} data-wet={moment?.figures.meanWet_m}>
        {moment === null ? 'The film is on its way…' : momentLine(moment.time_s, moment.figures, life, state.units.value)}
      </p>
      <details class="more">
        <summary>What this can tell, and what not</summary>
        <p>
          Each place of the film dries, cools and levels by itself, and runs downhill. Where a run starts, how long it gets and
          how much is in it hold on a finer grid too; the height of its bead does not. Not modelled: water that a cold film takes
          up, solvent and warmth that differ through the depth of the film, draughts and sun. Waits are the model's: those of the
          product's data sheet go before them.
        </p>
      </details>
    </div>
  );
}

function actOf(key: string, life: LifeReply): (() => void) | null {
  const acts: Readonly<Record<string, () => void>> = {
    ' ': playTime,
    ArrowLeft: () => stepTime(-1),
    ArrowDown: () => stepTime(-1),
    ArrowRight: () => stepTime(1),
    ArrowUp: () => stepTime(1),
    PageDown: () => stepTime(-PAGE_STEPS),
    PageUp: () => stepTime(PAGE_STEPS),
    Home: () => goToTime(0),
    End: () => goToTime(life.watched_s),
  };
  return acts[key] ?? null;
}

/** What happens when: under the seconds and minutes. */
function events({ sprayed_s, touchDry_s, recoat_s }: LifeReply, { placeOf }: TimeScale): { place: number; text: string }[] {
  const marks: readonly (readonly [number | null, string])[] = [[sprayed_s, 'sprayed'], [touchDry_s, 'touch dry'], [recoat_s, 'recoat']];
  return marks.flatMap(([at_s, text]) => (at_s === null ? [] : [{ place: placeOf(at_s), text }]));
}

function Ticks({ ticks }: { readonly ticks: readonly { readonly place: number; readonly text: string }[] }): JSX.Element {
  return (
    <div class="time-ticks" aria-hidden="true">
      {ticks.map(({ place, text }) => (
        <span key={text} class={place > 0.94 ? 'at-end' : place < 0.04 ? 'at-start' : ''} style={{ left: `${place * 100}%` }}>{text}</span>
      ))}
    </div>
  );
}
