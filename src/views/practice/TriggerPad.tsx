import type { JSX } from 'preact';
import { room } from '../../app/practice/underway.ts';
import { state } from '../../app/state.ts';

/** The trigger for the other thumb, where a finger that moves the gun does not pull it. */
export function TriggerPad(): JSX.Element | null {
  if (state.practice.value.hand.touchTrigger !== 'pad') return null;
  return (
    <div class="trigger-pad" role="group" aria-label="Trigger">
      <PadButton trigger={0.5} words="Air" />
      <PadButton trigger={1} words="Spray" />
    </div>
  );
}

function PadButton({ trigger, words }: { readonly trigger: number; readonly words: string }): JSX.Element {
  const pull = (): void => room.peek()?.setPad(trigger);
  const release = (): void => room.peek()?.setPad(0);
  return (
    <button
      type="button"
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        pull();
      }}
      onPointerUp={release}
      onPointerCancel={release}
      onLostPointerCapture={release}
      onKeyDown={(event) => { if (event.key === ' ' && !event.repeat) pull(); }}
      onKeyUp={(event) => { if (event.key === ' ') release(); }}
      onBlur={release}
    >
      {words}
    </button>
  );
}
