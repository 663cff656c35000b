import type { JSX } from 'preact';
import { MEASURE_WORDS, type RubricRowSpec, type UnitSystem } from '../../../../sim/index.ts';
import { FieldNote } from '../../fields/FieldNote.tsx';
import { RUBRIC_FIELDS, rubricText, rubricUnit, typedRow, type RubricDrafts, type RubricField } from './rubricDrafts.ts';

const FIELD_WORDS: Readonly<Record<RubricField, string>> = { weight: 'weight', limit: 'limit', none: 'no mark' };

export interface RubricRowProps {
  readonly row: RubricRowSpec;
  readonly drafts: RubricDrafts;
  readonly units: UnitSystem;
  readonly type: (field: RubricField, text: string) => void;
  readonly leave: () => void;
}

/** How one measure is marked: three numbers side by side, what is wrong below. */
export function RubricRow({ row, drafts, units, type, leave }: RubricRowProps): JSX.Element {
  const { problems } = typedRow(row, drafts, units);
  const { measure } = row;
  return (
    <fieldset class="rubric-row">
      <legend>{MEASURE_WORDS[measure].title}</legend>
      {RUBRIC_FIELDS.map((field) => {
        const id = `rubric-${measure}-${field}`;
        const unit = rubricUnit(measure, field, units);
        return (
          <div key={field} class="rubric-field">
            <label for={id}>{FIELD_WORDS[field]}{unit === '' ? '' : `, ${unit}`}</label>
            <input
              id={id}
              type="text"
              inputMode="decimal"
              autocomplete="off"
              spellcheck={false}
              value={rubricText(row, field, drafts, units)}
              aria-invalid={problems[field] !== undefined}
              aria-describedby={`${id}-note`}
              onInput={(event) => type(field, event.currentTarget.value)}
              onBlur={leave}
              onKeyDown={(event) => {
                if (event.key === 'Enter') leave();
              }}
            />
          </div>
        );
      })}
      {RUBRIC_FIELDS.map((field) => (
        <FieldNote key={field} id={`rubric-${measure}-${field}-note`} problem={problems[field] === undefined ? null : `${problems[field]}. The last good values still mark.`} hint={undefined} />
      ))}
    </fieldset>
  );
}
