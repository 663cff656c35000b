import type { JSX } from 'preact';
import { clockText } from '../../app/timeWords.ts';
import { lesson, playLesson, TIMES } from './lessonStage.ts';

/** Play or pause, and the time that every side is shown at. */
export function LessonClock(): JSX.Element {
  const reply = lesson.reply.value;
  const time_s = reply?.times_s[lesson.index.value] ?? 0;
  return (
    <div class="lessons-clock" role="group" aria-label="Clock">
      <button type="button" disabled={reply === null} onClick={playLesson}>{lesson.playing.value ? 'Pause' : 'Play'}</button>
      <input
        type="range"
        aria-label="Time since the trigger was pulled"
        aria-valuetext={clockText(time_s)}
        min={0}
        max={TIMES - 1}
        step={1}
        value={lesson.index.value}
        disabled={reply === null}
        onInput={(event) => {
          lesson.playing.value = false;
          lesson.index.value = Number(event.currentTarget.value);
        }}
      />
      {/* Not read out as it runs: the slider tells its time when asked. */}
      <output aria-live="off">{clockText(time_s)}</output>
    </div>
  );
}
