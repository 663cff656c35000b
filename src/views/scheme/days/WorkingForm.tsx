import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { setWorking, workingNow } from '../../../app/scheme/daysSheet.ts';
import { state } from '../../../app/state.ts';
import { FieldNote } from '../../fields/FieldNote.tsx';
import { TickField } from '../../fields/TickField.tsx';

/** When the first step may begin, and the hours of work. */
export function WorkingForm(): JSX.Element {
  const [problem, setProblem] = useState<string | null>(null);
  const working = workingNow(state.job.value);
  const field = (key: 'start' | 'from' | 'to', label: string, type: 'datetime-local' | 'time', hint?: string): JSX.Element => (
    <div class="field">
      <label for={`days-${key}`}>{label}</label>
      <input id={`days-${key}`} type={type} value={working[key]} aria-invalid={problem !== null} aria-describedby="days-working-note" onChange={(event) => setProblem(setWorking({ [key]: event.currentTarget.value }))} />
      {hint === undefined ? null : <span class="field-note">{hint}</span>}
    </div>
  );
  return (
    <div class="scheme-days-form">
      {field('start', 'First step from', 'datetime-local')}
      {field('from', 'Work begins each day', 'time')}
      {field('to', 'Work ends each day', 'time')}
      <TickField label="Work on Saturdays and Sundays" on={working.weekends} turn={(weekends) => setProblem(setWorking({ weekends }))} />
      <FieldNote id="days-working-note" problem={problem} hint={state.job.value.working === undefined ? 'The job states no working hours yet: these are assumed. Changing one states them.' : undefined} />
    </div>
  );
}
