import type { JSX } from 'preact';
import { climateHelp, CLIMATE_WORDS, ruleVerdictWords, ruleWords, surfaceSentence, TODAY_CAUTION, TODAY_PARTS, todayLine, type ClimateVerdictWord, type TodayAnswer } from '../../../sim/index.ts';
import { state } from '../../app/state.ts';
import { JobButton } from './JobButton.tsx';
import { WorkingDetails } from './WorkingDetails.tsx';

/** The big verdict: go, go with care, or wait; why, what would make it go, and whose rule says what. */
export function ClimateAnswer({ answer, close }: { readonly answer: TodayAnswer; readonly close: () => void }): JSX.Element {
  const units = state.units.value;
  const { verdict } = answer.climate;
  const help = climateHelp(answer.climate, units);
  const surface = surfaceSentence(verdict, answer.climate.answer, units);
  const question = TODAY_PARTS.find(([part]) => part === 'climate')?.[1];
  return (
    <section class={`today-verdict ${verdict.verdict}`} aria-labelledby="today-climate">
      <h2 id="today-climate">{question}</h2>
      <div role="status" data-testid="today-verdict">
        <p class="today-word"><VerdictSign verdict={verdict.verdict} />{CLIMATE_WORDS[verdict.verdict]}</p>
        <p class="today-line">{afterWord(todayLine(answer, 'climate', units))}</p>
      </div>
      <p class="today-caution">{TODAY_CAUTION}</p>
      {surface === null ? null : <p class="soft">{surface}</p>}
      {help.length === 0 ? null : (
        <>
          <h3>What would make it go</h3>
          <ul class="today-sentences">{help.map((text) => <li key={text}>{text}</li>)}</ul>
        </>
      )}
      <details class="more today-rules">
        <summary>Whose rule says what</summary>
        <dl>
          {verdict.rules.map((each) => (
            <div key={each.rule.id}>
              <dt>{each.rule.name}</dt>
              <dd>{ruleVerdictWords(each, units)}</dd>
              <dd class="soft">Asks: {ruleWords(each.rule, units)}.</dd>
            </div>
          ))}
        </dl>
      </details>
      <WorkingDetails answer={answer} part="climate" />
      <JobButton answer={answer} part="climate" close={close} />
    </section>
  );
}

/** The word stands above in large letters already. */
function afterWord(line: string): string {
  const rest = line.slice(line.indexOf(':') + 1).trim();
  return `${rest.charAt(0).toUpperCase()}${rest.slice(1)}`;
}

/** A tick, a triangle or a bar: told apart by shape, not by colour. */
function VerdictSign({ verdict }: { readonly verdict: ClimateVerdictWord }): JSX.Element {
  return (
    <svg class="today-sign" viewBox="0 0 20 20" aria-hidden="true">
      {verdict === 'go' ? <path d="M3 11 L8 16 L17 4" /> : null}
      {verdict === 'care' ? <path d="M10 2 L18.5 17.5 L1.5 17.5 Z M10 7.5 V12.5 M10 14.5 V15.7" /> : null}
      {verdict === 'wait' ? <path d="M6 2 H14 L18 6 V14 L14 18 H6 L2 14 V6 Z M6 10 H14" /> : null}
    </svg>
  );
}
