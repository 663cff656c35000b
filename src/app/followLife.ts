import { batch, effect } from '@preact/signals';
import { isDropped, type WorkerClient } from '../worker/client.ts';
import type { CoatRequest, MomentReply } from '../worker/protocol.ts';
import { latestOnly } from './latest.ts';
import { problemOf } from './problem.ts';
import { state } from './state.ts';

/**
 * Keeps the film in time in step with the job, while the reader looks at it: watches the coat's life to
 * its end, then asks for the film at the time and in the field that are shown. One time is under way;
 * of those chosen meanwhile only the newest is asked next.
 * @returns a way to stop.
 */
export function followLife(layer: WorkerClient, request: () => CoatRequest, give: (asked: CoatRequest) => Promise<void>): () => void {
  const isWanted = (version: number): boolean => state.inTime.peek() && state.film.peek()?.version === version;

  const tell = (version: number, thrown: unknown): void => {
    if (isDropped(thrown) || !isWanted(version)) return;
    batch(() => {
      state.timePlaying.value = false;
      state.inTime.value = false;
      state.notice.value = problemOf('The film of this coat cannot be followed in time; the film as laid is right', thrown);
    });
  };

  const watch = async (asked: CoatRequest): Promise<void> => {
    const { version } = asked;
    try {
      await give(asked);
      while (isWanted(version)) {
        const life = await layer.ask('liveOpen', asked);
        if (!isWanted(version)) return;
        batch(() => {
          if (life.isWhole) state.filmTime_s.value = Math.min(state.filmTime_s.peek(), life.watched_s);
          state.life.value = life;
        });
        if (life.isWhole) return;
      }
    } catch (thrown) {
      tell(version, thrown);
    }
  };

  const askMoment = latestOnly(async (asked: CoatRequest) => {
    const [time_s, field] = [state.filmTime_s.peek(), state.momentField.peek()];
    try {
      const reply = await layer.ask('liveAt', { ...asked, time_s, field });
      if (isWanted(asked.version)) state.moment.value = withKeptColours(reply, state.moment.peek());
    } catch (thrown) {
      tell(asked.version, thrown);
    }
  });

  let isOpen = false;
  const stops = [
    effect(() => {
      const film = state.film.value;
      if (!state.inTime.value || film === null) return;
      batch(() => {
        state.life.value = null;
        state.moment.value = null;
      });
      const asked = request();
      // While a newer job is on its way its film starts this again.
      if (asked.version === film.version) void watch(asked);
    }),
    effect(() => {
      const wasOpen = isOpen;
      isOpen = state.inTime.value;
      if (isOpen || !wasOpen) return;
      batch(() => {
        state.timePlaying.value = false;
        state.life.value = null;
        state.moment.value = null;
      });
      layer.ask('liveClose', {}).catch(() => undefined);
    }),
    effect(() => {
      void state.filmTime_s.value;
      void state.momentField.value;
      const life = state.life.value;
      if (life === null || !life.isWhole) return;
      const asked = request();
      if (asked.version === life.version) askMoment(asked);
    }),
  ];
  return () => {
    for (const stop of stops) stop();
  };
}

/** The same colours stay the same object, which the drawing need not send to the GPU again. */
function withKeptColours(reply: MomentReply, before: MomentReply | null): MomentReply {
  if (before?.field.kind !== reply.field.kind) return reply;
  return { ...reply, field: { ...reply.field, colours: before.field.colours } };
}
