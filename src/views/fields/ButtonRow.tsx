import type { JSX } from 'preact';

export interface ButtonRowProps<Value extends string | number> {
  /** What is chosen here, for a screen reader. */
  readonly label: string;
  readonly value: Value;
  readonly options: readonly (readonly [value: Value, words: string])[];
  readonly choose: (value: Value) => void;
}

/** A few choices side by side; the chosen one is pressed. */
export function ButtonRow<Value extends string | number>(props: ButtonRowProps<Value>): JSX.Element {
  const { label, value, options, choose } = props;
  return (
    <div class="button-row" role="group" aria-label={label}>
      {options.map(([each, words]) => (
        <button key={each} type="button" aria-pressed={each === value} onClick={() => choose(each)}>
          {words}
        </button>
      ))}
    </div>
  );
}
