import type { JSX } from 'preact';

export function RecordSheet(): JSX.Element {
  return <p class="soft">To come.</p>;
}
