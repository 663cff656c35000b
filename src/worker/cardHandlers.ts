import { readPhoto } from '../../sim/index.ts';
import { cardReply } from './cardReply.ts';
import type { Handlers } from './serve.ts';

/** What the worker does for a test card. It keeps nothing of it. */
export function makeCardHandlers(): Pick<Handlers, 'cardFit' | 'cardPhoto'> {
  return {
    cardFit: (request) => Promise.resolve({ reply: cardReply(request) }),
    cardPhoto: ({ photo, task }) => {
      const reply = readPhoto(photo, task);
      return Promise.resolve({ reply, transfer: [reply.map.film.buffer] });
    },
  };
}
