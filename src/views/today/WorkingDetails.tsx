import type { JSX } from 'preact';
import { TODAY_PARTS, todayWorking, type TodayAnswer, type TodayPart } from '../../../sim/index.ts';
import { state } from '../../app/state.ts';

/** Formula, inputs, source and limits of an answer, opened in its place. */
export function WorkingDetails({ answer, part }: { readonly answer: TodayAnswer; readonly part: TodayPart }): JSX.Element {
  const { formula, inputs, sources, limits } = todayWorking(answer, part, state.units.value);
  const question = TODAY_PARTS.find(([each]) => each === part)?.[1] ?? '';
  return (
    <details class="more today-working">
      <summary>How this comes about<span class="hidden-words">: {question}</span></summary>
      <Texts head="Formula" texts={formula} />
      <h3>Put in</h3>
      <dl class="today-inputs">{inputs.map(([name, value]) => <div key={name}><dt>{name}</dt><dd>{value}</dd></div>)}</dl>
      <Texts head="Whose it is" texts={sources} />
      <Texts head="Where it ends" texts={limits} />
    </details>
  );
}

function Texts({ head, texts }: { readonly head: string; readonly texts: readonly string[] }): JSX.Element {
  return (
    <>
      <h3>{head}</h3>
      <ul class="today-sentences">{texts.map((text) => <li key={text}>{text}</li>)}</ul>
    </>
  );
}
