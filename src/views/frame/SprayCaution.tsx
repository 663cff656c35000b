import type { JSX } from 'preact';
import { SPRAY_CAUTIONS } from '../../../sim/index.ts';
import { state } from '../../app/state.ts';

const CAUTION = 'spray';

/** Before a spray: one line that is always there, and the whole list, open until it was folded once. */
export function SprayCaution(): JSX.Element {
  const isRead = state.foldedCautions.value.includes(CAUTION);
  return (
    <section class="caution" aria-label="Before you spray">
      <details
        open={!isRead}
        onToggle={(event) => {
          if (event.currentTarget.open || state.foldedCautions.peek().includes(CAUTION)) return;
          state.foldedCautions.value = [...state.foldedCautions.peek(), CAUTION];
        }}
      >
        <summary>
          Vapour, sparks, breath: earth the part, no ignition source within 20 ft (6 m), respirator; read before spraying
        </summary>
        <ul>
          {SPRAY_CAUTIONS.map((text) => <li key={text}>{text}</li>)}
          <li>Follow the product data sheet and local codes. This tool does not clear a room, a booth or a repair.</li>
        </ul>
      </details>
    </section>
  );
}
