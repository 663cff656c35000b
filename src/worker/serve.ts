import { problemOf } from '../app/problem.ts';
import type { Answered, Asked, MessageName, Messages } from './protocol.ts';

/** Thrown by a handler whose version a newer one has overtaken. */
export class Overtaken extends Error {}

/** A reply, and the buffers in it that are handed over instead of copied. */
export interface Served<Reply> {
  readonly reply: Reply;
  readonly transfer?: readonly ArrayBufferLike[];
}

/** What a worker does for each message. */
export type Handlers = {
  readonly [Name in MessageName]: (request: Messages[Name]['request']) => Promise<Served<Messages[Name]['reply']>>;
};

export type Post = (answer: Answered, transfer: Transferable[]) => void;

/** Answers one message: its reply, the problem that bad input made, or that it was overtaken. */
export async function serve(handlers: Handlers, asked: Asked, post: Post): Promise<void> {
  try {
    const handler = handlers[asked.name] as (request: unknown) => Promise<Served<Messages[MessageName]['reply']>>;
    const { reply, transfer = [] } = await handler(asked.request);
    post({ id: asked.id, kind: 'reply', reply }, transfer.filter((buffer) => buffer instanceof ArrayBuffer));
  } catch (thrown) {
    if (thrown instanceof Overtaken) post({ id: asked.id, kind: 'stale' }, []);
    else post({ id: asked.id, kind: 'problem', problem: problemOf('', thrown) }, []);
  }
}
