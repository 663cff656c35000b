import { batch, signal } from '@preact/signals';
import { SESSION_VERSION, taskOf, WHAT_IFS, type RubricSpec, type SessionSpec } from '../../../sim/index.ts';
import { Stale, type WorkerClient } from '../../worker/client.ts';
import type { ClassReply, DebriefReply, SessionAtReply, WhatIfReply } from '../../worker/protocol.ts';
import { latestOnly } from '../latest.ts';
import { problemOf, type Problem } from '../problem.ts';
import { state } from '../state.ts';
import { clearDraft, keepDraft, keepSession, readDraft } from './keptSessions.ts';
import { drill, practice, rubric } from './practice.ts';
import { readSessionFiles, saveSession, textWithin, type ReadableFile } from './sessionFiles.ts';
import { startPracticeWorker, type PracticeWorker } from './practiceWorker.ts';
import type { SessionDraft } from '../../storage/sessions.ts';

/** The session that is being looked through, and what is known of it so far. */
export const debriefing = {
  session: signal<SessionSpec | null>(null),
  reply: signal<DebriefReply | null>(null),
  whatIfs: signal<readonly WhatIfReply[]>([]),
  whatIfsBusy: signal(false),
  at: signal<SessionAtReply | null>(null),
  working: signal(false),
  /** Sprayed, and not to be looked through: the page offers each as a file. */
  failed: signal<readonly SessionSpec[]>([]),
};

let worker: PracticeWorker | null = null;

/** Starts the worker that looks sessions through. @returns what ends it. */
export function startDebriefing(): () => void {
  const started = startPracticeWorker((why) => {
    practice.problem.value = { title: 'The simulation stopped and was started again', text: `Your session is as you left it; look at it once more. Reason: ${why}.`, place: {} };
    debriefing.working.value = false;
    debriefing.whatIfsBusy.value = false;
  });
  worker = started;
  // A session that was in view when practice was last closed: a new worker does not know it yet.
  const shown = debriefing.session.peek();
  if (shown !== null) void keepLookedThrough(shown);
  return () => {
    worker = null;
    started.stop();
    // What was still asked of it is never answered.
    debriefing.working.value = false;
    debriefing.whatIfsBusy.value = false;
  };
}

/** Makes a session of what was just sprayed, looks it through and keeps it, whatever is looked at meanwhile. */
export async function finishSession(draft: SessionDraft): Promise<void> {
  const session = sessionOf(draft);
  // Stored before anything else, since the panel is cleared already.
  await keepDraft(draft);
  const answered = await lookThrough(session);
  if (answered === null) {
    debriefing.failed.value = [...debriefing.failed.peek(), session];
    return;
  }
  await keep(session, answered);
  await clearDraftOf(draft);
}

/** Forgets the draft, unless another session has become it meanwhile. */
async function clearDraftOf({ strokes }: SessionDraft): Promise<void> {
  if ((await readDraft())?.strokes === strokes) await clearDraft();
}

/** Saves a session that could not be looked through as a file; it is then no longer on offer. */
export function saveFailed(session: SessionSpec): void {
  saveSession(session);
  debriefing.failed.value = debriefing.failed.peek().filter((each) => each !== session);
}

/** Opens session files, or strokes (CSV) as a session of the drill chosen; the last one opened is shown. */
export async function openFiles(files: readonly ReadableFile[]): Promise<void> {
  const isTable = ({ name }: ReadableFile): boolean => /\.csv$/i.test(name);
  const { opened, refused } = await readSessionFiles(files.filter((file) => !isTable(file)));
  const sessions = opened.map(({ session }) => session);
  const unread: Problem[] = [];
  for (const file of files.filter(isTable)) {
    const chosen = drill.peek();
    try {
      const strokes = await textWithin(file);
      sessions.push({ ...sessionOf({ task: taskOf(chosen), job: chosen.job(), trainee: state.practice.peek().trainee, strokes }), name: file.name });
    } catch (thrown) {
      unread.push(problemOf(`${file.name} was not opened`, thrown));
    }
  }
  for (const session of sessions) {
    const answered = await lookThrough(session);
    if (answered !== null) await keep(session, answered);
  }
  const problems = [...refused, ...unread];
  const [first] = problems;
  if (first !== undefined) practice.problem.value = { ...first, text: problems.map(({ title, text }, i) => (i === 0 ? text : `${title}: ${text}`)).join(' ') };
}

/** Looks a session through where it stands and keeps it. */
async function keepLookedThrough(session: SessionSpec): Promise<void> {
  const answered = await debrief(session, rubric.peek());
  if (answered !== null) await keep(session, answered);
}

