import './verdict.css';
import type { JSX } from 'preact';
import { SURVEY_NOTE, surveyReason, type ReportedSurvey, type SurveySpec } from '../../../../sim/index.ts';
import { judgedSurvey } from '../../../app/survey/surveyJudged.ts';
import { lookAtSurvey, shownSurvey } from '../../../app/survey/survey.ts';
import { state } from '../../../app/state.ts';
import { Notice } from '../../frame/Notices.tsx';
import { Checks } from './Checks.tsx';
import { Deciding } from './Deciding.tsx';
import { MoreToRead } from './MoreToRead.tsx';
import { OtherRules } from './OtherRules.tsx';
import { RuleForm } from './RuleForm.tsx';

/** The survey shown against its rule: the answer with its reason, then all that it rests on. */
export function VerdictSheet(): JSX.Element | null {
  const survey = shownSurvey.value;
  const judged = judgedSurvey.value;
  if (survey === null || judged === null) return null;
  return (
    <div class="survey-verdict">
      {'problem' in judged ? <Notice problem={judged.problem} /> : <Answer reported={judged.reported} />}
      <div class="survey-verdict-columns">
        <RuleForm survey={survey} />
        {'problem' in judged ? null : <Grounds survey={survey} reported={judged.reported} />}
      </div>
    </div>
  );
}

function Answer({ reported: { judged, warnings } }: { readonly reported: ReportedSurvey }): JSX.Element {
  return (
    <section class="survey-verdict-answer" aria-label="Answer">
      <p class={`survey-verdict-said ${judged.answer}`} role="status" data-testid="survey-answer">{surveyReason(judged, state.units.value)}</p>
      <p>{SURVEY_NOTE}</p>
      {judged.readings.length > 0 ? null : <div class="actions"><button type="button" onClick={() => lookAtSurvey({ tab: 'readings' })}>Enter readings</button></div>}
      {warnings.length === 0 ? null : (
        <div>
          <h2>Doubts</h2>
          <ul class="survey-verdict-doubts">{warnings.map(({ text }) => <li key={text}>{text}</li>)}</ul>
        </div>
      )}
    </section>
  );
}

function Grounds({ survey, reported }: { readonly survey: SurveySpec; readonly reported: ReportedSurvey }): JSX.Element | null {
  if (reported.judged.readings.length === 0) return null;
  return (
    <div class="survey-verdict-grounds">
      <Checks judged={reported.judged} />
      <Deciding survey={survey} reported={reported} />
      <MoreToRead reported={reported} />
      <OtherRules reported={reported} />
    </div>
  );
}
