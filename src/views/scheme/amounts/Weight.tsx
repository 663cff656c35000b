import type { JSX } from 'preact';
import { bandSentence, COTTON_kg_m2, heaviestSentence, shown, shownWeight, spreadWords, weightSentence, weightText, type AmountsAnswer, type StepWeight } from '../../../../sim/index.ts';
import { lookAtScheme } from '../../../app/scheme/scheme.ts';
import { state } from '../../../app/state.ts';
import { TickField } from '../../fields/TickField.tsx';

/** Dry weight by step and by panel, with a bar to each step. */
export function Weight({ answer }: { readonly answer: AmountsAnswer }): JSX.Element {
  const { weight, band } = answer;
  const units = state.units.value;
  const steps = weight.steps.filter(({ added_kg }) => added_kg.value !== 0);
  const most_kg = Math.max(...steps.map(({ added_kg }) => Math.abs(added_kg.value)), 1e-12);
  return (
    <section aria-labelledby="amounts-weight">
      <h2 id="amounts-weight">Added weight, dry</h2>
      <p class="scheme-amounts-said">{weightSentence(weight, units)}</p>
      <p>{heaviestSentence(weight, units)}</p>
      <TickField label="Count the cloth too" on={state.scheme.value.amountsCloth} hint={`As Grade A cotton, ${shown(COTTON_kg_m2, 'areal-weight', units)}: K. D. Wood, Airplane Design, 1947, as quoted`} turn={(on) => lookAtScheme({ amountsCloth: on })} />
      <div class="scheme-amounts-scroll" tabIndex={0} role="region" aria-label="Dry weight by step">
        <table>
          <thead><tr><th scope="col">Step</th><th scope="col">On all panels</th><th scope="col"><span class="hidden-words">Bar</span></th><th scope="col">Where it lies</th></tr></thead>
          <tbody>
            {steps.map((step) => (
              <tr key={step.stepId}>
                <th scope="row">{step.name}</th>
                <td>{shownWeight(step.added_kg.value, units)}</td>
                <td class="scheme-amounts-bar"><Bar step={step} most_kg={most_kg} /></td>
                <td>{spreadWords(step.where_kg_m2, 'areal-weight', units)}</td>
              </tr>
            ))}
          </tbody>
          <tfoot><tr><th scope="row">All</th><td>{shownWeight(weight.total_kg.value, units)}</td><td /><td>{spreadWords(weight.mean_kg_m2, 'areal-weight', units)}</td></tr></tfoot>
        </table>
      </div>
      <Panels answer={answer} />
      <details>
        <summary>How the weight is worked out, and beside published weights</summary>
        <p>Each coat’s dry film times the density of its solids times the area that it covers. Sanding takes its film off the coat on top; tapes and patches count with their stated weight. A panel takes its share by area; low and high take all coats to be off the same way at once.</p>
        {band === null ? null : <p>{bandSentence(weight, band, units)}</p>}
      </details>
    </section>
  );
}

/** A bar from the left; hollow where the step takes weight off. */
function Bar({ step, most_kg }: { readonly step: StepWeight; readonly most_kg: number }): JSX.Element {
  const { value } = step.added_kg;
  return (
    <svg viewBox="0 0 100 12" preserveAspectRatio="none" aria-hidden="true">
      <rect class={value < 0 ? 'taken' : ''} x="0.5" y="1" width={Math.max(0.5, (99 * Math.abs(value)) / most_kg)} height="10" />
    </svg>
  );
}

function Panels({ answer: { weight } }: { readonly answer: AmountsAnswer }): JSX.Element {
  const units = state.units.value;
  const withCloth = weight.cloth_kg_m2 !== null;
  return (
    <div class="scheme-amounts-scroll" tabIndex={0} role="region" aria-label="Dry weight by panel">
      <table>
        <thead><tr><th scope="col">Panel</th><th scope="col">Area, all sides</th><th scope="col">Added, dry</th>{withCloth ? <th scope="col">Cloth</th> : null}</tr></thead>
        <tbody>
          {weight.panels.map((panel) => (
            <tr key={panel.panelId}>
              <th scope="row">{panel.name}</th>
              <td>{shown(panel.area_m2, 'panel-area', units)}</td>
              <td>{weightText(panel.added_kg, units)}</td>
              {withCloth ? <td>{shownWeight(panel.cloth_kg, units)}</td> : null}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
