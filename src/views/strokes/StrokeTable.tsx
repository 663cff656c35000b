import type { JSX } from 'preact';
import { shownAngle, shownNumber, shownPercent, shownTime, shownUnit, type StrokeMeasures } from '../../../sim/index.ts';
import { chooseStrokeOfTable } from '../../app/choose.ts';
import { state } from '../../app/state.ts';

/** Rows drawn at most: a session of thousands of strokes is for the CSV. */
const MOST_ROWS = 400;

/** What the hand did, stroke by stroke. Choosing a row shows the stroke on the panel. */
export function StrokeTable(): JSX.Element | null {
  const film = state.film.value;
  if (film === null) return null;
  const { measures, source } = film.strokes;
  const system = state.units.value;
  const [length, speed] = [shownUnit('length', system).name, shownUnit('speed', system).name];
  return (
    <section class="stroke-table">
      <h2>Strokes {source === 'plan' ? 'as planned' : 'as recorded'}: {measures.length}</h2>
      <div class="scroll-box" tabIndex={0} role="region" aria-label="Stroke measures">
        <table>
          <thead>
            <tr>
              <th scope="col">stroke</th>
              <th scope="col">pass</th>
              <th scope="col">length<br />{length}</th>
              <th scope="col">speed<br />{speed}</th>
              <th scope="col">uneven<br />speed</th>
              <th scope="col">distance<br />{length}</th>
              <th scope="col">from … to<br />{length}</th>
              <th scope="col">overlap<br />mean</th>
              <th scope="col">overlap<br />worst</th>
              <th scope="col">off<br />square</th>
              <th scope="col">fluid on<br />past edge, {length}</th>
              <th scope="col">fluid off<br />past edge, {length}</th>
              <th scope="col">stops</th>
            </tr>
          </thead>
          <tbody>{measures.slice(0, MOST_ROWS).map((each) => <StrokeRow key={each.stroke} measure={each} />)}</tbody>
        </table>
      </div>
      {measures.length > MOST_ROWS ? <p class="soft">and {measures.length - MOST_ROWS} more; export the results to have them all.</p> : null}
    </section>
  );
}

function StrokeRow({ measure }: { readonly measure: StrokeMeasures }): JSX.Element {
  const system = state.units.value;
  const isChosen = state.chosenStrokes.value.includes(measure.stroke);
  const length = (value_m: number | null): string => (value_m === null ? '–' : shownNumber(value_m, 'length', system));
  const { overlap, stops, distance, speed } = measure;
  const stopped_s = stops.reduce((sum, stop) => sum + stop.duration_s, 0);
  return (
    <tr class={isChosen ? 'chosen' : ''} onClick={() => chooseStrokeOfTable(measure.stroke)}>
      <th scope="row">
        <button type="button" class="row-button" aria-pressed={isChosen} aria-label={`Stroke ${measure.stroke + 1}`} onClick={(event) => { event.stopPropagation(); chooseStrokeOfTable(measure.stroke); }}>
          {measure.stroke + 1}
        </button>
      </th>
      <td>{measure.pass + 1}</td>
      <td>{length(measure.length_m)}</td>
      <td>{shownNumber(speed.mean_m_s, 'speed', system)}</td>
      <td>{shownPercent(speed.cv)}</td>
      <td>{length(distance.mean_m)}</td>
      <td>{length(distance.low_m)} … {length(distance.high_m)}</td>
      <td>{overlap === null ? '–' : `${shownPercent(overlap.meanFraction)}, ${length(overlap.mean_m)}`}</td>
      <td>{overlap === null ? '–' : `${shownPercent(overlap.worstFraction)}, ${length(overlap.worst_m)}`}</td>
      <td>{shownAngle(measure.tilt.worst_rad)}</td>
      <td>{length(measure.triggerOn_m)}</td>
      <td>{length(measure.triggerOff_m)}</td>
      <td>{stops.length === 0 ? '–' : `${stops.length}, ${shownTime(stopped_s)}`}</td>
    </tr>
  );
}
