import type { JSX } from 'preact';

export function VerdictSheet(): JSX.Element {
  return <p class="soft">To come.</p>;
}
