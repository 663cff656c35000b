import { readPhoto } from '../../sim/index.ts';
import { problemOf } from '../app/problem.ts';
import type { Told } from './cardMessages.ts';
import { fitReply } from './fitReply.ts';
import type { Handlers } from './serve.ts';

/** What the worker does for a test card. It keeps nothing of it. */
export function makeCardHandlers(): Pick<Handlers, 'cardFit' | 'cardPhoto'> {
  return {
    cardFit: ({ setUp: { card = {} }, family, seed }) => {
      const reply = { fit: told(card.readings, (text) => fitReply(text, family, seed)) };
      return Promise.resolve({ reply });
    },
    cardPhoto: ({ photo, task }) => {
      const reply = readPhoto(photo, task);
      return Promise.resolve({ reply, transfer: [reply.map.film.buffer] });
    },
  };
}

/** What a part of the card comes to; its problem stays with it. */
function told<Part, Answer>(part: Part | undefined, answer: (part: Part) => Answer): Told<Answer> {
  if (part === undefined) return null;
  try {
    return { answer: answer(part) };
  } catch (thrown) {
    return { problem: problemOf('', thrown) };
  }
}
