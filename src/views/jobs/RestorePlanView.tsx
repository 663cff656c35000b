import type { JSX } from 'preact';
import { nameOf, offered, restoreNow, takeOffered } from '../../app/jobs/doRestore.ts';
import { jobs } from '../../app/jobs/jobs.ts';
import { chooseRestore, restorePlan, type RestorePlan } from '../../app/jobs/restoreZip.ts';
import type { RestoreChoice, RestoreRow } from '../../workshop/planRestore.ts';
import { CHOICE_WORDS, DIGEST_WORDS, planSentence, stateWords, workshopSentence } from '../../workshop/workshopWords.ts';
import { dayWords } from './jobWords.ts';

/** What a restore would change, row by row, with a choice for each; nothing is written yet. */
export function RestorePlanView({ plan }: { readonly plan: RestorePlan }): JSX.Element {
  const { file, read, rows, choices } = plan;
  return (
    <div class="jobs-plan">
      <h3>What would change</h3>
      <p>{workshopSentence(file, read)}</p>
      {read.doubts.map((doubt) => <p key={doubt} class="jobs-doubt"><strong>Doubt.</strong> {doubt}</p>)}
      <ul class="jobs-plan-rows plain-list">
        {rows.map((row, i) => <PlanRow key={row.file} row={row} index={i} choice={choices[i] ?? 'skip'} />)}
      </ul>
      {read.leftOut.length === 0 ? null : (
        <>
          <h3>Cannot be read</h3>
          <ul class="jobs-done">
            {read.leftOut.map(({ name, why }) => <li key={name + why}><strong>{name}</strong>: {why}</li>)}
          </ul>
        </>
      )}
      <Offered plan={plan} />
      <p class="sentence" role="status">{planSentence(choices)}</p>
      <p class="actions">
        <button type="button" class="act" disabled={jobs.working.value || choices.every((each) => each === 'skip')} onClick={() => void restoreNow()}>Restore</button>
        <button type="button" onClick={() => (restorePlan.value = null)}>Leave everything as it is</button>
      </p>
    </div>
  );
}

function PlanRow({ row, index, choice }: { readonly row: RestoreRow; readonly index: number; readonly choice: RestoreChoice }): JSX.Element {
  const id = `jobs-choice-${index}`;
  return (
    <li class="jobs-plan-row">
      <div>
        <strong>{nameOf(row)}</strong>
        <p>{stateWords(row)}{row.digest === 'fits' ? '' : ` In the zip: ${DIGEST_WORDS[row.digest]}.`}</p>
        {row.kind === 'job' && row.here !== null && row.listed !== null && row.state !== 'same' ? <p class="soft">Here {dayWords(row.here.changedAt)}, in the zip {dayWords(row.listed.changedAt)}.</p> : null}
      </div>
      <div class="field field-wide">
        <label class="hidden-words" for={id}>What to do with {nameOf(row)}</label>
        <select id={id} value={choice} disabled={row.choices.length === 1} onChange={(event) => chooseRestore(index, event.currentTarget.value as RestoreChoice)}>
          {row.choices.map((each) => <option key={each} value={each} selected={each === choice}>{CHOICE_WORDS[each]}</option>)}
        </select>
      </div>
    </li>
  );
}

/** Units, writer's name and rubric of the zip, taken only by a wish of its own. */
function Offered({ plan }: { readonly plan: RestorePlan }): JSX.Element | null {
  const { units, who, rubric } = offered(plan);
  const parts = [
    ...(units === null ? [] : [units === 'us' ? 'units mil and in' : 'units µm and mm']),
    ...(who === null ? [] : [`the writer's name “${who}”`]),
    ...(rubric === null ? [] : [`the rubric “${rubric}”`]),
  ];
  if (parts.length === 0) return null;
  return (
    <p class="jobs-offered">
      <span>The zip also holds {parts.join(', ')}.</span>
      <button type="button" onClick={() => takeOffered(plan)}>Take these over</button>
    </p>
  );
}
