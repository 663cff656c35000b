import { signal } from '@preact/signals';
import type { ComponentType, JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { problemOf } from '../../app/problem.ts';
import { state } from '../../app/state.ts';

/** A form whose script is fetched when it is first shown; a fetch that fails is told, and tried again on the next showing. */
export function fetched(load: () => Promise<ComponentType>): ComponentType {
  const form = signal<ComponentType | null>(null);
  const fetchIt = (): void => {
    if (form.peek() !== null) return;
    load().then(
      (Form) => (form.value = Form),
      (thrown: unknown) => (state.notice.value = problemOf('This form could not be fetched; the others still work', thrown)),
    );
  };
  return function Fetched(): JSX.Element {
    useEffect(fetchIt, []);
    const Form = form.value;
    return Form === null ? <p class="soft" role="status">Fetching this form…</p> : <Form />;
  };
}
