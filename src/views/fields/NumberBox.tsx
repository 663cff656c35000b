import type { JSX } from 'preact';
import { FieldNote } from './FieldNote.tsx';

export interface NumberBoxProps {
  readonly id: string;
  readonly label: string;
  /** As it stands in the box, right or wrong. */
  readonly text: string;
  readonly unit: string;
  readonly problem: string | null;
  readonly hint: string | undefined;
  readonly type: (text: string) => void;
  /** The reader has gone on: by Tab, by a click elsewhere, or by Enter. */
  readonly leave: () => void;
}

/** A box for a number, with its unit behind it and what is wrong below. */
export function NumberBox({ id, label, text, unit, problem, hint, type, leave }: NumberBoxProps): JSX.Element {
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <span class="field-box">
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autocomplete="off"
          spellcheck={false}
          value={text}
          aria-invalid={problem !== null}
          aria-describedby={`${id}-unit ${id}-note`}
          onInput={(event) => type(event.currentTarget.value)}
          onBlur={leave}
          onKeyDown={(event) => {
            if (event.key === 'Enter') leave();
          }}
        />
        <span class="unit" id={`${id}-unit`}>{unit}</span>
      </span>
      <FieldNote id={`${id}-note`} problem={problem} hint={hint} />
    </div>
  );
}
