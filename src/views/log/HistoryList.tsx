import './signOff.css';
import type { JSX } from 'preact';
import { changeLines, counted, type ChangeSpec } from '../../../sim/index.ts';
import { state } from '../../app/state.ts';

/** Who changed what of an entry or a survey, and what was there before, on demand. Nothing where nothing was changed. */
export function HistoryList({ changes }: { readonly changes: readonly ChangeSpec[] }): JSX.Element | null {
  if (changes.length === 0) return null;
  return (
    <details class="history-list">
      <summary>{counted(changes.length, 'change')} since it was first noted</summary>
      <ol>
        {changeLines(changes, state.units.value).map(({ when, what, before }, k) => (
          <li key={k}>
            <strong>{what}</strong>
            <span>Before: {before}</span>
            <span class="soft">{when}</span>
          </li>
        ))}
      </ol>
    </details>
  );
}
