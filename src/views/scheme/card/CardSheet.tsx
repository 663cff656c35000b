import type { JSX } from 'preact';

export function CardSheet(): JSX.Element {
  return <p>To come.</p>;
}
