import { closeStep, changeJob } from './document.ts';
import { limitsAt } from './limits.ts';
import { pointerOf, valueAt, withValueAt, type JobPath } from './path.ts';
import { kindOfKey, readTyped, typedText, unitOfKey } from './units.ts';
import { state, type Draft } from './state.ts';
import type { Job, UnitSystem } from '../../sim/index.ts';

/** A number's field as it stands: the text in the box, its unit, and what is wrong with it. */
export interface FieldText {
  readonly id: string;
  readonly text: string;
  readonly unit: string;
  /** Null where the text is a value within its limits. */
  readonly problem: string | null;
  /** The limits in the reader's unit, in words. */
  readonly limits: string;
}

/** The number field at `path`; a draft stands before the job's value. */
export function fieldText(job: Job, path: JobPath, system: UnitSystem, draft: Draft | undefined): FieldText {
  const id = pointerOf(path);
  const key = keyOf(path);
  const value = valueAt(job, path);
  const text = draft?.text ?? (typeof value === 'number' ? typedText(value, key, system) : '');
  const limits = limitsAt(job, path);
  return {
    id,
    text,
    unit: unitOfKey(key, system),
    problem: draft?.problem ?? null,
    limits: `${typedText(limits.low, key, system)} to ${typedText(limits.high, key, system)} ${unitOfKey(key, system)}`.trim(),
  };
}

/** What the reader typed: a value in the file's unit, or why it is none. */
export type Typed = { readonly value: number } | { readonly problem: string };

/** Reads a text as the number at `path`, and checks it against the schema's limits. */
export function readNumber(job: Job, path: JobPath, text: string, system: UnitSystem): Typed {
  const key = keyOf(path);
  const typed = readTyped(text, key, system);
  if ('problem' in typed) return typed;
  const { low, high, whole, description } = limitsAt(job, path);
  const unit = unitOfKey(key, system);
  if (!(typed.value >= low && typed.value <= high)) {
    const shown = (value: number): string => typedText(value, key, system);
    const limits = `${shown(typed.value)} ${unit} is outside ${shown(low)} to ${shown(high)} ${unit}`.replaceAll('  ', ' ').trim();
    return { problem: `${limits}; give ${kindOfKey(key)} within these${meaningOf(description)}` };
  }
  if (whole && !Number.isInteger(typed.value)) return { problem: 'Give a whole number' };
  return typed;
}

/** What the schema says of the number, without the file's unit, which may not be the reader's. */
function meaningOf(description: string): string {
  return description === '' ? '' : ` (${description.replace(/, (?:mm|µm|ms|m\/s|mL\/min|mL|g|deg|m|s|minutes|°C|%|kPa|mPa s)$/, '')})`;
}

/** Takes a keystroke: the text is kept as typed, and is the job's value as soon as it is one. */
export function typeNumber(path: JobPath, label: string, text: string): void {
  const id = pointerOf(path);
  const job = state.job.peek();
  const typed = readNumber(job, path, text, state.units.peek());
  keepDraft(id, { text, problem: 'problem' in typed ? typed.problem : null });
  if ('value' in typed) changeJob(label, withValueAt(job, path, typed.value), id);
}

/** The reader has left the field: a good text is shown as its value, a bad one stays with its message. */
export function leaveField(id: string): void {
  closeStep();
  if (state.drafts.peek()[id]?.problem === null) dropDraft(id);
}

export function keepDraft(id: string, draft: Draft): void {
  state.drafts.value = { ...state.drafts.peek(), [id]: draft };
}

export function dropDraft(id: string): void {
  const { [id]: dropped, ...rest } = state.drafts.peek();
  if (dropped !== undefined) state.drafts.value = rest;
}

/** The unit-suffixed key that a path ends in; for an item of a list, or of a list in a list, the list's key. */
function keyOf(path: JobPath): string {
  return String(path.findLast((key) => typeof key !== 'number' && !/^\d+$/.test(key)));
}
