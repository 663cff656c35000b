import type { JSX } from 'preact';

export function AirSheet(): JSX.Element {
  return <p>To come.</p>;
}
