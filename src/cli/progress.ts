import type { Io } from './io.ts';

/** Nothing is said of work that is over sooner, ms: on a terminal, and in a file of messages. */
const PATIENCE_TERMINAL_ms = 500;
const PATIENCE_FILE_ms = 2000;
/** Least time between two lines. */
const EVERY_TERMINAL_ms = 100;
const EVERY_FILE_ms = 5000;

/** Progress of long work on standard error. */
export interface Progress {
  readonly show: (share: number) => void;
  /** Takes the line away again. */
  readonly end: () => void;
}

/** One line that is rewritten on a terminal; elsewhere a line now and then. */
export function makeProgress(io: Io, what: string): Progress {
  const start = io.now_ms();
  const [patience, every] = io.isTerminal ? [PATIENCE_TERMINAL_ms, EVERY_TERMINAL_ms] : [PATIENCE_FILE_ms, EVERY_FILE_ms];
  let last = -Infinity;
  const show = (share: number): void => {
    const now = io.now_ms();
    if (now - start < patience || now - last < every) return;
    last = now;
    const text = `${what}: ${Math.floor(share * 100)} %`;
    io.err(io.isTerminal ? `\r${text}\u001b[K` : `${text}\n`);
  };
  const end = (): void => {
    if (io.isTerminal && last > -Infinity) io.err('\r\u001b[K');
  };
  return { show, end };
}
