import './mix.css';
import type { JSX } from 'preact';
import { batchSentence, ESTIMATE_STATEMENT, filmSentence, MIX_CAUTIONS, MIX_LIMITS, solidsSentence, type ReportedMixing } from '../../../../sim/index.ts';
import { askMix, sheetMix, sheetMixing, slipHtml } from '../../../app/scheme/mixSheet.ts';
import { state } from '../../../app/state.ts';
import { download } from '../../../storage/download.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { BatchFields } from './BatchFields.tsx';
import { MixAnswer } from './MixAnswer.tsx';
import { MixWorking } from './MixWorking.tsx';
import { OwnReadings } from './OwnReadings.tsx';
import { PourView } from './PourView.tsx';
import { RetarderTable } from './RetarderTable.tsx';
import { ThinFields } from './ThinFields.tsx';

/** How far to thin, in which cup, for the gun; what to pour; the same mix later in the day. */
export function MixSheet(): JSX.Element {
  const spec = sheetMix.value;
  if (spec === null) return <p role="status">The job has no mix yet: add one at the stage Mix, and it is worked out here.</p>;
  const mixing = sheetMixing.value;
  return (
    <div class="scheme-mix">
      <ChoiceField id="sheet-mix" label="Mix" value={spec.id} options={state.job.value.mixes.map(({ id, name }) => [id, name] as const)} choose={(mix) => askMix({ mix, ratio: '', read_s: null })} />
      <div class="scheme-mix-pair">
        <section aria-labelledby="mix-ask">
          <h2 id="mix-ask">How far to thin, in which cup, for the gun</h2>
          <ThinFields />
        </section>
        {mixing === null || 'problem' in mixing ? <p role="status">{mixing === null ? '' : mixing.problem}</p> : <MixAnswer mixing={mixing.value} />}
      </div>
      <Cautions />
      {mixing === null || 'problem' in mixing ? null : <Poured mixing={mixing.value} />}
      <OwnReadings />
      {mixing === null || 'problem' in mixing ? null : <RetarderTable mixing={mixing.value} />}
      {mixing === null || 'problem' in mixing ? null : <MixWorking mixing={mixing.value} />}
      <p class="soft">{MIX_LIMITS} {ESTIMATE_STATEMENT}</p>
    </div>
  );
}

function Cautions(): JSX.Element {
  return (
    <section class="caution" aria-label="Before you mix">
      <h2>Before you mix</h2>
      <ul>{MIX_CAUTIONS.map((text) => <li key={text}>{text}</li>)}</ul>
    </section>
  );
}

function Poured({ mixing }: { readonly mixing: ReportedMixing }): JSX.Element {
  const units = state.units.value;
  const said = [batchSentence(mixing, units), filmSentence(mixing, units), solidsSentence(mixing)].filter((text) => text !== null);
  const save = (): void => {
    const html = slipHtml();
    if (html !== null) download(new Blob([html], { type: 'text/html' }), 'mixing-slip.html');
  };
  return (
    <section aria-labelledby="mix-pour">
      <h2 id="mix-pour">For the next coat</h2>
      <div class="scheme-mix-pair">
        <BatchFields />
        <div class="scheme-mix-told">
          {said.map((text) => <p key={text}>{text}</p>)}
          <PourView mixing={mixing} />
          <p>Mix for the next coat only. Label what is left with its ratio and date; a retarded mix is for the weather it was made for.</p>
          <div class="actions"><button type="button" onClick={save}>Save the mixing slip to print (HTML)</button></div>
        </div>
      </div>
    </section>
  );
}
