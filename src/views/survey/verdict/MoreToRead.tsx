import type { JSX } from 'preact';
import { counted, MORE_NOTE, moreSentences, takenSentences, type ReportedSurvey } from '../../../../sim/index.ts';
import { lookAtSurvey } from '../../../app/survey/survey.ts';
import { figureSentences } from '../../../app/survey/verdictRows.ts';
import { state } from '../../../app/state.ts';

/** How well the mean is known, how many more readings would be worth taking, and the chance of a reading beyond a limit. */
export function MoreToRead({ reported }: { readonly reported: ReportedSurvey }): JSX.Element {
  const { judged, more, sampling } = reported;
  const units = state.units.value;
  return (
    <section class="survey-verdict-part" aria-labelledby="survey-more">
      <h2 id="survey-more">More readings</h2>
      {[...figureSentences(judged, units), ...moreSentences(more, units)].map((text) => <p key={text}>{text}</p>)}
      {sampling === null ? null : <p>{`On this panel the rule's own table asks for ${counted(sampling.readings, 'reading')}${sampling.readings === sampling.spots ? '' : `, in ${counted(sampling.spots, 'spot')}`}; there are ${judged.readings.length}.`}</p>}
      <details class="more">
        <summary>Where these figures come from</summary>
        <p>The interval is Student’s t, the chance his predictive law; a comb’s reading counts by its middle. {MORE_NOTE}</p>
        {takenSentences(reported).map((text) => <p key={text}>{text}</p>)}
        {sampling === null ? null : <p>{sampling.source}.</p>}
      </details>
      <div class="actions"><button type="button" onClick={() => lookAtSurvey({ tab: 'where' })}>Where to read them</button></div>
    </section>
  );
}
