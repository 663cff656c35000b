import type { JSX } from 'preact';

export function AmountsSheet(): JSX.Element {
  return <p>To come.</p>;
}
