import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { coverageOf, shown, shownLiquid, shownPercent, type AmountsAnswer, type CoatAmount } from '../../../../sim/index.ts';
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
  return (
    <section aria-labelledby="amounts-coverage">
      <h2 id="amounts-coverage">Where did it go?</h2>
      <p>After a coat: type what was used of the mix and what the part gained in weight when dry, or the gain of a weighed coupon scaled to the part’s area.</p>
      <div class="scheme-amounts-fields">
        <ChoiceField id="amounts-coverage-coat" label="Coat" value={coat.step.spec.id} options={amounts.coats.map((each) => [each.step.spec.id, each.step.spec.name] as const)} choose={(id) => (step.value = id)} />
        <ViewNumberField id="amounts-used" label="Mixed liquid used" unitKey="used_mL" value={used_mL.value} low={0.1} high={1e6} set={(value) => (used_mL.value = value)} clear={() => (used_mL.value = null)} />
        <ViewNumberField id="amounts-gained" label="Weight gained, dry" unitKey="gained_g" value={gained_g.value} low={0} high={1e6} set={(value) => (gained_g.value = value)} clear={() => (gained_g.value = null)} />
      </div>
      {used_mL.value === null || gained_g.value === null ? null : <Answer coat={coat} used_m3={used_mL.value * 1e-6} gained_kg={gained_g.value / 1000} />}
    </section>
  );
}

function Answer({ coat: { step, coat }, used_m3, gained_kg }: { readonly coat: CoatAmount; readonly used_m3: number; readonly gained_kg: number }): JSX.Element {
  const units = state.units.value;
  const { mix } = coat;
  const density = mix.finish.solidsDensity_kg_m3.value;
  const found = coverageOf({ used_m3, volumeSolidsFraction: mix.volumeSolidsFraction, solidsDensity_kg_m3: density, gained_kg, area_m2: step.area_m2 });
  return (
    <div role="status">
      <p data-testid="coverage">
        {found.isPossible
          ? `${shownPercent(found.landedFraction)} of the solids used are on the part, ${shown(found.dry_m, 'film', units)} dry on average; ${shownLiquid(found.lost_m3, units)} of the mix went elsewhere. The plan reckons with ${shownPercent(coat.landedFraction)} of what leaves the gun. A unit of volume covered ${shown(found.covered_m2_m3, 'coverage', units)}${gained_kg > 0 ? ` where nothing lost would be ${shown(found.lossless_m2_m3, 'coverage', units)} at that film` : ''}.`
          : `That cannot be: the part would hold ${shownPercent(found.landedFraction)} of the solids used. Weigh again when it is dry, and check the solids of the mix and the area.`}
      </p>
      <details>
        <summary>How this is worked out</summary>
        <p>Weight gained ÷ density of the dry film ({Math.round(density)} kg/m³) = solids on the part; used liquid × {shownPercent(mix.volumeSolidsFraction)} solids by volume = solids used; one over the other is the transfer efficiency with all losses in it, after the definition of US air-quality rules (solids that stay over solids used). Area {shown(step.area_m2, 'panel-area', units)}. What was poured back does not count as used.</p>
      </details>
    </div>
  );
}
