import type { JSX } from 'preact';
import { ESTIMATE_STATEMENT, coatWarnings, verdictSentence } from '../../../sim/index.ts';
import { reported } from '../../app/reported.ts';
import { state } from '../../app/state.ts';
import { Doubts } from './Doubts.tsx';
import { FaultList } from './FaultList.tsx';
import { KeyFigures } from './KeyFigures.tsx';
import { LifeFigures } from './LifeFigures.tsx';
import { PaintSplit } from './PaintSplit.tsx';

/** Said where the newest job cannot be sprayed. */
export const OLD_FIGURES = 'These figures are of the last job that could be sprayed; see the message above.';

/** What the film comes to: one sentence, the figures against their bands, the faults worst first. */
export function VerdictView(): JSX.Element {
  const film = state.film.value;
  const coat = reported.value;
  if (film === null) {
    return (
      <div class="verdict-head">
        <h2>Verdict</h2>
        <p>{state.jobProblem.value === null ? 'Laying the coat…' : 'No film yet: see the message above.'}</p>
      </div>
    );
  }
  const doubts = coat === null ? film.setting.warnings : coatWarnings(coat);
  return (
    <>
      <div class="verdict-head">
        <h2>{state.inTime.value ? 'Verdict of the film, as laid and in time' : state.replay_s.value === null ? 'Verdict' : 'Verdict of the finished film'}</h2>
        {state.jobProblem.value === null ? null : <p class="old-figures">{OLD_FIGURES}</p>}
        <p class="sentence" aria-live="polite" data-testid="sentence">
          {coat === null ? 'Looking for faults…' : verdictSentence(coat, state.units.value)}
        </p>
      </div>
      <div class="verdict-body">
        <KeyFigures figures={film.figures} target={film.setting.target} />
        <LifeFigures />
        <PaintSplit account={film.laid.account} />
        {coat === null ? null : <FaultList coat={coat} />}
        <Doubts doubts={doubts} />
        <section class="limits">
          <h2>What this is worth</h2>
          <p>{ESTIMATE_STATEMENT}</p>
          <p>
            Modelled: the fan, the gun's travel, what lands, solvent lost in flight; in time, drying in the room's air,
            cooling, runs, levelling and what a second coat shuts in. Not modelled: bounce off corners; solvent and warmth
            that differ through the depth of the film; flow by differences of surface tension; the height and shape of a run,
            which change with the grid; draughts; water that a cold film takes up; soaking into the cloth. The coat
            beneath is a layer of its own that takes up solvent: a fresh coat does not dissolve into it.
          </p>
        </section>
      </div>
    </>
  );
}
