import './over.css';
import { render, type JSX } from 'preact';

let host: HTMLElement | null = null;

/** Lays a stage over the window, which rests meanwhile; closing gives the focus back. One at a time. */
export function layOver(stage: (close: () => void) => JSX.Element): void {
  if (host !== null) return;
  const under = document.getElementById('app');
  const focused = document.activeElement;
  const shown = document.createElement('div');
  host = shown;
  document.body.append(shown);
  document.documentElement.classList.add('stage-open');
  under?.setAttribute('inert', '');
  const close = (): void => {
    if (document.fullscreenElement !== null) void document.exitFullscreen();
    render(null, shown);
    shown.remove();
    host = null;
    document.documentElement.classList.remove('stage-open');
    under?.removeAttribute('inert');
    if (focused instanceof HTMLElement) focused.focus();
  };
  render(stage(close), shown);
}
