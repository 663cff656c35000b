import { computed, effect, signal, untracked } from '@preact/signals';
import { taskOf, writeRecording, type Drill } from '../../../sim/index.ts';
import type { SprayCanvas } from '../../canvas/spray/sprayScene.ts';
import type { SessionDraft } from '../../storage/sessions.ts';
import { problemOf } from '../problem.ts';
import { state } from '../state.ts';
import { darkNow } from '../theme.ts';
import { finishSession } from './debriefing.ts';
import { DraftKeeper } from './draftKeeper.ts';
import { clearDraft, readDraft } from './keptSessions.ts';
import { drill, isMatched, practice, rubric, setPrefs, shownValue } from './practice.ts';
import { Sounds } from './sounds.ts';
import { SprayRoom } from './sprayRoom.ts';

/** What was sprayed since is kept this often: a browser that is killed may take a second along, and a busy one is late. */
const DRAFT_MS = 250;
const PX_PER_M = 1000;

/** The room that is open; null while none is. */
export const room = signal<SprayRoom | null>(null);
/** How long the last drill took from being chosen to its first picture, ms. */
export const startedIn_ms = signal(0);

const sounds = new Sounds();
const drafts = new DraftKeeper();
let kept_ms = -Infinity;

/**
 * Opens the room in `host` and keeps it in step with what the reader has set: another drill is
 * another panel. @returns what takes it down; what was sprayed is kept as a draft.
 */
export function mountRoom(host: HTMLElement): () => void {
  let isGone = false;
  let stop = (): void => undefined;
  const start = async (): Promise<void> => {
    const { createSprayCanvas } = await import('../../canvas/spray/createSprayCanvas.ts');
    if (isGone) return;
    const canvas = await createSprayCanvas(host);
    if (isGone) {
      canvas.destroy();
      return;
    }
    canvas.root.tabIndex = 0;
    canvas.root.setAttribute('role', 'application');
    canvas.root.setAttribute('aria-label', 'Panel to spray');
    canvas.root.setAttribute('aria-describedby', 'practice-keys');
    const stops = [
      effect(() => {
        const chosen = drill.value;
        return untracked(() => openRoom(canvas, chosen));
      }),
      effect(() => room.value?.setLook(lookOf(drill.peek()))),
      effect(() => {
        const now = room.value;
        now?.setHand(state.practice.value.hand);
      }),
      effect(() => room.value?.setScale(scaleOf())),
      effect(() => (state.practice.value.sound ? sounds.on() : sounds.off())),
      effect(() => {
        if (room.value?.phase.value === 'full') finishNow();
      }),
      keepDrafts(),
    ];
    canvas.root.focus({ preventScroll: true });
    stop = () => {
      for (const each of stops) each();
      room.value = null;
      sounds.off();
      canvas.destroy();
    };
  };
  start().catch((thrown: unknown) => (practice.problem.value = problemOf('The panel cannot be drawn in this browser', thrown)));
  return () => {
    isGone = true;
    stop();
  };
}

/** @returns what closes the room; what was sprayed in it stays as the draft. */
function openRoom(canvas: SprayCanvas, chosen: Drill): () => void {
  const began_ms = performance.now();
  try {
    const opened = new SprayRoom(canvas, {
      drill: chosen,
      hand: state.practice.peek().hand,
      rubric: () => rubric.peek(),
      sounds,
      framed: keepIfDue,
      settingsChanged: ({ fanTurned, keySpeed_m_s }) => setPrefs({ hand: { ...state.practice.peek().hand, fanTurned, keySpeed_m_s } }),
    });
    opened.setLook(lookOf(chosen));
    room.value = opened;
    startedIn_ms.value = performance.now() - began_ms;
    practice.problem.value = null;
    return () => {
      drafts.forget();
      void keepRoom(opened, chosen);
      opened.close();
    };
  } catch (thrown) {
    room.value = null;
    practice.problem.value = problemOf('This panel cannot be sprayed as it stands', thrown);
    return () => undefined;
  }
}

