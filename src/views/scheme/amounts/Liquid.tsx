import type { JSX } from 'preact';
import { liquidSentence, liquidText, shownLiquid, shownPercent, weightText, type AmountsAnswer, type LiquidParts } from '../../../../sim/index.ts';
import { lookAtScheme } from '../../../app/scheme/scheme.ts';
import { AMOUNTS_LEFT_ML, AMOUNTS_LEFT_PERCENT } from '../../../app/scheme/schemePrefs.ts';
import { state } from '../../../app/state.ts';
import { ViewNumberField } from '../../fields/ViewNumberField.tsx';

/** Mixed liquid by coat, with what misses as a column and a line of its own. */
export function Liquid({ answer }: { readonly answer: AmountsAnswer }): JSX.Element {
  const { amounts } = answer;
  const units = state.units.value;
  const { amountsLeft_mL, amountsLeft_percent } = state.scheme.value;
  return (
    <section aria-labelledby="amounts-liquid">
      <h2 id="amounts-liquid">Mixed liquid, wet</h2>
      <p>{liquidSentence(amounts.total, units)}</p>
      <div class="scheme-amounts-scroll" tabIndex={0} role="region" aria-label="Mixed liquid by coat">
        <table>
          <thead><tr><th scope="col">Coat</th><th scope="col">To mix</th><th scope="col">Stays on the part</th><th scope="col">Misses it</th><th scope="col">Left in pot</th></tr></thead>
          <tbody>{amounts.coats.map(({ step, liquid }) => <Row key={step.spec.id} name={step.spec.name} liquid={liquid} />)}</tbody>
          <tfoot><Row name="All coats" liquid={amounts.total} /></tfoot>
        </table>
      </div>
      {amounts.paste_kg.value > 0 ? <p>Aluminium paste for all coats: {weightText(amounts.paste_kg, units)}.</p> : null}
      <div class="scheme-amounts-fields">
        <ViewNumberField id="amounts-left" label="Left in cup and hose, each sprayed coat" unitKey="left_mL" value={amountsLeft_mL} low={AMOUNTS_LEFT_ML[0]} high={AMOUNTS_LEFT_ML[1]} hint="Assumed 100 mL until you measure yours" set={(value) => lookAtScheme({ amountsLeft_mL: value })} />
        <ViewNumberField id="amounts-left-share" label="And of what leaves the gun" unitKey="left_percent" value={amountsLeft_percent} low={AMOUNTS_LEFT_PERCENT[0]} high={AMOUNTS_LEFT_PERCENT[1]} hint="Assumed 5 %: test cards, strainer" set={(value) => lookAtScheme({ amountsLeft_percent: value })} />
      </div>
      <details>
        <summary>How the liquid of each coat is worked out</summary>
        <ul>
          {amounts.coats.map(({ step, coat, liquid }) => (
            <li key={step.spec.id}>
              {step.spec.name}: {liquidText(liquid.mixed_m3, units)} of {coat.mix.name}, {shownPercent(coat.mix.volumeSolidsFraction)} solids by volume; {shownPercent(coat.landedFraction)} of the solids {step.spec.kind === 'brush' ? 'used stay on the part, as stated' : 'that leave the gun land on the part'}. Film {coat.filmOrigin.words}.
            </li>
          ))}
        </ul>
      </details>
    </section>
  );
}

function Row({ name, liquid }: { readonly name: string; readonly liquid: LiquidParts }): JSX.Element {
  const units = state.units.value;
  return (
    <tr>
      <th scope="row">{name}</th>
      {[liquid.mixed_m3, liquid.net_m3, liquid.missed_m3, liquid.left_m3].map(({ value }, i) => <td key={i}>{shownLiquid(value, units)}</td>)}
    </tr>
  );
}
