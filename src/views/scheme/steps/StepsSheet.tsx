import type { JSX } from 'preact';

export function StepsSheet(): JSX.Element {
  return <p>To come.</p>;
}
