/** Calls back when the window goes to a screen of another pixel ratio or the page is zoomed. @returns a function that stops. */
export function watchPixelRatio(onChange: () => void): () => void {
  let query: MediaQueryList;
  const changed = (): void => {
    listen();
    onChange();
  };
  // A query holds one ratio only, so each change needs a new one.
  const listen = (): void => {
    query = window.matchMedia(`(resolution: ${window.devicePixelRatio}dppx)`);
    query.addEventListener('change', changed, { once: true });
  };
  listen();
  return () => query.removeEventListener('change', changed);
}
