import './today.css';
import type { JSX } from 'preact';
import { airCautions, ESTIMATE_STATEMENT, TODAY_PARTS, todayTaken, type TodayAnswer } from '../../../sim/index.ts';
import { SHOWN_KEYS, statedKeys, todayAnswer, todayProblem } from '../../app/today/todaySheet.ts';
import { state } from '../../app/state.ts';
import { ButtonRow } from '../fields/ButtonRow.tsx';
import { Notice, Notices } from '../frame/Notices.tsx';
import { OverHead } from '../frame/OverHead.tsx';
import { useOverWindow } from '../frame/useOverWindow.ts';
import { AnswerCard } from './AnswerCard.tsx';
import { ClimateAnswer } from './ClimateAnswer.tsx';
import { TodayFields, TodayMoreFields } from './TodayFields.tsx';

/** The front sheet: a few numbers typed, everything that most people come for answered as they type. */
export function TodayStage({ close }: { readonly close: () => void }): JSX.Element {
  const stage = useOverWindow(close);
  const answer = todayAnswer.value;
  return (
    <div
      ref={stage}
      class="over-window over-stage today"
      role="dialog"
      aria-modal="true"
      aria-label="Today"
      tabIndex={-1}
      // A dropped file must not take the browser away from the page.
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => event.preventDefault()}
    >
      <OverHead title="Today" close={close}>
        <ButtonRow label="Units" value={state.units.value} options={[['metric', 'µm · °C'], ['us', 'mil · °F']]} choose={(units) => (state.units.value = units)} />
        <button type="button" onClick={() => window.print()}>Print</button>
      </OverHead>
      {todayProblem.value === null ? null : <Notice problem={todayProblem.value} dismiss={() => (todayProblem.value = null)} />}
      <Notices />
      <div class="today-sheet">
        <TodayFields />
        {'climate' in answer ? <ClimateAnswer answer={answer} close={close} /> : <Notice problem={answer} />}
        <TodayMoreFields />
        {'climate' in answer ? <Answers answer={answer} close={close} /> : null}
      </div>
    </div>
  );
}

function Answers({ answer, close }: { readonly answer: TodayAnswer; readonly close: () => void }): JSX.Element {
  const units = state.units.value;
  const words = (stated: ReadonlySet<string>): readonly string[] => todayTaken(answer, stated, units);
  const taken = words(statedKeys(state.today.value));
  const set = words(new Set([...SHOWN_KEYS, 'thinnerRatio'])).filter((text) => !taken.includes(text));
  return (
    <div class="today-answers">
      <p class="today-taken">
        {set.length === 0 ? null : `Set under “Everything else”: ${set.join('; ')}. `}
        {taken.length === 0 ? null : `Taken as usual: ${taken.join('; ')}. Change them above, most under “Everything else”.`}
      </p>
      <div class="today-cards">
        {TODAY_PARTS.map(([part, question]) => (part === 'climate' ? null : <AnswerCard key={part} part={part} question={question} answer={answer} close={close} />))}
      </div>
      <section class="today-cautions" aria-label="Before you spray">
        <h2>Before you spray</h2>
        <ul>{airCautions(answer.climate.answer).map((text) => <li key={text}>{text}</li>)}</ul>
        <p>{ESTIMATE_STATEMENT}</p>
      </section>
    </div>
  );
}
