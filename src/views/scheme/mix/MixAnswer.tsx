import type { JSX } from 'preact';
import { laterSentence, nowSentence, ratioSentence, retarderSentence, wantedSentence, type ReportedMixing } from '../../../../sim/index.ts';
import { askMix, takenSpec, takeThinning, useRatio } from '../../../app/scheme/mixSheet.ts';
import { state } from '../../../app/state.ts';
import { MixNumber } from './MixNumber.tsx';

/** The ratio in words, what the cup should say, how far to thin for the seconds wanted, and this afternoon. */
export function MixAnswer({ mixing }: { readonly mixing: ReportedMixing }): JSX.Element {
  const units = state.units.value;
  const { thinning } = mixing;
  const retarder = retarderSentence(mixing);
  const wanted = thinning?.wanted ?? null;
  return (
    <section class="scheme-mix-told" aria-labelledby="mix-answer">
      <h2 id="mix-answer">The answer</h2>
      <p class="scheme-mix-said" data-testid="mix-said">{ratioSentence(mixing)}</p>
      {thinning === null ? null : <p>{nowSentence(thinning, units)}</p>}
      {thinning === null || wanted === null ? null : (
        <>
          <p class="scheme-mix-said">{wantedSentence(wanted, thinning, units)}</p>
          {wanted.ratio === null ? null : <div class="actions"><button type="button" onClick={() => wanted.ratio !== null && useRatio(wanted.ratio)}>Use this ratio</button></div>}
        </>
      )}
      {retarder === null ? null : <p>{retarder}</p>}
      {mixing.mix.warnings.map(({ text }) => <p key={text}><strong>Look: </strong>{text}</p>)}
      <Later mixing={mixing} />
      <Take />
    </section>
  );
}

function Later({ mixing: { thinning } }: { readonly mixing: ReportedMixing }): JSX.Element | null {
  const later = thinning?.later ?? null;
  if (thinning === null || later === null) return null;
  return (
    <>
      <MixNumber name="later_C" label="Liquid this afternoon" />
      <p data-testid="mix-later">{laterSentence(later, thinning, state.units.value)}</p>
    </>
  );
}

function Take(): JSX.Element {
  const taken = takenSpec.value;
  return (
    <>
      <MixNumber name="read_s" label="Seconds read of this mix" hint="Empty: not read. Taken into the job, they say its viscosity." clear={() => askMix({ read_s: null })} />
      {taken !== null && 'problem' in taken ? <p class="scheme-mix-wrong" role="alert">{taken.problem}</p> : null}
      <div class="actions"><button type="button" class="act" disabled={taken === null || 'problem' in taken} onClick={takeThinning}>Take this thinning into the job</button></div>
      {taken === null ? <p class="soft">The job has this ratio already.</p> : null}
    </>
  );
}
