import type { JSX } from 'preact';

export interface TickFieldProps {
  readonly label: string;
  readonly on: boolean;
  readonly hint?: string;
  readonly turn: (on: boolean) => void;
}

/** Yes or no. */
export function TickField({ label, on, hint, turn }: TickFieldProps): JSX.Element {
  return (
    <div class="field tick-field">
      <label>
        <input type="checkbox" checked={on} onChange={(event) => turn(event.currentTarget.checked)} />
        <span>{label}</span>
      </label>
      {hint === undefined ? null : <span class="field-note">{hint}</span>}
    </div>
  );
}
