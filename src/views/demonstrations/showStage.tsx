import { render } from 'preact';
import { DemonstrationStage } from './DemonstrationStage.tsx';

let host: HTMLElement | null = null;

/** Lays the stage over the window, which rests meanwhile; closing gives the focus back. */
export function showStage(): void {
  if (host !== null) return;
  const under = document.getElementById('app');
  const focused = document.activeElement;
  const shown = document.createElement('div');
  host = shown;
  document.body.append(shown);
  document.documentElement.classList.add('lesson-open');
  under?.setAttribute('inert', '');
  const close = (): void => {
    if (document.fullscreenElement !== null) void document.exitFullscreen();
    render(null, shown);
    shown.remove();
    host = null;
    document.documentElement.classList.remove('lesson-open');
    under?.removeAttribute('inert');
    if (focused instanceof HTMLElement) focused.focus();
  };
  render(<DemonstrationStage close={close} />, shown);
}
