import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { ESTIMATE_STATEMENT, SPRAY_CAUTIONS, coatFaults, coatWarnings, faultSentences, verdictSentence, type ReportedCoat } from '../../../sim/index.ts';
import { drawMap } from '../../app/printPicture.ts';
import { reported } from '../../app/reported.ts';
import { state } from '../../app/state.ts';
import { faultsHeading } from '../verdict/FaultList.tsx';
import { KeyFigures } from '../verdict/KeyFigures.tsx';
import { LifeFigures } from '../verdict/LifeFigures.tsx';
import { OLD_FIGURES } from '../verdict/VerdictView.tsx';
import { Assumptions } from './Assumptions.tsx';

/** What goes on paper: made only when printing begins, since it holds the whole verdict again. */
export function PrintSheet(): JSX.Element | null {
  const [isPrinting, setPrinting] = useState(false);
  useEffect(() => {
    const begin = (): void => setPrinting(true);
    const end = (): void => setPrinting(false);
    addEventListener('beforeprint', begin);
    addEventListener('afterprint', end);
    return () => {
      removeEventListener('beforeprint', begin);
      removeEventListener('afterprint', end);
    };
  }, []);
  const coat = reported.value;
  return !isPrinting || coat === null ? null : <Sheet coat={coat} />;
}

function Sheet({ coat }: { readonly coat: ReportedCoat }): JSX.Element {
  const system = state.units.value;
  const job = state.job.value;
  const { setting, verdict } = coat;
  return (
    <article class="print-sheet">
      <h1>{job.name}</h1>
      <p>{job.part.name}, {setting.panel.name}. {setting.coat.name}, {setting.setUp.name}. Seed {job.seed}.</p>
      {state.jobProblem.value === null ? null : <p>{OLD_FIGURES} {state.jobProblem.value.text}</p>}
      <p class="sentence">{verdictSentence(coat, system)}</p>
      <canvas ref={drawMap} class="print-map" aria-label="Film map" />
      <KeyFigures figures={verdict} target={setting.target} />
      <LifeFigures />
      <h2>{faultsHeading(coat)}</h2>
      <ol>
        {coatFaults(coat).map((fault, i) => {
          const words = faultSentences(fault, setting.target, system);
          return <li key={i}>{words.what} Cause: {words.cause} Cure: {words.cure}</li>;
        })}
      </ol>
      <Assumptions coat={coat} />
      <h2>Doubts and cautions</h2>
      <ul>
        {coatWarnings(coat).map(({ text }) => <li key={text}>{text}</li>)}
        {SPRAY_CAUTIONS.map((text) => <li key={text}>{text}</li>)}
      </ul>
      <p>{ESTIMATE_STATEMENT}</p>
    </article>
  );
}
