import type { JSX } from 'preact';

export function WhereSheet(): JSX.Element {
  return <p class="soft">To come.</p>;
}
