import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { cardAnswer, followCard, shownChoice } from '../../../app/setups/cardAnswer.ts';
import { openCardFile } from '../../../app/setups/cardFiles.ts';
import { shownIndex, shownSetUp } from '../../../app/setups/setUps.ts';
import { FitView } from './FitView.tsx';
import { PhotoForm } from './PhotoForm.tsx';
import { ReadingsForm } from './ReadingsForm.tsx';

/** The test card of a set-up: what was measured, what it comes to, and what of it is used. */
export function CardSheet(): JSX.Element {
  const [isOver, setOver] = useState(false);
  useEffect(followCard, []);
  const setUp = shownIndex.value;
  const { card, id } = shownSetUp.value;
  const told = cardAnswer.told.value;
  // An answer to what stood there before is left in view until the next one, but not another set-up's.
  const reply = told?.setUp.id === id ? told.reply : null;
  const fit = reply?.fit ?? null;
  return (
    <div
      class={isOver ? 'setups-card dropping' : 'setups-card'}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={(event) => {
        if (!(event.relatedTarget instanceof Node) || !event.currentTarget.contains(event.relatedTarget)) setOver(false);
      }}
      onDrop={(event) => {
        event.preventDefault();
        setOver(false);
        const file = event.dataTransfer?.files[0];
        if (file !== undefined) void openCardFile(file);
      }}
    >
      <ReadingsForm setUp={setUp} problem={fit !== null && 'problem' in fit ? fit.problem.text : null} />
      <div class="setups-told" aria-busy={cardAnswer.working.value}>
        <PhotoForm />
        {fit !== null && 'answer' in fit ? <FitView setUpId={id} reply={fit.answer} choice={shownChoice.value} /> : null}
        {card?.readings === undefined ? <p class="soft">Readings across the fan, or a photograph of the card, show its width and shape here.</p> : null}
      </div>
    </div>
  );
}
