import './steps.css';
import type { JSX } from 'preact';
import { COAT_DEFINITIONS, COAT_DEFINITIONS_SOURCE, counted, ESTIMATE_STATEMENT, NOT_CHECKED, STRENGTH_NOTE, strengthSentences, totalSentences, type ReportedScheme } from '../../../../sim/index.ts';
import { lookAtScheme, shownScheme } from '../../../app/scheme/scheme.ts';
import { schemePlan } from '../../../app/scheme/schemePlan.ts';
import { isReportCurrent, schemeReport } from '../../../app/scheme/stepsSheet.ts';
import { state } from '../../../app/state.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { Notice } from '../../frame/Notices.tsx';
import { ColourFields } from './ColourFields.tsx';
import { FilmDrawing } from './FilmDrawing.tsx';
import { FindingList } from './FindingList.tsx';
import { NewScheme } from './NewScheme.tsx';
import { SchemeFields } from './SchemeFields.tsx';
import { StepList } from './StepList.tsx';

/** The steps in order with what each leaves, what the rules say, and a cut through the films. */
export function StepsSheet(): JSX.Element {
  const scheme = shownScheme.value;
  const { problem, working } = schemePlan;
  const report = schemeReport.value;
  if (scheme === null) return <div class="scheme-steps"><NewScheme isFirst /></div>;
  return (
    <div class="scheme-steps">
      {problem.value === null ? null : <Notice problem={problem.value} dismiss={() => (problem.value = null)} />}
      <SchemeChoice />
      <section aria-labelledby="steps-head" class="scheme-steps-head">
        <h2 id="steps-head">{scheme.name}</h2>
        {report === null ? null : <Summary report={report} />}
        <p role="status" class="soft">{working.value || !isReportCurrent.value ? 'Working it out; the figures are of the scheme as it was…' : ''}</p>
      </section>
      <div class="scheme-steps-columns">
        <div class="scheme-steps-main">
          <StepList />
        </div>
        <div class="scheme-steps-side">
          <FindingList />
          <FilmDrawing />
        </div>
      </div>
      <ColourFields />
      <SchemeFields />
      {report === null ? null : <Grounds report={report} />}
      <NewScheme isFirst={false} />
    </div>
  );
}

function SchemeChoice(): JSX.Element | null {
  const schemes = state.job.value.schemes ?? [];
  if (schemes.length < 2) return null;
  return <ChoiceField id="steps-scheme" label="Scheme" value={shownScheme.value?.id ?? ''} options={schemes.map(({ id, name, panels }) => [id, `${name} (${panels.join(', ')})`] as const)} choose={(scheme) => lookAtScheme({ scheme, step: '' })} />;
}

function Summary({ report }: { readonly report: ReportedScheme }): JSX.Element {
  const { findings, plan } = report;
  const stops = findings.filter(({ severity }) => severity === 'stop').length;
  const doubts = findings.length - stops;
  const coats = plan.steps.filter(({ coat }) => coat !== null).length;
  const said = findings.length === 0
    ? 'the rules that could be checked find nothing against it'
    : [...(stops > 0 ? [`${counted(stops, 'thing')} to put right first`] : []), ...(doubts > 0 ? [`${counted(doubts, 'doubt')}`] : [])].join(' and ');
  return (
    <>
      <p class="scheme-steps-said" data-testid="steps-said">{`${counted(plan.steps.length, 'step')}, ${counted(coats, 'coat')}; ${said}.`}</p>
      {totalSentences(report, state.units.value).map((text) => <p key={text}>{text}</p>)}
    </>
  );
}

/** What a coat is, what is not looked into, and the cloth's strength for the record. */
function Grounds({ report }: { readonly report: ReportedScheme }): JSX.Element {
  return (
    <div class="scheme-steps-grounds">
      <details>
        <summary>What a coat is</summary>
        <dl>{COAT_DEFINITIONS.map(([word, meaning]) => <div key={word}><dt>{word}</dt><dd>{meaning}</dd></div>)}</dl>
        <p>{COAT_DEFINITIONS_SOURCE}</p>
      </details>
      <details>
        <summary>Where the figures come from, and what is not looked into</summary>
        <ul>
          <li>A sprayed coat’s film is the model’s: set-up, strokes and mix of the coat that the step names. A brushed coat’s film is what is stated, with its spread.</li>
          <li>“Dry to touch” and “ready for a coat” are of an even film of that thickness alone on the bare part, in the job’s own air; ready is taken as 18 % of solvent left (assumed).</li>
          <li>Waits are stated for 70 °F. In other air they are stretched by the rule of AC 43.13-1B 2-21: twice as long for each 10 °F below.</li>
          {NOT_CHECKED.map((text) => <li key={text}>Not looked into: {text}</li>)}
          <li>{ESTIMATE_STATEMENT}</li>
        </ul>
      </details>
      {report.strength.length === 0 ? null : (
        <details>
          <summary>Strength of the cloth, for the record</summary>
          <ul>{strengthSentences(report.strength, state.units.value).map((text) => <li key={text}>{text}</li>)}</ul>
          <p>{STRENGTH_NOTE}</p>
        </details>
      )}
    </div>
  );
}
