import type { JSX } from 'preact';
import { keepDraft, leaveField } from '../../app/fieldText.ts';
import { state } from '../../app/state.ts';
import { kindOfKey, readTyped, typedText, unitOfKey } from '../../app/units.ts';
import { NumberBox } from './NumberBox.tsx';

export interface ViewNumberFieldProps {
  /** Also the draft's name, so it is one of a kind on the page. */
  readonly id: string;
  readonly label: string;
  /** A key with the unit that `value`, `low` and `high` are in: `width_mm`. */
  readonly unitKey: string;
  /** Null for an empty box, which `clear` allows. */
  readonly value: number | null;
  readonly low: number;
  readonly high: number;
  readonly isWhole?: boolean;
  readonly hint?: string;
  readonly set: (value: number) => void;
  /** The box may be left empty: what that does. */
  readonly clear?: () => void;
}

/** A number that is no part of the job, with its unit and limits. A wrong text stays, with its message. */
export function ViewNumberField(props: ViewNumberFieldProps): JSX.Element {
  const { id, label, unitKey, value, hint, set, clear } = props;
  const units = state.units.value;
  const pointer = `/view/${id}`;
  const draft = state.drafts.value[pointer];
  const problem = draft?.problem ?? null;
  const type = (text: string): void => {
    if (clear !== undefined && text.trim() === '') {
      keepDraft(pointer, { text, problem: null });
      clear();
      return;
    }
    const read = readLimited(text, props);
    keepDraft(pointer, { text, problem: 'problem' in read ? read.problem : null });
    if ('value' in read) set(read.value);
  };
  return (
    <NumberBox
      id={id}
      label={label}
      text={draft?.text ?? (value === null ? '' : typedText(value, unitKey, units))}
      unit={unitOfKey(unitKey, units)}
      problem={problem === null ? null : `${problem}. The last good value still counts.`}
      hint={hint}
      type={type}
      leave={() => leaveField(pointer)}
    />
  );
}

function readLimited(text: string, { unitKey, low, high, isWhole = false }: ViewNumberFieldProps): { readonly value: number } | { readonly problem: string } {
  const units = state.units.peek();
  const typed = readTyped(text, unitKey, units);
  if ('problem' in typed) return typed;
  if (isWhole && !Number.isInteger(typed.value)) return { problem: 'Give a whole number' };
  if (typed.value >= low && typed.value <= high) return typed;
  const said = (value: number): string => typedText(value, unitKey, units);
  const limits = `${said(typed.value)} is outside ${said(low)} to ${said(high)} ${unitOfKey(unitKey, units)}`.trim();
  return { problem: `${limits}; give ${kindOfKey(unitKey)} within these` };
}
