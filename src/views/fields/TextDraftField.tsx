import type { JSX } from 'preact';
import { leaveField } from '../../app/fieldText.ts';
import { state } from '../../app/state.ts';
import { FieldNote } from './FieldNote.tsx';

export interface TextDraftFieldProps {
  /** JSON pointer of what the text states. */
  readonly pointer: string;
  readonly label: string;
  /** The value's own text, shown when nothing is being typed. */
  readonly text: string;
  readonly hint: string;
  readonly type: (text: string) => void;
}

/** A longer text that states a value: kept as typed, checked live, applied as soon as it is right. */
export function TextDraftField({ pointer, label, text, hint, type }: TextDraftFieldProps): JSX.Element {
  const id = pointer.replaceAll('/', '-').slice(1);
  const draft = state.drafts.value[pointer];
  const problem = draft?.problem ?? null;
  return (
    <div class="field field-wide">
      <label for={id}>{label}</label>
      <textarea
        id={id}
        spellcheck={false}
        value={draft?.text ?? text}
        aria-invalid={problem !== null}
        aria-describedby={`${id}-note`}
        onInput={(event) => type(event.currentTarget.value)}
        onBlur={() => leaveField(pointer)}
      />
      <FieldNote id={`${id}-note`} problem={problem} hint={hint} />
    </div>
  );
}
