import type { JSX } from 'preact';
import { fieldText, leaveField, typeNumber } from '../../app/fieldText.ts';
import { pointerOf, type JobPath } from '../../app/path.ts';
import { state } from '../../app/state.ts';
import { FieldNote } from './FieldNote.tsx';

export interface NumberFieldProps {
  readonly path: JobPath;
  readonly label: string;
  /** A remark under the field: a default, a reason, the same figure in another form. */
  readonly hint?: string;
}

/** A number with its unit. Any unit may be typed behind it; a wrong text stays, with its message. */
export function NumberField({ path, label, hint }: NumberFieldProps): JSX.Element {
  const id = path.join('-');
  const draft = state.drafts.value[pointerOf(path)];
  const field = fieldText(state.job.value, path, state.units.value, draft);
  const isWrong = field.problem !== null;
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
          value={field.text}
          aria-invalid={isWrong}
          aria-describedby={`${id}-unit ${id}-note`}
          onInput={(event) => typeNumber(path, label, event.currentTarget.value)}
          onBlur={() => leaveField(field.id)}
          onKeyDown={(event) => {
            if (event.key === 'Enter') leaveField(field.id);
          }}
        />
        <span class="unit" id={`${id}-unit`}>{field.unit}</span>
      </span>
      <FieldNote id={`${id}-note`} problem={isWrong ? `${field.problem}. The film still shows the last good value.` : null} hint={hint} />
    </div>
  );
}
