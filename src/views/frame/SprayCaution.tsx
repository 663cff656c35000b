import type { JSX } from 'preact';
import { SPRAY_CAUTIONS } from '../../../sim/index.ts';
import { state } from '../../app/state.ts';

const CAUTION = 'spray';

/** Before a spray: plain, always there; once read it may be folded to its headline. */
export function SprayCaution(): JSX.Element {
  const isFolded = state.foldedCautions.value.includes(CAUTION);
  return (
    <details
      class="caution"
      open={!isFolded}
      onToggle={(event) => {
        const others = state.foldedCautions.peek().filter((each) => each !== CAUTION);
        const next = event.currentTarget.open ? others : [...others, CAUTION];
        if (next.length !== state.foldedCautions.peek().length) state.foldedCautions.value = next;
      }}
    >
      <summary>Before you spray: vapour, sparks, breath</summary>
      <ul>
        {SPRAY_CAUTIONS.map((text) => <li key={text}>{text}</li>)}
        <li>Follow the product data sheet and local codes. This tool does not clear a room, a booth or a repair.</li>
      </ul>
    </details>
  );
}
