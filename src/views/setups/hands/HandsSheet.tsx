import './hands.css';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { capitalised, chanceField, handsHead, handsRows, HANDS_NOTE, worstSentences, type ReportedHandsTable } from '../../../../sim/index.ts';
import { coat } from '../../../app/document.ts';
import { chosenSetUps } from '../../../app/setups/besideSheet.ts';
import { followHands, handsResult, handsSheet, isOutOfDate, startHands, stopHands } from '../../../app/setups/handsSheet.ts';
import { lookAt } from '../../../app/setups/setUps.ts';
import { HANDS_COUNT, type HandsPrefs } from '../../../app/setups/setUpsPrefs.ts';
import { state } from '../../../app/state.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { ViewNumberField } from '../../fields/ViewNumberField.tsx';
import { Notice } from '../../frame/Notices.tsx';
import { LessonMap } from '../../demonstrations/LessonMap.tsx';
import { MapLegend } from '../../panel/MapLegend.tsx';
import { SetUpTicks } from '../SetUpTicks.tsx';

/** What each set-up forgives: the same coat by many simulated hands. */
export function HandsSheet(): JSX.Element {
  useEffect(followHands, []);
  const { hands } = state.setUps.value;
  const { working, done, problem } = handsSheet;
  const result = handsResult.value;
  const set = (changed: Partial<HandsPrefs>): void => lookAt({ hands: { ...hands, ...changed } });
  return (
    <div class="setups-hands">
      <div class="setups-choice">
        <SetUpTicks />
        <div class="setups-how">
          <ChoiceField id="hands-hand" label="Whose hand" value={hands.hand} options={handChoices()} choose={(hand) => set({ hand })} hint="The usual hands are assumptions; a trainee’s own comes from practice (Progress)." />
          <ViewNumberField id="hands-count" label="Hands to each set-up" unitKey="count" value={hands.count} low={HANDS_COUNT.low} high={HANDS_COUNT.high} isWhole set={(count) => set({ count })} />
          <div class="actions">
            {working.value
              ? <button type="button" onClick={stopHands}>Leave off</button>
              : <button type="button" class="act" disabled={chosenSetUps.value.length === 0} onClick={() => void startHands()}>Spray by all hands</button>}
            {working.value ? <progress value={done.value} max={1} aria-label="Hands sprayed" /> : null}
          </div>
        </div>
      </div>
      {problem.value === null ? null : <Notice problem={problem.value} dismiss={() => (problem.value = null)} />}
      {isOutOfDate.value && !working.value ? <p role="status"><strong>These figures are of the job or the choice as it was.</strong> Spray again.</p> : null}
      {result === null ? null : <HandsResult result={result} />}
    </div>
  );
}

function handChoices(): readonly (readonly [HandsPrefs['hand'], string])[] {
  const { hand } = coat.value;
  return [['practised', 'A practised finisher'], ['beginner', 'A beginner'], ...(hand.kind === 'own' ? [['own', hand.name] as const] : [])];
}

function HandsResult({ result }: { readonly result: ReportedHandsTable }): JSX.Element {
  const units = state.units.value;
  const [head, ...rows] = handsRows(result, units);
  const fields = result.rows.map(({ verdict }) => chanceField(verdict));
  return (
    <section aria-labelledby="hands-head">
      <h2 id="hands-head">What they forgive</h2>
      <p>{handsHead(result)}</p>
      <div class="scroll-box" tabIndex={0} role="region" aria-label="Chances by set-up">
        <table class="setups-table">
          <thead><tr>{head?.map((text, i) => (i === 0 ? <td key={text} /> : <th key={text} scope="col">{text}</th>))}</tr></thead>
          <tbody>{rows.map(([name, ...cells]) => <tr key={name}><th scope="row">{capitalised(name ?? '')}</th>{cells.map((text, i) => <td key={result.rows[i]?.setUp.id}>{text}</td>)}</tr>)}</tbody>
        </table>
      </div>
      <h3>Where it goes wrong</h3>
      <div class="setups-maps">
        {result.rows.map(({ setUp }, i) => {
          const field = fields[i];
          return field === undefined ? null : (
            <figure key={setUp.id}>
              <figcaption>{setUp.name}</figcaption>
              <div class="side-map"><LessonMap field={field} values={field.values} title={setUp.name} /></div>
              <MapLegend field={field} units={units} />
            </figure>
          );
        })}
      </div>
      <ul class="setups-sentences">{worstSentences(result, units).map((text) => <li key={text}>{text}</li>)}</ul>
      <p class="soft">{HANDS_NOTE}</p>
    </section>
  );
}
