/**
 * Wraps an asynchronous act so that one runs at a time and, of all that were asked meanwhile,
 * only the newest runs next. Older ones are dropped.
 */
export function latestOnly<T>(act: (asked: T) => Promise<void>): (asked: T) => void {
  let running = false;
  let next: { readonly asked: T } | null = null;

  const run = async (asked: T): Promise<void> => {
    running = true;
    try {
      await act(asked);
    } finally {
      running = false;
      const waiting = next;
      next = null;
      if (waiting !== null) void run(waiting.asked);
    }
  };

  return (asked) => {
    if (running) next = { asked };
    else void run(asked);
  };
}
