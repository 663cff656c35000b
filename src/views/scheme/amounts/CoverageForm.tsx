import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { coverageSentence, coverageWorking, type AmountsAnswer, type CoatAmount, type CoverageAnswer } from '../../../../sim/index.ts';
import { coverageTyped } from '../../../app/scheme/coverageTyped.ts';
import { state } from '../../../app/state.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { ViewNumberField } from '../../fields/ViewNumberField.tsx';

/** From what was used and what the part gained: how much of a coat landed. */
export function CoverageForm({ answer: { amounts } }: { readonly answer: AmountsAnswer }): JSX.Element | null {
  const step = useSignal('');
  const used_mL = useSignal<number | null>(null);
  const gained_g = useSignal<number | null>(null);
  const coat = amounts.coats.find((each) => each.step.spec.id === step.value) ?? amounts.coats[0];
  if (coat === undefined) return null;
  const found = coverageTyped(coat, used_mL.value, gained_g.value);
  return (
    <section aria-labelledby="amounts-coverage">
      <h2 id="amounts-coverage">Where did it go?</h2>
      <p>After a coat: type what was used of the mix and what the part gained in weight when dry, or the gain of a weighed coupon scaled to the part’s area.</p>
      <div class="scheme-amounts-fields">
        <ChoiceField id="amounts-coverage-coat" label="Coat" value={coat.step.spec.id} options={amounts.coats.map((each) => [each.step.spec.id, each.step.spec.name] as const)} choose={(id) => (step.value = id)} />
        <ViewNumberField id="amounts-used" label="Mixed liquid used" unitKey="used_mL" value={used_mL.value} low={0.1} high={1e6} set={(value) => (used_mL.value = value)} clear={() => (used_mL.value = null)} />
        <ViewNumberField id="amounts-gained" label="Weight gained, dry" unitKey="gained_g" value={gained_g.value} low={0} high={1e6} set={(value) => (gained_g.value = value)} clear={() => (gained_g.value = null)} />
      </div>
      {found === null ? null : <Answer coat={coat} found={found} />}
    </section>
  );
}

function Answer({ coat, found }: { readonly coat: CoatAmount; readonly found: CoverageAnswer }): JSX.Element {
  const units = state.units.value;
  return (
    <div role="status">
      <p data-testid="coverage">{coverageSentence(found, coat, units)}</p>
      <details>
        <summary>How this is worked out</summary>
        <p>{coverageWorking(coat, units)}</p>
      </details>
    </div>
  );
}
