import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/**
 * The keyboard of a stage that is laid over the window: it has the focus when it opens, and Escape leaves it, unless something within
 * took that key. Where the element that had the focus is gone (a button that leads on) keys go to the page, and are the stage's too.
 */
export function useOverWindow(leave: () => void): RefObject<HTMLDivElement | null> {
  const stage = useRef<HTMLDivElement>(null);
  useEffect(() => stage.current?.focus(), []);
  useEffect(() => {
    const hear = (event: KeyboardEvent): void => {
      const isOurs = event.target === document.body || (event.target instanceof Node && stage.current?.contains(event.target) === true);
      if (isOurs && event.key === 'Escape' && !event.defaultPrevented) leave();
    };
    document.addEventListener('keydown', hear);
    return () => document.removeEventListener('keydown', hear);
  });
  return stage;
}
