import type { JSX } from 'preact';

export function EntriesSheet(): JSX.Element {
  return <p class="soft">To come.</p>;
}
