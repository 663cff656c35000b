import './beside.css';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { ESTIMATE_STATEMENT, shownTime, type ReportedComparison } from '../../../../sim/index.ts';
import { besideSheet, chosenSetUps, followBeside, saveReport } from '../../../app/setups/besideSheet.ts';
import { lookAt } from '../../../app/setups/setUps.ts';
import { COMPARED_MAPS } from '../../../app/setups/setUpsPrefs.ts';
import { state } from '../../../app/state.ts';
import { ButtonRow } from '../../fields/ButtonRow.tsx';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { Notice } from '../../frame/Notices.tsx';
import { LAID_WORDS, MOMENT_WORDS } from '../../panel/fieldWords.ts';
import { SetUpTicks } from '../SetUpTicks.tsx';
import { CompareTable } from './CompareTable.tsx';
import { SideMaps } from './SideMaps.tsx';

const MAP_WORDS = new Map<string, string>([...LAID_WORDS, ...MOMENT_WORDS]);

/** Two to four set-ups on the same panel, on one clock and one scale, with the best of each figure marked. */
export function BesideSheet(): JSX.Element {
  useEffect(followBeside, []);
  const { reply, problem, working } = besideSheet;
  const { beside } = state.setUps.value;
  const shown = reply.value;
  return (
    <div class="setups-beside">
      <div class="setups-choice">
        <SetUpTicks />
        <div class="setups-how">
          <ButtonRow
            label="Speed of the strokes"
            value={beside.strokes}
            options={[['to-target', 'Each at the speed for the target'], ['as-stated', 'All at the coat’s speed']]}
            choose={(strokes) => lookAt({ beside: { ...beside, strokes } })}
          />
          <ChoiceField
            id="beside-map"
            label="Map"
            value={beside.map}
            options={COMPARED_MAPS.map((map) => [map, MAP_WORDS.get(map) ?? map] as const)}
            choose={(map) => lookAt({ beside: { ...beside, map } })}
          />
        </div>
      </div>
      {problem.value === null ? null : <Notice problem={problem.value} dismiss={() => (problem.value = null)} />}
      <p role="status" class="soft">{working.value ? 'Laying each coat and watching its film…' : ''}</p>
      {chosenSetUps.value.length === 0 ? <p>Tick a set-up to begin.</p> : null}
      {shown === null ? null : (
        <>
          <SideMaps comparison={shown.comparison} times_s={shown.times_s} />
          <CompareTable comparison={shown.comparison} />
          <Problems comparison={shown.comparison} />
          <p class="soft">Every film was watched for {shownTime(shown.comparison.watched_s)}. {ESTIMATE_STATEMENT}</p>
          <div class="actions">
            <button type="button" disabled={working.value} onClick={() => void saveReport()}>Save as a report (HTML)</button>
            <button type="button" onClick={() => print()}>Print</button>
          </div>
        </>
      )}
    </div>
  );
}

function Problems({ comparison }: { readonly comparison: ReportedComparison }): JSX.Element | null {
  const problems = comparison.sides.flatMap(({ problem }) => (problem === null ? [] : [problem]));
  if (problems.length === 0) return null;
  return <ul class="setups-sentences" aria-label="Not compared">{problems.map((text) => <li key={text}>{text}</li>)}</ul>;
}
