import type { JSX } from 'preact';
import { costText, liquidText, shownLiquid, tinLabel, TINS_WORKING, tinsText, type AmountsAnswer, type ProductPurchase } from '../../../../sim/index.ts';
import { addSupply, addTin, leavePrice, priceText, removeTin, typeCurrency, typePrice } from '../../../app/scheme/supplyCommands.ts';
import { state } from '../../../app/state.ts';
import { NumberBox } from '../../fields/NumberBox.tsx';
import { NumberField } from '../../fields/NumberField.tsx';

/** Tins by product, then the fields in which sizes and prices are typed. */
export function BuyTable({ answer }: { readonly answer: AmountsAnswer }): JSX.Element {
  const units = state.units.value;
  return (
    <>
      <div class="scheme-amounts-scroll" tabIndex={0} role="region" aria-label="Products to buy for all coats">
        <table>
          <thead><tr><th scope="col">For all coats</th><th scope="col">Needed</th><th scope="col">Tins</th><th scope="col">For the high end</th><th scope="col">Left over</th><th scope="col">Cost</th></tr></thead>
          <tbody>
            {answer.purchase.products.map(({ amount, usual, high, currency }) => (
              <tr key={amount.product.key}>
                <th scope="row">{amount.product.name}</th>
                <td>{liquidText(amount.volume_m3, units)}</td>
                <td>{usual === null ? 'no tins stated' : tinsText(usual, units)}</td>
                <td>{high === null ? '' : tinsText(high, units)}</td>
                <td>{usual === null ? '' : shownLiquid(usual.over_m3, units)}</td>
                <td>{costText(usual?.cost ?? null, currency)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <details>
        <summary>Tins and their prices</summary>
        <Supplies products={answer.purchase.products} />
      </details>
      <details>
        <summary>How tins are chosen</summary>
        <p>{TINS_WORKING}</p>
      </details>
    </>
  );
}

function Supplies({ products }: { readonly products: readonly ProductPurchase[] }): JSX.Element {
  const { supplies = [] } = state.job.value;
  const missing = [...new Map(products.filter(({ supply }) => supply === null).map(({ amount: { product } }) => [product.supply, product.name])).entries()];
  return (
    <div class="scheme-amounts-supplies">
      {supplies.length === 0 ? null : <Currency />}
      {supplies.map(({ product }, supply) => <Supply key={`${product}-${supply}`} supply={supply} />)}
      {missing.map(([supply, name]) => <button key={supply} type="button" onClick={() => addSupply(supply)}>Say in which tins {name} is sold</button>)}
    </div>
  );
}

/** One currency for all prices. */
function Currency(): JSX.Element {
  const stated = new Set((state.job.value.supplies ?? []).map(({ currency }) => currency ?? ''));
  const several = stated.size > 1 ? `Now ${[...stated].map((each) => each || 'none').join(' and ')}; typing here sets all` : undefined;
  return (
    <div class="field">
      <label for="supplies-currency">Currency of all prices</label>
      <input id="supplies-currency" type="text" maxLength={10} autocomplete="off" value={stated.size === 1 ? [...stated][0] : ''} aria-describedby="supplies-currency-note" onInput={(event) => typeCurrency(event.currentTarget.value)} />
      <span class="field-note" id="supplies-currency-note">{several}</span>
    </div>
  );
}

function Supply({ supply }: { readonly supply: number }): JSX.Element {
  const stated = state.job.value.supplies?.[supply];
  const name = stated?.product ?? '';
  return (
    <fieldset class="group">
      <legend>{name}</legend>
      {stated?.tins.map(({ size_mL }, tin) => (
        <div key={tin} class="scheme-amounts-tin">
          <NumberField path={['supplies', supply, 'tins', tin, 'size_mL']} label={`Tin ${tin + 1} holds`} hint={`Sold as ${tinLabel(size_mL * 1e-6, state.units.value)}`} />
          <Price supply={supply} tin={tin} currency={stated.currency ?? ''} />
          <button type="button" aria-label={`Remove tin ${tin + 1} of ${name}`} onClick={() => removeTin(supply, tin)}>Remove</button>
        </div>
      ))}
      <button type="button" disabled={(stated?.tins.length ?? 0) >= 20} onClick={() => addTin(supply)}>Add a size</button>
    </fieldset>
  );
}

function Price({ supply, tin, currency }: { readonly supply: number; readonly tin: number; readonly currency: string }): JSX.Element {
  const field = priceText(supply, tin);
  return (
    <NumberBox
      id={`supplies-${supply}-tins-${tin}-price`}
      label={`Price of tin ${tin + 1}`}
      text={field.text}
      unit={currency}
      problem={field.problem === null ? null : `${field.problem}. The last good value still counts.`}
      hint={field.text === '' ? 'Empty: not known' : undefined}
      type={(text) => typePrice(supply, tin, text)}
      leave={() => leavePrice(supply, tin)}
    />
  );
}
