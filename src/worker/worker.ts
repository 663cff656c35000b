import { makeHandlers } from './engine.ts';
import type { Asked } from './protocol.ts';
import { serve } from './serve.ts';

const handlers = makeHandlers();

addEventListener('message', (event: MessageEvent<Asked>) => {
  void serve(handlers, event.data, (answer, transfer) => postMessage(answer, { transfer }));
});
