import type { JSX } from 'preact';
import { schemeFindingWords, SEVERITY_WORDS, type SchemeFinding } from '../../../../sim/index.ts';
import { lookAtScheme } from '../../../app/scheme/scheme.ts';
import { schemeReport, stepOf } from '../../../app/scheme/stepsSheet.ts';
import { state } from '../../../app/state.ts';
import { stepButtonId } from './stepButtonId.ts';

/** What the rules find, gravest first; each leads to its step. */
export function FindingList(): JSX.Element | null {
  const report = schemeReport.value;
  if (report === null) return null;
  return (
    <section aria-labelledby="steps-findings">
      <h2 id="steps-findings">Against it</h2>
      {report.findings.length === 0
        ? <p>Nothing, as far as the rules could be checked.</p>
        : <ol class="scheme-steps-findings">{report.findings.map((finding) => <Finding key={`${finding.rule} ${finding.pointer}`} finding={finding} />)}</ol>}
    </section>
  );
}

function Finding({ finding }: { readonly finding: SchemeFinding }): JSX.Element {
  const { title, found, act } = schemeFindingWords(finding, state.units.value);
  const id = stepOf(finding);
  const go = (): void => {
    lookAtScheme({ step: id });
    requestAnimationFrame(() => document.getElementById(stepButtonId(id))?.focus());
  };
  return (
    <li class={`scheme-steps-finding ${finding.severity}`}>
      <h3><span class="scheme-steps-mark">{SEVERITY_WORDS[finding.severity]}</span> {title}</h3>
      <p>{found}</p>
      <p>{act}</p>
      <p class="soft">Whose rule: {finding.source}.</p>
      <button type="button" onClick={go}>Go to step {finding.stepIndex + 1}</button>
    </li>
  );
}
