import './momentField.css';
import type { JSX } from 'preact';
import { withMinute } from '../../app/nowMoment.ts';

export interface MomentFieldProps {
  readonly id: string;
  readonly label: string;
  /** RFC 3339 with its offset. */
  readonly value: string;
  readonly hint?: string;
  readonly set: (moment: string) => void;
}

/** A date and time on the clock of the place where it was noted, whose offset from UTC stands behind it and stays. */
export function MomentField({ id, label, value, hint, set }: MomentFieldProps): JSX.Element {
  const minute = value.slice(0, 16);
  return (
    <div class="field field-wide">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="datetime-local"
        value={minute}
        aria-describedby={`${id}-note`}
        // An emptied box has no value to keep: it shows the last one again.
        onChange={(event) => (event.currentTarget.value === '' ? (event.currentTarget.value = minute) : set(withMinute(value, event.currentTarget.value)))}
      />
      <span class="field-note" id={`${id}-note`}>{[hint, `Clock at UTC${offsetWords(value)}`].filter((part) => part !== undefined).join(' ')}</span>
    </div>
  );
}

function offsetWords(moment: string): string {
  return moment.endsWith('Z') ? '' : moment.slice(-6).replace('-', '−');
}
