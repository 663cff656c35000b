import type { JSX } from 'preact';
import { changeJob, closeStep } from '../../app/document.ts';
import { valueAt, withValueAt, type JobPath } from '../../app/path.ts';
import { state } from '../../app/state.ts';

/** A name. Names have no wrong value but an overlong one, which the box does not take. */
export function TextField({ path, label }: { readonly path: JobPath; readonly label: string }): JSX.Element {
  const id = path.join('-');
  const value = valueAt(state.job.value, path);
  return (
    <div class="field field-wide">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="text"
        maxLength={200}
        autocomplete="off"
        value={typeof value === 'string' ? value : ''}
        onInput={(event) =>
          changeJob(label, withValueAt(state.job.peek(), path, event.currentTarget.value), id)
        }
        onBlur={closeStep}
      />
    </div>
  );
}
