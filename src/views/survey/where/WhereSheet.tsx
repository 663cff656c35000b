import './where.css';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { counted, shown, shownNumber, shownUnit, type Panel, type PlaceToRead, type SamplingPlan } from '../../../../sim/index.ts';
import { fitPanel } from '../../../app/survey/panelFit.ts';
import { shownSurvey } from '../../../app/survey/survey.ts';
import { surveyPanel } from '../../../app/survey/surveyPanel.ts';
import { followWhere, placeMarks, savePlaces, whereSheet } from '../../../app/survey/whereSheet.ts';
import { state } from '../../../app/state.ts';
import { useWidth } from '../../../charts/useWidth.ts';
import { Notice } from '../../frame/Notices.tsx';
import { PanelDrawing } from '../PanelDrawing.tsx';

/** Largest height of the drawing, px: it stands beside its table. */
const HEIGHT_PX = 720;

/** Where to read the panel: the rule's own number of places, spread evenly, and the thinnest and heaviest by the model. */
export function WhereSheet(): JSX.Element | null {
  useEffect(followWhere, []);
  const { plan, problem, working } = whereSheet;
  const panel = surveyPanel.value;
  const survey = shownSurvey.value;
  if (survey === null) return null;
  return (
    <div class="survey-where">
      {problem.value === null ? null : <Notice problem={problem.value} dismiss={() => (problem.value = null)} />}
      <p role="status" class="soft">{working.value ? 'Choosing the places…' : ''}</p>
      {plan.value === null || panel === null ? null : <Places plan={plan.value} panel={panel} name={survey.name} />}
    </div>
  );
}

function Places({ plan, panel, name }: { readonly plan: SamplingPlan; readonly panel: Panel; readonly name: string }): JSX.Element {
  const system = state.units.value;
  const extremes = plan.places.filter(({ kind }) => kind !== 'spread').length;
  return (
    <>
      <section aria-labelledby="where-head" class="survey-where-told">
        <h2 id="where-head">{`Where to read ${panel.name}`}</h2>
        <p class="survey-where-said" data-testid="where-said">{askedWords(plan)}{extremes > 0 ? `, and ${counted(extremes, 'place')} that the model says are thinnest and heaviest (squares).` : '.'}</p>
        <p>{`Places keep ${shown(plan.margin_m, 'length', system)} off edges and holes${plan.spotRadius_m > 0 ? `; each spot is a circle of ${shown(2 * plan.spotRadius_m, 'length', system)} with three readings` : ''}. On open cloth no gauge for metal reads: fix a metal tab or a coupon at each place before the coat.`}</p>
        {plan.doubts.length === 0 ? null : <ul class="survey-where-doubts">{plan.doubts.map((text) => <li key={text}>{text}</li>)}</ul>}
        <details><summary>Where the number comes from</summary><p>{plan.asked.source}.</p><p>Places are spread so that each is nearest to as much of the panel as the others are (Lloyd 1982); the same panel gives the same places. The margin is assumed: half a spot and 5 mm beside it.</p></details>
        <div class="actions">
          <button type="button" onClick={() => print()}>Print</button>
          <button type="button" onClick={savePlaces}>Save as CSV, to fill in</button>
        </div>
      </section>
      <div class="survey-where-columns">
        <Drawing plan={plan} panel={panel} name={name} />
        <PlaceTable places={plan.places} />
      </div>
    </>
  );
}

function askedWords({ asked: { areas, spots, readings } }: SamplingPlan): string {
  if (readings === spots) return `The rule's table asks for ${counted(readings, 'reading')} on this panel`;
  return `The rule's table asks for ${counted(areas, 'area')}, ${counted(spots, 'spot')}, ${counted(readings, 'reading')} on this panel`;
}

function Drawing({ plan, panel, name }: { readonly plan: SamplingPlan; readonly panel: Panel; readonly name: string }): JSX.Element {
  const { box, width_px } = useWidth(480, 480);
  return (
    <figure class="survey-where-drawing">
      <figcaption>{`${name}: ${panel.name}, to scale`}</figcaption>
      <div ref={box} role="img" aria-label={`${panel.name}, to scale, with ${counted(plan.places.length, 'numbered place')} to read; the table lists them`}>
        <PanelDrawing panel={panel} fit={fitPanel(panel, width_px, HEIGHT_PX)} system={state.units.value} marks={placeMarks(plan)} cross={null} />
      </div>
    </figure>
  );
}

function PlaceTable({ places }: { readonly places: readonly PlaceToRead[] }): JSX.Element {
  const system = state.units.value;
  const unit = shownUnit('length', system).name;
  const hasAreas = places.some(({ area }) => area !== '');
  return (
    <div class="scroll-box" tabIndex={0} role="region" aria-label="Places to read">
      <table class="survey-where-table">
        <thead><tr><th scope="col">No.</th>{hasAreas ? <th scope="col">Spot</th> : null}<th scope="col">{`x, ${unit}`}</th><th scope="col">{`y, ${unit}`}</th><th scope="col">Why</th><th scope="col">{`Read, ${shownUnit('film', system).name} dry`}</th></tr></thead>
        <tbody>
          {places.map(({ number, spot, at_m, why, readings }) => (
            <tr key={number}>
              <th scope="row">{number}</th>
              {hasAreas ? <td>{spot}</td> : null}
              <td class="survey-where-number">{shownNumber(at_m[0], 'length', system)}</td>
              <td class="survey-where-number">{shownNumber(at_m[1], 'length', system)}</td>
              <td>{why}</td>
              <td class="survey-where-blank">{readings > 1 ? `${'____ '.repeat(readings)}` : '____'}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
