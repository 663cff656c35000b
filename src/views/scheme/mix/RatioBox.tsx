import type { JSX } from 'preact';
import { FieldNote } from '../../fields/FieldNote.tsx';

export interface RatioBoxProps {
  readonly id: string;
  readonly label: string;
  readonly text: string;
  readonly placeholder?: string;
  readonly problem: string | null;
  readonly hint: string;
  readonly type: (text: string) => void;
}

/** A ratio as people write it; what is wrong with it stands below. */
export function RatioBox({ id, label, text, placeholder = '', problem, hint, type }: RatioBoxProps): JSX.Element {
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <input id={id} type="text" autocomplete="off" spellcheck={false} value={text} placeholder={placeholder} aria-invalid={problem !== null} aria-describedby={`${id}-note`} onInput={(event) => type(event.currentTarget.value)} />
      <FieldNote id={`${id}-note`} problem={problem} hint={hint} />
    </div>
  );
}
