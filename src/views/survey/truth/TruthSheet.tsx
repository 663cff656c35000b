import type { JSX } from 'preact';

export function TruthSheet(): JSX.Element {
  return <p class="soft">To come.</p>;
}
