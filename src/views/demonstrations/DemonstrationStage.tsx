import './demonstrations.css';
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { DEMONSTRATIONS, demonstrationSentence, type ReportedSide } from '../../../sim/index.ts';
import { state } from '../../app/state.ts';
import { useOverWindow } from '../frame/useOverWindow.ts';
import { Handout } from './Handout.tsx';
import { KnobControl } from './KnobControl.tsx';
import { LessonClock } from './LessonClock.tsx';
import { LessonFigures } from './LessonFigures.tsx';
import { LessonLegend } from './LessonLegend.tsx';
import { LessonMap } from './LessonMap.tsx';
import { choose, chosen, lesson, openAsJob, runLessons } from './lessonStage.ts';

export interface DemonstrationStageProps {
  readonly close: () => void;
}

/** The instructor's stage: one demonstration, its sides beside each other on one clock, its knob, and what to ask. */
export function DemonstrationStage({ close }: DemonstrationStageProps): JSX.Element {
  const stage = useOverWindow(() => { if (!isFull) close(); });
  const isFull = useFullScreen(stage);
  useEffect(runLessons, []);
  const demonstration = chosen.value;
  const openJob = (): void => {
    openAsJob();
    close();
  };
  return (
    <>
      <div
        ref={stage}
        class={isFull ? 'over-window lessons full' : 'over-window lessons'}
        role="dialog"
        aria-modal="true"
        aria-label="Demonstrations"
        tabIndex={-1}
      >
        <header class="lessons-head">
          <h1>{demonstration.title}</h1>
          <div class="lessons-actions">
            <button type="button" onClick={() => void toggleFullScreen(stage.current)}>{isFull ? 'Leave full screen' : 'Full screen'}</button>
            <button type="button" onClick={() => window.print()} disabled={lesson.figures.value === null}>Print handout</button>
            <button type="button" onClick={openJob}>Open as a job</button>
            <button type="button" class="act" onClick={close}>Close</button>
          </div>
        </header>
        <div class="lessons-body">
          <div class="lessons-shown">
            <Maps />
            <LessonClock />
          </div>
          <div class="lessons-told">
            <nav class="lessons-list" aria-label="Demonstrations">
              <label for="lesson">Demonstration</label>
              <select id="lesson" value={demonstration.id} onChange={(event) => chooseById(event.currentTarget.value)}>
                {DEMONSTRATIONS.map(({ id, title }) => <option key={id} value={id}>{title}</option>)}
              </select>
            </nav>
            <p class="lessons-question"><strong>Ask:</strong> {demonstration.question}</p>
            <KnobControl />
            <Sentence />
            <p class="lessons-caution"><strong>Caution:</strong> {demonstration.caution}</p>
            <LessonFigures />
          </div>
        </div>
      </div>
      <Handout />
    </>
  );
}

function chooseById(id: string): void {
  const found = DEMONSTRATIONS.find((demonstration) => demonstration.id === id);
  if (found !== undefined) choose(found);
}

/** Every side's map at the time shown; the cured one stands second. */
function Maps(): JSX.Element {
  const reply = lesson.reply.value;
  if (reply === null) return <p class="lessons-wait" role="status">{lesson.problem.value === null ? 'Spraying both panels…' : ''}</p>;
  const { sides, maps, field } = reply;
  const index = lesson.index.value;
  return (
    <section class="lessons-maps" aria-label="Panels side by side" aria-busy={lesson.working.value}>
      <div class="lessons-panels">
        {sides.map((side, i) => <Panel key={side.id} side={side} values={maps[i]?.[index]} />)}
      </div>
      <LessonLegend field={field} />
    </section>
  );
}

function Panel({ side, values }: { readonly side: ReportedSide; readonly values: Float32Array | undefined }): JSX.Element | null {
  const reply = lesson.reply.value;
  if (reply === null || values === undefined) return null;
  return (
    <figure class="lessons-panel">
      <LessonMap field={reply.field} values={values} title={side.title} />
      <figcaption>{side.title}</figcaption>
    </figure>
  );
}

/** What the run has shown, or why there is none. */
function Sentence(): JSX.Element {
  const { reply, problem, working } = lesson;
  const now = reply.value;
  if (problem.value !== null) return <p class="lessons-sentence" role="alert">{problem.value.title}. {problem.value.text}</p>;
  const told = now === null ? '' : demonstrationSentence({ demonstration: chosen.value, sides: now.sides, moments: [] }, state.units.value);
  return <p class="lessons-sentence" role="status" data-testid="lesson-sentence" data-working={working.value}>{told}</p>;
}

function useFullScreen(stage: { readonly current: HTMLElement | null }): boolean {
  const [isFull, setFull] = useState(false);
  useEffect(() => {
    const note = (): void => setFull(document.fullscreenElement !== null && document.fullscreenElement === stage.current);
    document.addEventListener('fullscreenchange', note);
    return () => document.removeEventListener('fullscreenchange', note);
  }, []);
  return isFull;
}

async function toggleFullScreen(stage: HTMLElement | null): Promise<void> {
  try {
    if (document.fullscreenElement === null) await stage?.requestFullscreen();
    else await document.exitFullscreen();
  } catch {
    lesson.problem.value = { title: 'The browser does not allow full screen here', text: 'Use its own full screen (often F11).', place: {} };
  }
}
