import { render } from 'preact';
import { afterFirstFilm } from '../app/afterFirstFilm.ts';
import { fetchSchema } from '../app/fieldText.ts';
import { Window } from './frame/Window.tsx';

/** Puts the window on the page. */
export function showWindow(host: HTMLElement): void {
  render(<Window />, host);
  // Asked for again by the first key, should it fail now.
  afterFirstFilm(() => void fetchSchema().catch(() => undefined));
}
