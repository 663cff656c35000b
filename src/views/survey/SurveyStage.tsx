import './survey.css';
import type { ComponentType, JSX } from 'preact';
import { lookAtSurvey, surveyStage } from '../../app/survey/survey.ts';
import { SURVEY_TABS, type SurveyTab } from '../../app/survey/surveyPrefs.ts';
import { state } from '../../app/state.ts';
import { OverStage } from '../frame/OverStage.tsx';
import { SurveyStrip } from './SurveyStrip.tsx';
import { ReadingsSheet } from './readings/ReadingsSheet.tsx';
import { VerdictSheet } from './verdict/VerdictSheet.tsx';
import { WhereSheet } from './where/WhereSheet.tsx';
import { TruthSheet } from './truth/TruthSheet.tsx';

const TAB_WORDS: Readonly<Record<SurveyTab, string>> = { readings: 'Readings', verdict: 'Verdict', where: 'Where to read', truth: 'Plan against truth' };

const SHEETS: Readonly<Record<SurveyTab, ComponentType>> = { readings: ReadingsSheet, verdict: VerdictSheet, where: WhereSheet, truth: TruthSheet };

/** What the gauges read, judged by a stated rule, and beside the plan. */
export function SurveyStage({ close }: { readonly close: () => void }): JSX.Element {
  const { tab } = state.survey.value;
  return <OverStage name="survey" title="Survey" close={close} problem={surveyStage.problem} words={TAB_WORDS} tabs={SURVEY_TABS} shown={tab} show={(next) => lookAtSurvey({ tab: next })} sheets={SHEETS}><SurveyStrip /></OverStage>;
}