/** What `startAgain` threw away, oldest first, to be looked through after all. */
export const thrownAway = signal<readonly SessionDraft[]>([]);
/** So many are remembered. */
const MOST_THROWN = 5;

/** Whether something has been sprayed that is not finished. */
export function isUnderWay(): boolean {
  return (room.peek()?.rows.count ?? 0) > 0;
}

/** Ends the session and has it looked through. */
export function finishNow(): void {
  const draft = takeDraft();
  if (draft !== null) void finishSession(draft);
}

/** What was under way when the page was last closed, until it is looked through or thrown away. */
export const foundDraft = signal<SessionDraft | null>(null);

/** Looks for a session that was not finished. One that is under way now is none. */
export async function findDraft(): Promise<void> {
  const draft = await readDraft();
  if (!isUnderWay()) foundDraft.value = draft;
}

export function lookAtDraft(): void {
  const draft = foundDraft.peek();
  foundDraft.value = null;
  drafts.forget();
  if (draft !== null) void finishSession(draft);
}

export function dropDraft(): void {
  foundDraft.value = null;
  drafts.forget();
  void clearDraft();
}

/** Clears the panel and begins again. What was there can be looked through until the next time. */
export function startAgain(): void {
  const draft = takeDraft();
  if (draft !== null) thrownAway.value = [...thrownAway.peek(), draft].slice(-MOST_THROWN);
  void clearDraft();
}

/** Looks through what was thrown away last. */
export function lookAtThrown(): void {
  const draft = thrownAway.peek().at(-1);
  thrownAway.value = thrownAway.peek().slice(0, -1);
  drafts.forget();
  if (draft !== undefined) void finishSession(draft);
}

/** What was sprayed, the panel cleared; null where nothing was. */
function takeDraft(): SessionDraft | null {
  const now = room.peek();
  if (now === null) return null;
  const draft = draftFrom(now, drill.peek());
  now.restart();
  return draft;
}

function lookOf(chosen: Drill): Parameters<SprayRoom['setLook']>[0] {
  const { guides, pace } = state.practice.value;
  return { value: shownValue.value, guides: guides ?? chosen.guides, pace, theme: darkNow.value ? 'dark' : 'light' };
}

function scaleOf(): number | null {
  const prefs = state.practice.value;
  return prefs.trueScale && prefs.screen !== null && isMatched(prefs, window.devicePixelRatio) ? prefs.screen.pxPerMm * PX_PER_M : null;
}

/** @returns what ends it. */
function keepDrafts(): () => void {
  // Whole: what became of the draft in another window is not known, and there may be no next time.
  const leave = (): void => {
    drafts.forget();
    keepNow();
  };
  addEventListener('pagehide', leave);
  document.addEventListener('visibilitychange', leave);
  // Another trainee is written with the whole; another fan or speed, which the hand turns as it sprays, is in the rows.
  const trainee = computed(() => state.practice.value.trainee);
  const stop = effect(() => {
    void trainee.value;
    drafts.forget();
  });
  return () => {
    stop();
    removeEventListener('pagehide', leave);
    document.removeEventListener('visibilitychange', leave);
  };
}

function keepNow(): void {
  const now = room.peek();
  if (now === null) return;
  kept_ms = performance.now();
  void keepRoom(now, drill.peek());
}

/** Called in each frame, which a busy page still draws while its timers are late. */
function keepIfDue(): void {
  if (performance.now() - kept_ms >= DRAFT_MS) keepNow();
}

function keepRoom(now: SprayRoom, chosen: Drill): Promise<void> {
  return drafts.keep(now.rows, () => draftFrom(now, chosen));
}

function draftFrom(now: SprayRoom, chosen: Drill): SessionDraft | null {
  if (now.rows.count === 0) return null;
  return { task: taskOf(chosen), job: now.setting.job, trainee: state.practice.peek().trainee, strokes: [...writeRecording(now.rows.build())].join('') };
}
