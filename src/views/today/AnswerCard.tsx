import type { JSX } from 'preact';
import { COAT_WORDS, todayAmountRows, todayLine, todaySentences, type TodayAnswer, type TodayPart } from '../../../sim/index.ts';
import { state } from '../../app/state.ts';
import { JobButton } from './JobButton.tsx';
import { WorkingDetails } from './WorkingDetails.tsx';

export interface AnswerCardProps {
  readonly part: Exclude<TodayPart, 'climate'>;
  readonly question: string;
  readonly answer: TodayAnswer;
  readonly close: () => void;
}

/** One question with its answer in large letters, what belongs to it, and how it comes about. */
export function AnswerCard({ part, question, answer, close }: AnswerCardProps): JSX.Element {
  const units = state.units.value;
  const id = `today-${part}`;
  return (
    <section class="today-card" aria-labelledby={id}>
      <h2 id={id}>{question}</h2>
      <p class="today-line">{todayLine(answer, part, units)}</p>
      {part === 'amounts' ? <AmountRows answer={answer} /> : null}
      <ul class="today-sentences">{todaySentences(answer, part, units).map((text) => <li key={text}>{text}</li>)}</ul>
      {part === 'film' ? <CoatWords /> : null}
      <WorkingDetails answer={answer} part={part} />
      <JobButton answer={answer} part={part} close={close} />
    </section>
  );
}

function AmountRows({ answer }: { readonly answer: TodayAnswer }): JSX.Element {
  return (
    <table class="today-rows">
      <caption class="hidden-words">Where the mix goes</caption>
      <tbody>{todayAmountRows(answer, state.units.value).map(([name, value]) => <tr key={name}><th scope="row">{name}</th><td>{value}</td></tr>)}</tbody>
    </table>
  );
}

/** What the disputed word means here. */
function CoatWords(): JSX.Element {
  return (
    <dl class="today-words">
      {COAT_WORDS.map(([word, meaning]) => <div key={word}><dt>{word}</dt><dd>{meaning}</dd></div>)}
    </dl>
  );
}
