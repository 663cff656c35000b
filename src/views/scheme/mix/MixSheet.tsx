import type { JSX } from 'preact';

export function MixSheet(): JSX.Element {
  return <p>To come.</p>;
}
