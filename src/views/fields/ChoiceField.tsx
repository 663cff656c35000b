import type { JSX } from 'preact';

export interface ChoiceFieldProps<Value extends string> {
  readonly id: string;
  readonly label: string;
  readonly value: Value;
  readonly options: readonly (readonly [value: Value, words: string])[];
  readonly hint?: string;
  readonly choose: (value: Value) => void;
}

/** One of a few, as the system's own list. */
export function ChoiceField<Value extends string>(props: ChoiceFieldProps<Value>): JSX.Element {
  const { id, label, value, options, hint, choose } = props;
  return (
    <div class="field field-wide">
      <label for={id}>{label}</label>
      <select
        id={id}
        value={value}
        {...(hint === undefined ? {} : { 'aria-describedby': `${id}-note` })}
        onChange={(event) => choose(event.currentTarget.value as Value)}
      >
        {options.map(([each, words]) => (
          <option key={each} value={each} selected={each === value}>
            {words}
          </option>
        ))}
      </select>
      {hint === undefined ? null : <span class="field-note" id={`${id}-note`}>{hint}</span>}
    </div>
  );
}
