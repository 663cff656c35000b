import { batch, computed, effect } from '@preact/signals';
import type { Job, PanelSpec } from '../../sim/index.ts';
import { isDropped, type WorkerClient } from '../worker/client.ts';
import type { CoatRequest, ExportKind, RecordingFacts } from '../worker/protocol.ts';
import { coat } from './document.ts';
import { followLife } from './followLife.ts';
import { followLifeVerdict } from './followLifeVerdict.ts';
import { forgetFilm } from './forgetFilm.ts';
import { giver, type Give } from './giveRecordings.ts';
import { latestOnly } from './latest.ts';
import { problemOf } from './problem.ts';
import { noteFacts } from './recordingFacts.ts';
import { state } from './state.ts';

/** A judge that is this long at a version nobody wants any more is ended, not waited for. */
const PATIENCE_MS = 700;

/** What the page asks of the simulation, besides the film that follows the job by itself. */
export interface Session {
  readRecording(id: string, name: string, text: string): Promise<RecordingFacts>;
  /** Rejects with the problem where no such panel can be made. */
  checkPanel(panel: PanelSpec, pointer: string): Promise<unknown>;
  exportFile(kind: ExportKind): Promise<Blob>;
  /** Sends the job again, e.g. to a new worker. */
  resend(): void;
  stop(): void;
}

/**
 * Keeps film, verdict, replay and probe in step with the job. Two workers share it: `layer` lays
 * and answers at once; `judge` looks for causes and tries cures, which means laying the coat a
 * dozen times, and must not keep a newer film waiting.
 */
export function startSession(layer: WorkerClient, judge: WorkerClient): Session {
  let version = 0;
  let giveLayer: Give = giver(layer, noteFacts);
  let giveJudge: Give = giver(judge);
  let judging: { readonly since_ms: number } | null = null;

  const request = (): CoatRequest => {
    const job = state.job.peek();
    return { version, job: withoutTexts(job), coat: coat.peek().id };
  };

  const readVerdict = latestOnly(async (asked: CoatRequest) => {
    judging = { since_ms: performance.now() };
    try {
      await giveNeeded(asked, giveJudge);
      for (const cures of [false, true]) {
        const reply = await judge.ask('verdict', { ...asked, cures });
        if (asked.version === version) state.verdict.value = reply;
      }
    } catch (thrown) {
      tellUnlessPassed(asked.version, thrown);
    } finally {
      judging = null;
      if (asked.version === version) state.working.value = false;
    }
  });

  const endStaleJudging = (): void => {
    if (judging === null || performance.now() - judging.since_ms < PATIENCE_MS) return;
    judge.abandon();
    giveJudge = giver(judge);
  };

  const tellUnlessPassed = (asked: number, thrown: unknown): void => {
    if (isDropped(thrown) || asked !== version) return;
    // An edit keeps the coat's last good film in view; another coat's film would pass for this one's.
    if (state.film.peek()?.setting.coat.id !== coat.peek().id) forgetFilm();
    state.working.value = false;
    state.jobProblem.value = problemOf('This job cannot be sprayed as it stands', thrown);
  };

  const follow = async (): Promise<void> => {
    version++;
    const asked = request();
    state.working.value = true;
    endStaleJudging();
    try {
      await giveNeeded(asked, giveLayer);
      const film = await layer.ask('film', asked);
      if (asked.version !== version) return;
      batch(() => {
        if (state.film.peek()?.setting.coat.id !== asked.coat) state.verdict.value = null;
        state.film.value = film;
        state.jobProblem.value = null;
      });
      readVerdict(asked);
    } catch (thrown) {
      tellUnlessPassed(asked.version, thrown);
    }
  };

  const askReplay = latestOnly(async (until_s: number) => {
    const reply = await layer.ask('replay', { ...request(), until_s }).catch(() => null);
    if (reply !== null && state.replay_s.peek() !== null) state.replay.value = reply;
  });

  const askStrokes = latestOnly(async (at_m: readonly [number, number]) => {
    state.strokesAt.value = await layer.ask('strokesAt', { ...request(), at_m }).catch(() => null);
  });

  const coatId = computed(() => coat.value.id);
  const stops = [
    followLife(layer, request, (asked) => giveNeeded(asked, giveLayer)),
    followLifeVerdict(judge, request, (asked) => giveNeeded(asked, giveJudge)),
    effect(() => {
      void state.job.value;
      void coatId.value;
      void follow();
    }),
    effect(() => {
      const film = state.film.value;
      const time_s = state.replay_s.value;
      if (time_s === null) state.replay.value = null;
      else if (film !== null) askReplay(time_s);
    }),
    effect(() => {
      const at_m = state.probe_m.value;
      const film = state.film.value;
      if (at_m === null || film === null) state.strokesAt.value = null;
      else askStrokes(at_m);
    }),
  ];

  return {
    readRecording: (id, name, text) => giveLayer(id, name, text),
    checkPanel: (panel, pointer) => layer.ask('panel', { panel, pointer }),
    exportFile: async (kind) => {
      const asked = request();
      await giveNeeded(asked, giveJudge);
      const file = { ...asked, kind, field: state.field.peek(), units: state.units.peek() };
      return (await judge.ask('exportFile', file)).blob;
    },
    resend: () => {
      giveLayer = giver(layer, noteFacts);
      giveJudge = giver(judge);
      void follow();
    },
    stop: () => {
      for (const stop of stops) stop();
    },
  };
}

/** The text of a coat's recording, and of those of the coats beneath it, goes to a worker once, ahead of the first request that needs it. */
async function giveNeeded({ job, coat: coatId }: CoatRequest, give: Give): Promise<void> {
  const asked = job.coats.find((each) => each.id === coatId);
  const recording = state.job.peek().recordings.find((each) => each.id === asked?.recording);
  if (recording !== undefined) await give(recording.id, recording.name, recording.text);
  if (asked?.over !== undefined) await giveNeeded({ version: 0, job, coat: asked.over.coat }, give);
}

function withoutTexts(job: Job): Job {
  return { ...job, recordings: job.recordings.map((each) => ({ ...each, text: '' })) };
}
