import type { JSX } from 'preact';
import { counted } from '../../../sim/index.ts';
import { chosenJob, jobs } from '../../app/jobs/jobs.ts';
import { state } from '../../app/state.ts';
import type { JobHead } from '../../storage/jobs.ts';
import { ChosenJob } from './ChosenJob.tsx';
import { dayWords, sizeWords } from './jobWords.ts';

export interface JobRowsProps {
  readonly label: string;
  readonly heads: readonly JobHead[];
  readonly close: () => void;
}

/** Jobs one below the other; arrow keys go from one to the next, and the chosen one shows what can be done with it. */
export function JobRows({ label, heads, close }: JobRowsProps): JSX.Element {
  const chosen = chosenJob.value?.id;
  // One of the rows is always reached by Tab.
  const reached = heads.some(({ id }) => id === chosen) ? chosen : heads[0]?.id;
  return (
    <ul class="jobs-rows plain-list" aria-label={label} onKeyDown={goThrough}>
      {heads.map((head) => (
        <li key={head.id}>
          <Row head={head} isChosen={head.id === chosen} isReached={head.id === reached} isOpen={head.id === state.jobId.value} />
          {head.id === chosen ? <ChosenJob key={head.id} head={head} close={close} /> : null}
        </li>
      ))}
    </ul>
  );
}

interface RowProps {
  readonly head: JobHead;
  readonly isChosen: boolean;
  readonly isReached: boolean;
  readonly isOpen: boolean;
}

function Row({ head, isChosen, isReached, isOpen }: RowProps): JSX.Element {
  return (
    <button type="button" class="jobs-row" aria-expanded={isChosen} tabIndex={isReached ? 0 : -1} onClick={() => (jobs.chosen.value = head.id)}>
      <span class="jobs-name">{head.name === '' ? 'Job without a name' : head.name}{isOpen ? <strong class="jobs-open"> · open now</strong> : null}</span>
      <span>{head.part}</span>
      <span>{counted(head.coats, 'coat')}, {sizeWords(head.letters)}</span>
      <span>{dayWords(head.changedAt)}</span>
    </button>
  );
}

/** Where a key leads among the rows. */
const TURNS: Readonly<Record<string, (at: number, count: number) => number>> = {
  ArrowUp: (at) => Math.max(0, at - 1),
  ArrowDown: (at, count) => Math.min(count - 1, at + 1),
  Home: () => 0,
  End: (_at, count) => count - 1,
};

function goThrough(event: KeyboardEvent & { readonly currentTarget: HTMLElement }): void {
  const turn = TURNS[event.key];
  if (turn === undefined || !(event.target instanceof HTMLButtonElement) || !event.target.classList.contains('jobs-row')) return;
  const rows = [...event.currentTarget.querySelectorAll<HTMLButtonElement>('.jobs-row')];
  rows[turn(rows.indexOf(event.target), rows.length)]?.focus();
  event.preventDefault();
}
