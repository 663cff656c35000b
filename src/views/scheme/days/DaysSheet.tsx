import type { JSX } from 'preact';

export function DaysSheet(): JSX.Element {
  return <p>To come.</p>;
}