function sessionOf({ task, job, trainee, strokes }: SessionDraft): SessionSpec {
  return {
    sessionVersion: SESSION_VERSION,
    id: freshSessionId(),
    trainee,
    name: task.title,
    sprayedAt: new Date().toISOString(),
    task,
    job,
    strokes,
  };
}

/** Bytes of a session's id: no two sessions of a class have the same. */
const ID_BYTES = 12;

/** Also on a page without a secure origin, where the browser makes no UUID. */
function freshSessionId(): string {
  return [...crypto.getRandomValues(new Uint8Array(ID_BYTES))].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** Looks a session through and shows it. @returns what was found, null where that did not work. */
export function lookThrough(session: SessionSpec): Promise<DebriefReply | null> {
  batch(() => {
    practice.tab.value = 'debrief';
    debriefing.session.value = session;
    debriefing.reply.value = null;
    debriefing.whatIfs.value = [];
    debriefing.at.value = null;
  });
  return debrief(session, rubric.peek());
}

/** Marks the session in view by another rubric; while one is being typed, only the newest. */
export const markBy = latestOnly(async (next: RubricSpec) => {
  const session = debriefing.session.peek();
  if (session === null) return;
  const answered = await debrief(session, next);
  if (answered !== null) await keep(session, answered);
});

/** @returns the answer even where another session has come into view meanwhile. */
async function debrief(session: SessionSpec, by: RubricSpec): Promise<DebriefReply | null> {
  const { reply, working } = debriefing;
  const isShown = (): boolean => debriefing.session.peek()?.id === session.id;
  working.value = true;
  try {
    const answered = await asked().ask('debrief', { session, rubric: by });
    if (isShown()) {
      reply.value = answered;
      practice.problem.value = null;
      void askWhatIfs(session.id);
    }
    return answered;
  } catch (thrown) {
    if (!(thrown instanceof Stale)) practice.problem.value = problemOf('This session could not be looked through; save it as a file', thrown);
    return null;
  } finally {
    if (isShown()) working.value = false;
  }
}

/** Each habit in turn, once: another rubric changes no film. */
async function askWhatIfs(id: string): Promise<void> {
  const { whatIfs, whatIfsBusy } = debriefing;
  if (whatIfsBusy.peek()) return;
  whatIfsBusy.value = true;
  try {
    for (const habit of WHAT_IFS) {
      if (debriefing.session.peek()?.id !== id) return;
      if (whatIfs.peek().some(({ reported }) => reported.habit === habit)) continue;
      const answered = await asked().ask('whatIf', { id, habit });
      if (debriefing.session.peek()?.id === id) whatIfs.value = [...whatIfs.peek(), answered];
    }
  } catch (thrown) {
    if (!(thrown instanceof Stale) && debriefing.session.peek()?.id === id) practice.problem.value = problemOf('The session could not be sprayed again without one habit', thrown);
  } finally {
    whatIfsBusy.value = false;
    const shown = debriefing.session.peek();
    if (shown !== null && shown.id !== id && debriefing.reply.peek() !== null) void askWhatIfs(shown.id);
  }
}

/** The film at one time of the session in view; of several asked for, only the newest is answered. */
export const showAt = latestOnly(async (time_s: number) => {
  const id = debriefing.reply.peek()?.id;
  if (id === undefined) return;
  try {
    const answered = await asked().ask('sessionAt', { id, time_s });
    if (debriefing.reply.peek()?.id === id) debriefing.at.value = answered;
  } catch (thrown) {
    if (!(thrown instanceof Stale)) practice.problem.value = problemOf('This time of the session could not be shown', thrown);
  }
});

/** Marks one session of a class. */
export function markForClass(session: SessionSpec, by: RubricSpec): Promise<ClassReply> {
  return asked().ask('classRow', { session, rubric: by });
}

/** Gives the session in view another name. */
export function nameSession(name: string): void {
  const session = debriefing.session.peek();
  const reply = debriefing.reply.peek();
  if (session === null || reply === null) return;
  debriefing.session.value = { ...session, name };
  void keep({ ...session, name }, reply);
}

/** Keeps a session as it is marked now. */
async function keep(session: SessionSpec, { reported, hand }: DebriefReply): Promise<void> {
  await keepSession({ session, score: reported.score, hand, keptAt: new Date().toISOString() });
}

function asked(): WorkerClient {
  if (worker === null) throw new Error('practice is not open');
  return worker.client;
}
