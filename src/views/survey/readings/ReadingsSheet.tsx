import type { JSX } from 'preact';

export function ReadingsSheet(): JSX.Element {
  return <p class="soft">To come.</p>;
}
