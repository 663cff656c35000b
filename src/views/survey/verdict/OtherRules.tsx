import type { JSX } from 'preact';
import { RULE_NAMES, SURVEY_ANSWER_WORDS, surveyReason, type ReportedSurvey } from '../../../../sim/index.ts';
import { judgedByOthers } from '../../../app/survey/surveyJudged.ts';
import { state } from '../../../app/state.ts';

/** The same readings by the other rules, for comparison only. */
export function OtherRules({ reported }: { readonly reported: ReportedSurvey }): JSX.Element {
  return (
    <section class="survey-verdict-part" aria-labelledby="survey-others">
      <h2 id="survey-others">By the other rules, for comparison</h2>
      <p>The same readings and the same film, each rule with its usual figures. Which rule counts is agreed before the work, not after.</p>
      <div class="scroll-box" tabIndex={0} role="region" aria-label="The same readings by each rule">
        <table class="survey-verdict-table">
          <thead><tr><th scope="col">Rule</th><th scope="col">Answer</th><th scope="col">Why</th></tr></thead>
          <tbody>
            {[reported.judged, ...judgedByOthers.value].map((judged, k) => (
              <tr key={judged.rule.kind} class={k === 0 ? 'chosen' : ''}>
                <th scope="row">{RULE_NAMES[judged.rule.kind]}{k === 0 ? ' (this survey’s)' : ''}</th>
                <td>{SURVEY_ANSWER_WORDS[judged.answer]}</td>
                <td>{surveyReason(judged, state.units.value).replace(/^[^:]*: /, '')}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}
