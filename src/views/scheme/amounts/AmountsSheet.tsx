import './amounts.css';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { amountsLimits, buySentence, costSentence, type AmountsAnswer } from '../../../../sim/index.ts';
import { amountsShown, followBalances, saveAmounts } from '../../../app/scheme/amountsSheet.ts';
import { shownScheme } from '../../../app/scheme/scheme.ts';
import { schemePlan } from '../../../app/scheme/schemePlan.ts';
import { state } from '../../../app/state.ts';
import { Balances } from './Balances.tsx';
import { BuyTable } from './BuyTable.tsx';
import { CoverageForm } from './CoverageForm.tsx';
import { Hours } from './Hours.tsx';
import { Liquid } from './Liquid.tsx';
import { Weight } from './Weight.tsx';

/** What the scheme takes to buy, what it weighs and where that acts, and what it costs in time and money. */
export function AmountsSheet(): JSX.Element {
  useEffect(followBalances, []);
  const shown = amountsShown.value;
  if (shown === null) return <p role="status">{emptyWords()}</p>;
  if ('problem' in shown) return <p role="alert">{shown.problem.title}: {shown.problem.text}</p>;
  return <Sheet answer={shown.answer} />;
}

function emptyWords(): string {
  return shownScheme.value === null
    ? 'The job has no scheme yet: begin one on the sheet Steps, and what it takes and weighs is worked out here.'
    : 'Working out the amounts…';
}

function Sheet({ answer }: { readonly answer: AmountsAnswer }): JSX.Element {
  const units = state.units.value;
  return (
    <div class="scheme-amounts" aria-busy={schemePlan.working.value}>
      <section aria-labelledby="amounts-buy">
        <h2 id="amounts-buy">What to buy</h2>
        <p class="scheme-amounts-said" data-testid="buy">{buySentence(answer.purchase, units)}</p>
        <p data-testid="cost">{costSentence(answer.purchase.total, units)}</p>
        {answer.doubts.length === 0 ? null : <ul class="scheme-amounts-doubts">{answer.doubts.map(({ text }) => <li key={text}>{text}</li>)}</ul>}
        <BuyTable answer={answer} />
        <button type="button" onClick={() => saveAmounts(answer)}>Save the tables (CSV)</button>
      </section>
      <Liquid answer={answer} />
      <Weight answer={answer} />
      <Balances answer={answer} />
      <Hours answer={answer} />
      <CoverageForm answer={answer} />
      <p>{amountsLimits(answer, units)}</p>
    </div>
  );
}
