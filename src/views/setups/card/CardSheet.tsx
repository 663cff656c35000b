import type { ComponentChildren, JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { cardAnswer, followCard, shownChoice } from '../../../app/setups/cardAnswer.ts';
import { openCardFile } from '../../../app/setups/cardFiles.ts';
import { efficiencySentence, flowSentence, openingSentence } from '../../../app/setups/partSentences.ts';
import { shownIndex, shownSetUp } from '../../../app/setups/setUps.ts';
import { state } from '../../../app/state.ts';
import type { CardReply, Told } from '../../../worker/cardMessages.ts';
import { FileDrop } from '../../frame/FileDrop.tsx';
import { CombForm, CupForm, FoilForm, WidthsForm } from './CompanionForms.tsx';
import { FanFaults } from './FanFaults.tsx';
import { FitView } from './FitView.tsx';
import { PhotoForm } from './PhotoForm.tsx';
import { ProvedView } from './ProvedView.tsx';
import { ReadingsForm } from './ReadingsForm.tsx';

/** The test card of a set-up: what was measured, what it comes to, and what of it is used. */
export function CardSheet(): JSX.Element {
  useEffect(followCard, []);
  const setUp = shownIndex.value;
  const told = cardAnswer.told.value;
  // While typing, the last answer stays in view; another set-up's never does.
  const reply = told?.setUp.id === shownSetUp.value.id ? told.reply : null;
  const fit = reply?.fit ?? null;
  return (
    <CardDrop>
      <ReadingsForm setUp={setUp} problem={fit !== null && 'problem' in fit ? fit.problem.text : null} />
      <div class="setups-told">
        <PhotoForm />
        {fit === null || 'problem' in fit ? <p class="soft">Readings across the fan, or a photograph of the card, show its width and shape here.</p> : (
          <>
            <FitView reply={fit.answer} choice={shownChoice.value} />
            <FanFaults faults={fit.answer.faults} />
          </>
        )}
      </div>
      <Companions setUp={setUp} reply={reply} />
      {told === null || reply === null ? null : <ProvedView asked={told.setUp} proved={reply.proved} />}
    </CardDrop>
  );
}

/** Cup, tape, foil and comb, each with what it comes to. */
function Companions({ setUp, reply }: { readonly setUp: number; readonly reply: CardReply | null }): JSX.Element {
  const units = state.units.value;
  return (
    <section class="setups-whole" aria-labelledby="setups-companions">
      <h2 id="setups-companions">Beside the card</h2>
      <div class="setups-companions">
        <CupForm setUp={setUp}><Answer told={reply?.caught ?? null} words={(rate) => flowSentence(rate, units)} /></CupForm>
        <WidthsForm setUp={setUp}><Answer told={reply?.widths ?? null} words={(opening) => openingSentence(opening, units)} /></WidthsForm>
        <FoilForm setUp={setUp}><Answer told={reply?.foil ?? null} words={efficiencySentence} /></FoilForm>
        <CombForm setUp={setUp}><Answer told={reply?.comb ?? null} words={efficiencySentence} /></CombForm>
      </div>
    </section>
  );
}

function Answer<T>({ told, words }: { readonly told: Told<T>; readonly words: (answer: T) => string }): JSX.Element | null {
  if (told === null) return null;
  return 'problem' in told ? <p class="wrong">{told.problem.text}</p> : <p>{words(told.answer)}</p>;
}

/** The sheet takes dropped files: readings or a photograph. */
function CardDrop({ children }: { readonly children: ComponentChildren }): JSX.Element {
  return (
    <FileDrop name="setups-card" isBusy={cardAnswer.working.value} take={([file]) => { if (file !== undefined) void openCardFile(file); }}>
      {children}
    </FileDrop>
  );
}
