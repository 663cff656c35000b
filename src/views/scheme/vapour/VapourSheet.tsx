import type { JSX } from 'preact';

export function VapourSheet(): JSX.Element {
  return <p>To come.</p>;
}
