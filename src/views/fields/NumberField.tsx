import type { JSX } from 'preact';
import { fieldText, leaveField, typeNumber } from '../../app/fieldText.ts';
import { pointerOf, type JobPath } from '../../app/path.ts';
import { state } from '../../app/state.ts';
import { NumberBox } from './NumberBox.tsx';

export interface NumberFieldProps {
  readonly path: JobPath;
  readonly label: string;
  /** A remark under the field: a default, a reason, the same figure in another form. */
  readonly hint?: string;
}

/** A number of the job with its unit. Any unit may be typed behind it; a wrong text stays, with its message. */
export function NumberField({ path, label, hint }: NumberFieldProps): JSX.Element {
  const draft = state.drafts.value[pointerOf(path)];
  const field = fieldText(state.job.value, path, state.units.value, draft);
  return (
    <NumberBox
      id={path.join('-')}
      label={label}
      text={field.text}
      unit={field.unit}
      problem={field.problem === null ? null : `${field.problem}. The film still shows the last good value.`}
      hint={hint}
      type={(text) => typeNumber(path, label, text)}
      leave={() => leaveField(field.id)}
    />
  );
}
