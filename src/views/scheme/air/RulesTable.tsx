import type { JSX } from 'preact';
import { CLIMATE_MARK_WORDS, CLIMATE_WORDS, ruleVerdictWords, ruleWords, type ClimateVerdict } from '../../../../sim/index.ts';
import { state } from '../../../app/state.ts';

/** The rules side by side: whose, what it asks, what it says. They disagree, and nothing is hidden of that. */
export function RulesTable({ verdict }: { readonly verdict: ClimateVerdict }): JSX.Element {
  const units = state.units.value;
  return (
    <section aria-labelledby="air-rules">
      <h2 id="air-rules">Whose rule says what</h2>
      <div class="scroll-box" tabIndex={0} role="region" aria-label="Rules of climate side by side">
        <table class="scheme-air-rules">
          <thead><tr><th scope="col">Whose rule</th><th scope="col">What it asks</th><th scope="col">What it says of this air</th></tr></thead>
          <tbody>
            {verdict.rules.map((each) => (
              <tr key={each.rule.id} class={each.rule.counts ? 'counts' : ''}>
                <th scope="row">{each.rule.name}{each.rule.counts ? ' (counts)' : ''}</th>
                <td>{ruleWords(each.rule, units)}</td>
                <td><strong>{CLIMATE_WORDS[each.verdict]}</strong>{ruleVerdictWords(each, units).slice(CLIMATE_WORDS[each.verdict].length)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p>The verdict is the worst of the rules that count. The others are shown because people quote them, and they differ by thinner, part and nerve.</p>
      <details>
        <summary>Where these rules come from</summary>
        <ul>{verdict.rules.map(({ rule }) => <li key={rule.id}><strong>{rule.name}</strong>: {rule.source} ({CLIMATE_MARK_WORDS[rule.mark]})</li>)}</ul>
      </details>
    </section>
  );
}
