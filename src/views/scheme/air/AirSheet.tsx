import './air.css';
import type { JSX } from 'preact';
import { CLIMATE_STATEMENT, CLIMATE_WORDS, climateSentence, surfaceSentence, type AirAdvice } from '../../../../sim/index.ts';
import { airMixIndex, airPanel, airShown } from '../../../app/scheme/airSheet.ts';
import { lookAtScheme } from '../../../app/scheme/scheme.ts';
import { state } from '../../../app/state.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { NumberField } from '../../fields/NumberField.tsx';
import { TickField } from '../../fields/TickField.tsx';
import { ViewNumberField } from '../../fields/ViewNumberField.tsx';
import { Notice } from '../../frame/Notices.tsx';
import { AirFigures } from './AirFigures.tsx';
import { DaySection } from './DaySection.tsx';
import { RemedyList } from './RemedyList.tsx';
import { RulesTable } from './RulesTable.tsx';

/** The room now and through the day: may it be sprayed in, by whose rule, and what would make it go. */
export function AirSheet(): JSX.Element {
  const shown = airShown.value;
  return (
    <div class="scheme-air">
      <div class="scheme-air-top">
        <RoomNow />
        {shown === null ? <p role="status">The job has no mix yet: add one on the sheet Mix, and the air is judged for its film.</p> : null}
        {shown !== null && 'problem' in shown ? <Notice problem={shown.problem} /> : null}
        {shown !== null && 'advice' in shown ? <Verdict advice={shown.advice} /> : null}
      </div>
      {shown !== null && 'advice' in shown ? (
        <>
          <RulesTable verdict={shown.advice.remedies.now} />
          <AirFigures advice={shown.advice} />
        </>
      ) : null}
      <DaySection day={shown !== null && 'advice' in shown ? shown.advice.day : null} />
    </div>
  );
}

function RoomNow(): JSX.Element {
  const { mixes, air } = state.job.value;
  const { airSurface_C } = state.scheme.value;
  return (
    <section aria-labelledby="air-room">
      <h2 id="air-room">The room now</h2>
      <form class="form" onSubmit={(event) => event.preventDefault()}>
        <NumberField path={['air', 'temperature_C']} label="Temperature" />
        <NumberField path={['air', 'humidity_percent']} label="Relative humidity" />
        <TickField label="The part’s surface was measured" on={airSurface_C !== null} turn={(on) => lookAtScheme({ airSurface_C: on ? air.temperature_C : null })} />
        {airSurface_C === null ? null : (
          <ViewNumberField id="air-surface" label="Surface of the part" unitKey="surface_C" value={airSurface_C} low={-20} high={80} set={(value) => lookAtScheme({ airSurface_C: value })} />
        )}
        {mixes.length < 2 ? null : (
          <ChoiceField id="air-mix" label="Mix to be sprayed" value={mixes[airMixIndex.value]?.id ?? ''} options={mixes.map(({ id, name }) => [id, name] as const)} choose={(airMix) => lookAtScheme({ airMix })} />
        )}
        <p>Judged for {airPanel.value.name}.</p>
      </form>
    </section>
  );
}

function Verdict({ advice }: { readonly advice: AirAdvice }): JSX.Element {
  const { remedies, answer } = advice;
  const units = state.units.value;
  const { now } = remedies;
  const surface = surfaceSentence(now, answer, units);
  const [, reasons] = /^[^:]*: (.*)$/s.exec(climateSentence(now, answer, units)) ?? [];
  return (
    <section class="scheme-air-verdict" aria-labelledby="air-verdict">
      <h2 id="air-verdict" data-testid="air-verdict" class={`scheme-air-word ${now.verdict}`}>{CLIMATE_WORDS[now.verdict]}</h2>
      <p data-testid="air-reasons" role="status">{sentenceCase(reasons ?? '')}</p>
      {surface === null ? null : <p>{surface}</p>}
      <RemedyList advice={advice} />
      <p class="soft">{CLIMATE_STATEMENT}</p>
    </section>
  );
}

function sentenceCase(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
