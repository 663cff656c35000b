import { render } from 'preact';
import { afterFirstFilm } from '../app/afterFirstFilm.ts';
import { fetchSchema } from '../app/fieldText.ts';
import { Window } from './frame/Window.tsx';

/** Puts the window on the page. */
export function showWindow(host: HTMLElement): void {
  render(<Window />, host);
  // Neither is missed at once if it fails: the schema is asked for again by the first key, the rest at the next visit.
  afterFirstFilm(() => {
    void fetchSchema().catch(() => undefined);
    if (import.meta.env.PROD) void import('./offline/showOffline.tsx').then(({ showOffline }) => showOffline(), () => undefined);
  });
}
