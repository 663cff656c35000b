/** A change waits at most this long for others to come with it. The wait does not start anew with each key: nobody types without a pause for ever, but for longer than a second. */
const WAIT_MS = 250;
/** What was refused is tried again this often, so that it is kept as soon as there is room. */
const RETRY_MS = 3000;

export interface Saver {
  /** Something changed: it is written before long. */
  readonly soon: () => void;
  /** Writes what has changed by now, after the write that is under way; resolves when it is kept or refused. */
  readonly now: () => Promise<void>;
  readonly stop: () => void;
}

/** Calls `write` one at a time; `write` resolves to whether all was kept, and is called again by itself until it is. */
export function startSaver(write: () => Promise<boolean>): Saver {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let retry: ReturnType<typeof setTimeout> | undefined;
  let writing: Promise<void> = Promise.resolve();
  let isStopped = false;

  const stop = (): void => {
    clearTimeout(timer);
    clearTimeout(retry);
    timer = retry = undefined;
  };
  const now = (): Promise<void> => {
    stop();
    writing = writing.then(async () => {
      if (!(await write()) && !isStopped) retry ??= setTimeout(() => void now(), RETRY_MS);
    });
    return writing;
  };
  return {
    soon: () => (timer ??= setTimeout(() => void now(), WAIT_MS)),
    now,
    stop: () => {
      isStopped = true;
      stop();
    },
  };
}
