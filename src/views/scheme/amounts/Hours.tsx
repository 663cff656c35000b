import type { JSX } from 'preact';
import { labourSentence, WORK_WORDS, workTimeWords, type AmountsAnswer } from '../../../../sim/index.ts';

/** Hours at work by kind; waits apart. */
export function Hours({ answer: { labour, plan } }: { readonly answer: AmountsAnswer }): JSX.Element {
  return (
    <section aria-labelledby="amounts-hours">
      <h2 id="amounts-hours">Hours at work</h2>
      <p>{labourSentence(labour)} The sheet Days lays them through the days.</p>
      <div class="scheme-amounts-scroll" tabIndex={0} role="region" aria-label="Hours at work by kind">
        <table>
          <thead><tr><th scope="col">Work</th><th scope="col">Steps</th><th scope="col">Time</th><th scope="col">Time typed</th></tr></thead>
          <tbody>
            {labour.kinds.map(({ kind, steps, work_s, stated }) => (
              <tr key={kind}><th scope="row">{WORK_WORDS[kind]}</th><td>{steps}</td><td>{workTimeWords(work_s)}</td><td>{stated} of {steps}</td></tr>
            ))}
          </tbody>
        </table>
      </div>
      <details>
        <summary>Where each time comes from</summary>
        <ul>{plan.steps.map(({ spec, work_s, workOrigin }) => <li key={spec.id}>{spec.name}: {workTimeWords(work_s)}. {workOrigin.words}.</li>)}</ul>
      </details>
    </section>
  );
}
