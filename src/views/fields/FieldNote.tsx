import type { JSX } from 'preact';

export interface FieldNoteProps {
  readonly id: string;
  readonly problem: string | null;
  readonly hint: string | undefined;
}

/** The remark under a field. What is wrong is an element of its own, so that its coming is announced. */
export function FieldNote({ id, problem, hint }: FieldNoteProps): JSX.Element {
  if (problem === null) return <span key="hint" class="field-note" id={id}>{hint}</span>;
  return <span key="problem" class="field-note wrong" id={id} role="alert">{problem}</span>;
}
