import type { JSX } from 'preact';
import type { Warning } from '../../../sim/index.ts';

const PLACE = 'doubts';

/** What the model is not sure of: no errors, but reasons to read the figures with care. */
export function Doubts({ doubts }: { readonly doubts: readonly Warning[] }): JSX.Element | null {
  if (doubts.length === 0) return null;
  return (
    <section class="doubts" id={PLACE} tabIndex={-1} aria-label="Doubts">
      <h2>Doubts</h2>
      <ul>{doubts.map(({ text }) => <li key={text}>{text}</li>)}</ul>
    </section>
  );
}

/** Brings the doubts into sight and puts the focus there, so that a screen reader goes along. */
export function showDoubts(): void {
  const doubts = document.getElementById(PLACE);
  doubts?.scrollIntoView({ block: 'nearest' });
  doubts?.focus();
}
