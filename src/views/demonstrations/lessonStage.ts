import { batch, computed, effect, signal } from '@preact/signals';
import { CrosscoatError, DEMONSTRATIONS, type Demonstration, type ReportedSide } from '../../../sim/index.ts';
import { replaceJob } from '../../app/document.ts';
import { latestOnly } from '../../app/latest.ts';
import { problemOf, type Problem } from '../../app/problem.ts';
import { state } from '../../app/state.ts';
import { Stale, startClient, type WorkerClient } from '../../worker/client.ts';
import type { LessonReply } from '../../worker/protocol.ts';

/** Pictures of a demonstration, and how long each is shown while it plays. */
export const TIMES = 40;
const SHOWN_MS = 110;

const [FIRST] = DEMONSTRATIONS;

/** What the instructor has set, and what was answered. None of it is kept: a lesson begins anew. */
export const lesson = {
  id: signal(FIRST?.id ?? ''),
  knob: signal(FIRST?.knob.wrong ?? 0),
  /** Place in the times of the reply. */
  index: signal(TIMES - 1),
  playing: signal(false),
  reply: signal<LessonReply | null>(null),
  /** The sides at the time shown; null until they are worked out. */
  figures: signal<readonly ReportedSide[] | null>(null),
  problem: signal<Problem | null>(null),
  working: signal(false),
};

/** The demonstration chosen. @throws CrosscoatError `not-found` where there are none. */
export const chosen = computed<Demonstration>(() => {
  const found = DEMONSTRATIONS.find(({ id }) => id === lesson.id.value) ?? FIRST;
  if (found === undefined) throw new CrosscoatError('not-found', 'there are no demonstrations');
  return found;
});

/** Shows another demonstration, as it goes wrong, at the end of its watch. */
export function choose(demonstration: Demonstration): void {
  batch(() => {
    lesson.playing.value = false;
    // The one that is shown already is not asked for again, so what was answered must stay.
    if (demonstration.id !== lesson.id.peek()) {
      lesson.reply.value = null;
      lesson.figures.value = null;
    }
    lesson.id.value = demonstration.id;
    lesson.knob.value = demonstration.knob.wrong;
    lesson.index.value = TIMES - 1;
  });
}

/** Plays from the time shown, or from the start where it is the last; or stops. */
export function playLesson(): void {
  if (!lesson.playing.peek() && lesson.index.peek() >= TIMES - 1) lesson.index.value = 0;
  lesson.playing.value = !lesson.playing.peek();
}

/** Puts the side at the knob in place of the job in hand; Undo brings that back. */
export function openAsJob(): void {
  const { title, job } = chosen.peek();
  try {
    const opened = job(lesson.knob.peek());
    batch(() => {
      replaceJob(`Open the demonstration "${title}"`, opened);
      state.coatId.value = opened.coats.at(-1)?.id ?? '';
    });
  } catch (thrown) {
    state.notice.value = problemOf('The demonstration was not opened', thrown);
  }
}

/** A worker of its own runs the lessons, so that the job in hand goes on beside them. @returns what ends it. */
export function runLessons(): () => void {
  let worker: Worker | null = null;
  const open = (): Worker => (worker = new Worker(new URL('../../worker/worker.ts', import.meta.url), { type: 'module', name: 'crosscoat-lessons' }));
  const client = startClient(open, (why) => (lesson.problem.value = { title: 'The simulation stopped and was started again', text: `Turn the knob once more. Reason: ${why}.`, place: {} }));
  const stops = [followKnob(client), followTime(client), play()];
  return () => {
    for (const stop of stops) stop();
    lesson.playing.value = false;
    worker?.terminate();
  };
}

function followKnob(client: WorkerClient): () => void {
  const ask = latestOnly(async ({ id, knob }: { id: string; knob: number }) => {
    try {
      const reply = await client.ask('lesson', { id, knob, times: TIMES });
      if (id !== lesson.id.peek()) return;
      batch(() => {
        lesson.reply.value = reply;
        lesson.problem.value = null;
      });
    } catch (thrown) {
      if (!(thrown instanceof Stale)) lesson.problem.value = problemOf('This could not be demonstrated', thrown);
    } finally {
      lesson.working.value = false;
    }
  });
  return effect(() => {
    const request = { id: lesson.id.value, knob: lesson.knob.value };
    lesson.working.value = true;
    ask(request);
  });
}

/** Figures follow the time shown while it stands still: while it plays nobody reads them. */
function followTime(client: WorkerClient): () => void {
  const ask = latestOnly(async ({ index, reply }: { index: number; reply: LessonReply }) => {
    try {
      const { sides } = await client.ask('lessonAt', { index });
      if (reply === lesson.reply.peek() && index === lesson.index.peek()) lesson.figures.value = sides;
    } catch (thrown) {
      if (!(thrown instanceof Stale)) lesson.problem.value = problemOf('The figures of this time could not be worked out', thrown);
    }
  });
  return effect(() => {
    const reply = lesson.reply.value;
    const index = lesson.index.value;
    lesson.figures.value = null;
    if (reply !== null && !lesson.playing.value) ask({ index, reply });
  });
}

function play(): () => void {
  return effect(() => {
    if (!lesson.playing.value) return undefined;
    const timer = setInterval(() => {
      const next = lesson.index.peek() + 1;
      if (next < TIMES) lesson.index.value = next;
      if (next >= TIMES - 1) lesson.playing.value = false;
    }, SHOWN_MS);
    return () => clearInterval(timer);
  });
}
