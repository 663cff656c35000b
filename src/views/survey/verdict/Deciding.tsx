import type { JSX } from 'preact';
import { counted, type ReportedSurvey, type SurveySpec } from '../../../../sim/index.ts';
import { failedSpots } from '../../../app/survey/failedSpots.ts';
import { fitPanel } from '../../../app/survey/panelFit.ts';
import { readingMarks } from '../../../app/survey/readingMarks.ts';
import { rowsOf } from '../../../app/survey/readingRows.ts';
import { takenFigures } from '../../../app/survey/surveyJudged.ts';
import { decidingReadings } from '../../../app/survey/verdictRows.ts';
import { state } from '../../../app/state.ts';
import { useWidth } from '../../../charts/useWidth.ts';
import { PanelDrawing } from '../PanelDrawing.tsx';

/** Deciding readings listed; the others are counted. */
const MOST_LISTED = 30;
const HEIGHT_PX = 480;

/** The readings that decide: where they are, and what each says; for a failed spot, where to read on. */
export function Deciding({ survey, reported }: { readonly survey: SurveySpec; readonly reported: ReportedSurvey }): JSX.Element {
  const { judged, panel } = reported;
  const { box, width_px } = useWidth(520, 620);
  const units = state.units.value;
  const deciding = decidingReadings(judged);
  const rows = rowsOf(survey.readings, deciding.slice(0, MOST_LISTED), takenFigures(reported), units);
  const marks = readingMarks(survey.readings, deciding);
  const failed = panel === null ? [] : failedSpots(judged, panel, units);
  return (
    <section class="survey-verdict-part" aria-labelledby="survey-deciding">
      <h2 id="survey-deciding">{judged.answer === 'pass' ? 'The readings nearest to a limit' : 'The readings that decide'}</h2>
      <ul class="survey-verdict-list">
        {rows.map(({ index, dry, asRead, place }) => <li key={index}><strong>{`No. ${index + 1}: ${dry} dry`}</strong>{asRead === `${dry} dry` ? '' : ` (${asRead})`}; place {place}</li>)}
      </ul>
      {deciding.length > MOST_LISTED ? <p>{`and ${counted(deciding.length - MOST_LISTED, 'more reading')}.`}</p> : null}
      {failed.length === 0 ? null : (
        <div>
          <h3>Where to read next</h3>
          <p>A failed spot is bounded by reading on in eight directions until two spots in a row hold; what lies within does not (borrowed from SSPC-PA 2, from memory).</p>
          <ul class="survey-verdict-list">{failed.map(({ name, words }) => <li key={name}><strong>{name}</strong> {words}</li>)}</ul>
        </div>
      )}
      <div ref={box}>
        {panel === null || marks.length === 0 ? <p class="soft">No reading says its place, so none is drawn.</p> : (
          <figure>
            <PanelDrawing panel={panel} fit={fitPanel(panel, width_px, HEIGHT_PX)} system={units} marks={marks} cross={null} />
            <figcaption>Squares are the readings named above, dots the others.</figcaption>
          </figure>
        )}
      </div>
    </section>
  );
}
