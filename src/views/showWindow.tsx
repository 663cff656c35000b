import { render } from 'preact';
import { Window } from './frame/Window.tsx';

/** Puts the window on the page. */
export function showWindow(host: HTMLElement): void {
  render(<Window />, host);
}
