import type { JSX } from 'preact';
import { ESTIMATE_STATEMENT, coatWarnings, verdictSentence } from '../../../sim/index.ts';
import { reported } from '../../app/reported.ts';
import { state } from '../../app/state.ts';
import { FaultList } from './FaultList.tsx';
import { KeyFigures } from './KeyFigures.tsx';
import { PaintSplit } from './PaintSplit.tsx';

/** What the film comes to: one sentence, the figures against their bands, the faults worst first. */
export function VerdictView(): JSX.Element {
  const film = state.film.value;
  const coat = reported.value;
  if (film === null) {
    return (
      <>
        <h2>Verdict</h2>
        <p>{state.jobProblem.value === null ? 'Laying the coat…' : 'No film yet: see the message above.'}</p>
      </>
    );
  }
  const doubts = coat === null ? [] : coatWarnings(coat);
  return (
    <>
      <h2>Verdict</h2>
      <p class="sentence" aria-live="polite" data-testid="sentence">
        {coat === null ? 'Looking for faults…' : verdictSentence(coat, state.units.value)}
      </p>
      <KeyFigures figures={film.figures} target={film.setting.target} />
      <PaintSplit account={film.laid.account} />
      {coat === null ? null : <FaultList coat={coat} />}
      {doubts.length === 0 ? null : (
        <section class="doubts">
          <h2>Doubts</h2>
          <ul>{doubts.map(({ text }) => <li key={text}>{text}</li>)}</ul>
        </section>
      )}
      <section class="limits">
        <h2>What this is worth</h2>
        <p>{ESTIMATE_STATEMENT}</p>
        <p>
          Modelled: the fan, the gun's travel, what lands, solvent lost in flight. Not modelled yet: runs and
          levelling, drying, the room's air, bounce off corners, and what a cloth soaks up.
        </p>
      </section>
    </>
  );
}
