import './truth.css';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import {
  belowSentences, betweenSentences, causeSentences, COMPARE_PLAN_NOTE, OFFER_NOTE, offerWords, planRatioSentence, spreadSentences, trendSentences, type PlanComparison,
} from '../../../../sim/index.ts';
import { lookAtSurvey, shownSurvey } from '../../../app/survey/survey.ts';
import { followTruth, takeOffer, truthSheet } from '../../../app/survey/truthSheet.ts';
import { state } from '../../../app/state.ts';
import { ViewNumberField } from '../../fields/ViewNumberField.tsx';
import { Notice } from '../../frame/Notices.tsx';
import { OrderChart, PlanChart } from './TruthCharts.tsx';
import { TruthMaps } from './TruthMaps.tsx';
import { TruthTable } from './TruthTable.tsx';

/** Readings over the film that the plan should have given: what differs, what that says, and the film between the readings. */
export function TruthSheet(): JSX.Element | null {
  useEffect(followTruth, []);
  const { comparison, problem, working } = truthSheet;
  if (shownSurvey.value === null) return null;
  const shown = comparison.value;
  return (
    <div class="survey-truth">
      {problem.value === null ? null : <Notice problem={problem.value} dismiss={() => (problem.value = null)} />}
      <p role="status" class="soft">{working.value ? 'Laying the coats and comparing…' : ''}</p>
      {shown === null ? null : <Compared comparison={shown} />}
    </div>
  );
}

function Compared({ comparison }: { readonly comparison: PlanComparison }): JSX.Element {
  const system = state.units.value;
  const sentences = [...spreadSentences(comparison, system), ...causeSentences(comparison), ...trendSentences(comparison), ...comparison.doubts];
  return (
    <>
      <section aria-labelledby="truth-head" class="survey-truth-told">
        <h2 id="truth-head">Plan against truth</h2>
        <p class="survey-truth-said" data-testid="truth-said">{planRatioSentence(comparison)}</p>
        {sentences.length === 0 ? null : <ul class="survey-truth-sentences">{sentences.map((text) => <li key={text}>{text}</li>)}</ul>}
        {comparison.ratio === null ? <div class="actions"><button type="button" onClick={() => lookAtSurvey({ tab: 'readings' })}>Enter readings</button></div> : null}
      </section>
      {comparison.offers.length === 0 ? null : <Offers comparison={comparison} />}
      {comparison.between === null ? null : (
        <section aria-labelledby="truth-between" class="survey-truth-told">
          <h2 id="truth-between">The film between the readings</h2>
          <div class="survey-truth-between">
            <TruthMaps comparison={comparison} />
            <ul class="survey-truth-sentences">{[...betweenSentences(comparison, system), ...belowSentences(comparison, system)].map((text) => <li key={text}>{text}</li>)}</ul>
          </div>
        </section>
      )}
      {comparison.readings.length === 0 ? null : (
        <>
          <div class="survey-truth-charts"><PlanChart comparison={comparison} /><OrderChart comparison={comparison} /></div>
          <TruthTable comparison={comparison} />
        </>
      )}
      <GaugeField comparison={comparison} />
      <p class="survey-truth-note">{COMPARE_PLAN_NOTE}</p>
    </>
  );
}

function Offers({ comparison: { offers } }: { readonly comparison: PlanComparison }): JSX.Element {
  return (
    <section aria-labelledby="truth-offers" class="survey-truth-told">
      <h2 id="truth-offers">Offered for the set-up</h2>
      <p>{OFFER_NOTE}</p>
      <ul class="survey-truth-offers">
        {offers.map((offer) => (
          <li key={`${offer.setUp} ${offer.number}`}>
            <span><strong>{offer.name}</strong><br />{offerWords(offer, state.units.value)}</span>
            <button type="button" aria-label={`Use for this set-up: ${offer.name}, ${offerWords(offer, state.units.value)}`} onClick={() => takeOffer(offer)}>Use for this set-up</button>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** The least that a standard deviation may be, and the most, µm. */
const NOISE_UM: readonly [number, number] = [0.01, 500];

function GaugeField({ comparison: { noise } }: { readonly comparison: PlanComparison }): JSX.Element {
  const { truth } = state.survey.value;
  const set = (noise_um: number | null): void => lookAtSurvey({ truth: { ...truth, noise_um } });
  return (
    <div class="survey-truth-gauge">
      <ViewNumberField id="truth-noise" label="Gauge repeats within (standard deviation)" unitKey="noise_um" value={truth.noise_um} low={NOISE_UM[0]} high={NOISE_UM[1]} hint={truth.noise_um === null ? `Empty: ${noise.words}.` : 'As typed. Empty it to have it found or assumed.'} set={set} clear={() => set(null)} />
    </div>
  );
}
